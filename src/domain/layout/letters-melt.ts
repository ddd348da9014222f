import { type Micrometres, micrometres } from '../units/units.ts'
import type { StoneStyle, TextShape } from './layout.ts'
import type { StonePlan } from './piece-work.ts'
import type { LayoutProblem } from './problems.ts'
import { pitchOf } from './rows.ts'

/**
 * How many pitches high a capital must be so that its arms stand apart. An E has three arms and two gaps over its height: with strokes
 * of a sixth each gap is a quarter of it. Each gap takes the rows of two arms where they stand around the vinyl (8 pitches a row), and a
 * bare pitch where they lie on it (computed; the proportions are common practice).
 */
const pitchesHigh = (style: StoneStyle): number => (style.style === 'outline' ? 8 * style.rows : 4)

/** A number is read by its shape, a single letter by its place. */
const hasLetters = (text: string): boolean => /\p{L}.*\p{L}/u.test(text)

/** The least height at which the letters of these stones do not run into each other, in micrometres. */
export const clearHeight = ({ setting, style }: Pick<StonePlan, 'setting' | 'style'>): Micrometres =>
  micrometres(Math.ceil(pitchesHigh(style) * pitchOf(setting)))

/** Letters too small for their stones melt into a blob; whoever signs is told before, with what would help. */
export const meltNote = (shape: TextShape, plan: StonePlan): readonly LayoutProblem[] => {
  const needed = clearHeight(plan)
  if (!hasLetters(shape.text) || shape.fit.height >= needed) return []
  const { size } = plan.setting
  const remedies = ['larger-letters', 'smaller-stone', 'vinyl']
  const facts = { text: shape.text, size, heightMicrometres: shape.fit.height, neededMicrometres: needed, remedies }
  return [{ code: 'letters-melt', at: '', severity: 'caution', facts }]
}
