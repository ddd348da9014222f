import type { LayoutProblem } from './problems.ts'

const GATHERED = [
  'letters-joined',
  'letters-melt',
  'row-dropped',
  'row-shared',
  'row-gap',
  'corner-bald',
  'corner-blunt',
] as const

type Flag = Extract<LayoutProblem, { readonly code: (typeof GATHERED)[number] }>

const isFlag = (problem: LayoutProblem): problem is Flag => GATHERED.some((code) => code === problem.code)

const kindOf = (flag: Flag): string => (flag.code === 'row-dropped' ? `${flag.code} ${flag.facts.row}` : flag.code)

/** A note names this many texts; of more it says only that there are more. */
const NAMED = 10
const MORE = '…'

const namesTogether = (one: string, two: string): string => {
  const names = [...new Set([...one.split(', '), ...two.split(', ')])].filter((name) => name !== MORE)
  return names.length > NAMED || [one, two].some((text) => text.endsWith(MORE))
    ? [...names.slice(0, NAMED), MORE].join(', ')
    : names.join(', ')
}

const together = (one: Flag, two: Flag): Flag => {
  const text = namesTogether(one.facts.text, two.facts.text)
  // Of several names the smallest is told: what helps it helps all.
  if (one.code === 'letters-melt' && two.code === 'letters-melt')
    return { ...one, facts: { ...(one.facts.heightMicrometres <= two.facts.heightMicrometres ? one : two).facts, text } }
  if (one.code === 'row-gap' && two.code === 'row-gap')
    return { ...one, facts: { ...one.facts, text, pitches: Math.max(one.facts.pitches, two.facts.pitches) } }
  if (one.code === 'corner-bald' && two.code === 'corner-bald')
    return { ...one, facts: { ...one.facts, text, corners: one.facts.corners + two.facts.corners } }
  if (one.code === 'corner-blunt' && two.code === 'corner-blunt')
    return { ...one, facts: { ...one.facts, text, corners: one.facts.corners + two.facts.corners } }
  if (one.code === 'row-dropped') return { ...one, facts: { ...one.facts, text } }
  if (one.code === 'row-shared') return { ...one, facts: { ...one.facts, text } }
  if (one.code === 'letters-joined') return { ...one, facts: { ...one.facts, text } }
  return one
}

/**
 * One flag of each kind for a whole text or decoration: pieces are named together, corners added up, the widest gap kept. What
 * each piece's own evidence says stays with the piece.
 */
export const gatherFlags = (flags: readonly LayoutProblem[]): readonly LayoutProblem[] => {
  const gathered = new Map<string, Flag>()
  for (const flag of flags.filter(isFlag)) {
    const known = gathered.get(kindOf(flag))
    gathered.set(kindOf(flag), known === undefined ? flag : together(known, flag))
  }
  return [...flags.filter((flag) => !isFlag(flag)), ...gathered.values()]
}
