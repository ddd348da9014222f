import type { TicketFacts } from './facts.ts'
import { type HazardCode, hazards, signalWords } from './hazards.ts'
import { once, type Scene } from './names.ts'
import type { SignalBlock } from './ticket.ts'

const always: readonly HazardCode[] = [
  'hot-platen',
  'hands-out-before-closing',
  'never-leave-closed',
  'gloves-for-pillow-and-stones',
  'ventilate',
  'no-pins',
]

const hazardsOf = (facts: TicketFacts): readonly HazardCode[] => {
  const vinyl: readonly HazardCode[] = facts.vinyl.length > 0 ? ['unknown-vinyl'] : []
  const stones: readonly HazardCode[] = facts.stones.length > 0 ? ['stones-on-floor'] : []
  const comesLoose = facts.stones.length > 0 || facts.vinyl.some((one) => one.class === 'glitter')
  const children = facts.roster.some((row) => row.age === 'under-3' || row.age === '3-12')
  const small: readonly HazardCode[] = comesLoose && children ? ['small-parts'] : []
  return once<HazardCode>([...always, ...vinyl, ...stones, ...small, ...facts.press.flatMap((step) => step.cautions)])
}

/** The cautions once on the front page: one panel for each signal word, the greatest first; burns and what to do stand with the greatest. */
export const signalBlocks = (scene: Scene): readonly SignalBlock[] => {
  const { signs } = scene.words
  const codes = hazardsOf(scene.facts)
  return signalWords.flatMap((word): readonly SignalBlock[] => {
    const mine = codes.filter((code) => hazards[code].word === word)
    if (mine.length === 0) return []
    const items = mine.map((code) => ({
      symbol: hazards[code].symbol,
      alternative: signs.symbols[hazards[code].symbol],
      text: signs.hazards[code],
    }))
    return [{ kind: 'signal', word, label: signs.words[word], items }]
  })
}
