import type { Gate } from '../press/press-plan.ts'
import type { TicketFacts } from './facts.ts'
import { spanText } from './last-sheet.ts'
import { garmentName, type Scene } from './names.ts'
import type { Block, ChecksBlock } from './ticket.ts'
import type { TicketWords } from './words.ts'

/** What a gate is about beside its garment: the lot of stones of a certificate or a coupon, as it stands on the bag. */
export const gateSubject = (facts: TicketFacts, words: TicketWords, { subject, garment }: Gate): string => {
  if (subject === garment) return ''
  const [material, ...lot] = subject.split(' ')
  const stone = facts.stones.find((one) => one.material === material)
  if (stone === undefined) return subject
  const name = `${stone.size} ${stone.colour.name}`
  return lot.length === 0 ? name : `${name} · ${words.pick.lot(lot.join(' '))}`
}

const gateItem = (scene: Scene, gate: Gate): ChecksBlock['items'][number] => {
  const { words } = scene
  const said = words.gates[gate.code]
  const garment = gate.garment === null ? [] : [garmentName(scene, gate.garment)]
  const subject = gateSubject(scene.facts, words, gate)
  const wait = gate.waitMinutes > 0 ? [words.gateWait(spanText(words, gate.waitMinutes))] : []
  return {
    title: [said.title, ...garment, ...(subject === '' ? [] : [subject])].join(' · '),
    text: [said.ask, ...wait, words.gateBlocks[gate.blocks]].join(' '),
    answers: said.answers,
    writes: said.writes,
  }
}

/** The gates, each with the answers to tick and a line for who found it and when; the first piece has its own place. */
export const gateBlocks = (scene: Scene): readonly Block[] => {
  const gates = scene.facts.gates.filter((gate) => gate.code !== 'first-piece')
  if (gates.length === 0) return []
  return [
    { kind: 'heading', level: 2, text: scene.words.gateTitle },
    { kind: 'checks', items: gates.map((gate) => gateItem(scene, gate)) },
  ]
}

/** The place where a second person signs the first piece before the run. */
export const firstPiece = (scene: Scene): readonly Block[] => {
  const { firstPiece: said } = scene.words
  const gates = scene.facts.gates.filter((gate) => gate.code === 'first-piece')
  const titles = gates.map((gate) =>
    [said.title, ...(gate.garment === null ? [] : [garmentName(scene, gate.garment)])].join(' · '),
  )
  const shown = titles.length > 0 ? [...new Set(titles)] : [said.title]
  return [
    {
      kind: 'checks',
      items: shown.map((title) => ({
        title,
        text: said.again,
        answers: [said.look, said.proof, scene.facts.stones.length > 0 ? said.coldStones : said.cold],
        writes: [said.pressed, said.second, said.when],
      })),
    },
  ]
}
