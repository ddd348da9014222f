import type { PressStep } from '../press/press-plan.ts'
import { runsText } from './figures.ts'
import { hazards, signalWords } from './hazards.ts'
import { garmentsOf, insideOf, pressBoxes, pressureOf, sameTextOf, secondsOf, temperatureOf } from './heat.ts'
import { garmentName, layerOf, layerText, once, piecesIn, placeText, type Scene } from './names.ts'
import type { Block, Sheet, StepsBlock } from './ticket.ts'

type Run = { readonly garments: readonly string[]; readonly side: PressStep['side']; readonly steps: readonly PressStep[] }

/** Steps that follow each other on the same garments and side; steps from the inside belong to the side they stand in. */
const runsOf = (scene: Scene): readonly Run[] => {
  const runs: Run[] = []
  for (const step of scene.facts.press) {
    const garments = garmentsOf(scene, step)
    const last = runs.at(-1)
    const stays =
      last !== undefined && String(last.garments) === String(garments) && (last.side === step.side || step.side === 'inside')
    if (stays) runs[runs.length - 1] = { ...last, steps: [...last.steps, step] }
    else runs.push({ garments, side: step.side, steps: [step] })
  }
  return runs
}

const layersText = ({ facts, words }: Scene, step: PressStep): string =>
  once(step.layers.map((id) => layerText(words, layerOf(facts, id)))).join(' + ')

const titleOf = (scene: Scene, step: PressStep): string => {
  const { press } = scene.words
  const what = [placeText(scene.words, step.place), layersText(scene, step)].filter((text) => text !== '').join(' — ')
  return `${press.actions[step.action]}: ${what}`
}

const linesOf = (scene: Scene, step: PressStep): readonly string[] => {
  const { press, steps } = scene.words
  const settled = [
    sameTextOf(scene, step) ?? '',
    step.inside === 'none' ? '' : `${press.figures.inside}: ${insideOf(scene, step)}`,
    step.cover === 'none' ? '' : `${press.figures.cover}: ${press.overs[step.cover]}`,
    step.peel === null ? '' : `${press.figures.peel}: ${press.peels[step.peel]}`,
    step.machine === null ? '' : step.machine,
  ].filter((text) => text !== '')
  const look = step.lookFor.map((code) => steps.lookFor[code])
  const looks = look.length > 0 ? `${press.lookFor}: ${look.join('; ')}.` : ''
  const line = [settled.join(' · '), looks].filter((text) => text !== '').join('. ')
  return line === '' ? [] : [line]
}

/** The step's cautions, one line for each signal word, the greatest first. */
const cautionsOf = ({ words }: Scene, step: PressStep): StepsBlock['steps'][number]['cautions'] =>
  signalWords.flatMap((word) => {
    const mine = step.cautions.filter((code) => hazards[code].word === word)
    const items = mine.map((code) => ({
      symbol: hazards[code].symbol,
      alternative: words.signs.symbols[hazards[code].symbol],
      text: words.steps.cautions[code],
    }))
    return items.length === 0 ? [] : [{ label: words.signs.words[word], items }]
  })

const stepItem = (scene: Scene, step: PressStep): StepsBlock['steps'][number] => {
  return {
    no: String(step.no),
    title: titleOf(scene, step),
    figures: [temperatureOf(scene, step), secondsOf(scene, step), pressureOf(scene, step)].filter((text) => text !== null),
    lines: linesOf(scene, step),
    cautions: cautionsOf(scene, step),
  }
}

const runBlocks = (scene: Scene, run: Run): readonly Block[] => {
  const { words } = scene
  const lines = once(run.steps.flatMap((step) => step.lines))
  const rows = scene.facts.roster.filter((row) => lines.includes(row.line))
  const garments = words.list(run.garments.map((id) => garmentName(scene, id)))
  const blocks: readonly Block[] = [
    {
      kind: 'heading',
      level: 2,
      text: `${words.press.sequence} · ${words.press.group(garments, words.press.sides[run.side])}`,
      note: words.press.lines(runsText(lines), piecesIn(rows)),
    },
    ...pressBoxes(scene, run.steps).map((box) => ({ ...box, leads: true })),
    { kind: 'steps', steps: run.steps.map((step) => stepItem(scene, step)) },
  ]
  return [{ kind: 'together', blocks }]
}

/** The press sequence step for step as it was checked, side by side, each with its press box. */
export const sequenceSheets = (scene: Scene): readonly Sheet[] => {
  if (scene.facts.press.length === 0) return []
  const title = scene.words.press.sequence
  const blocks = runsOf(scene).flatMap((run) => runBlocks(scene, run))
  return [{ title, blocks }]
}
