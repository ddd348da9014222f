import { ticketWords } from '../../../../templates/ticket/words.ts'
import type { PressStep } from '../../../domain/press/press-plan.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import { layerOf, layerText, once, placeText, rowsOf } from '../../../domain/ticket/names.ts'
import type { WorkStep } from '../../../domain/ticket/work-steps.ts'
import type { Desk } from '../desk.ts'
import { shopLanguage, wordsFor } from '../say/say-floor.ts'
import { whichGarment } from './garment-text.ts'

/** What lies under the platen or comes off: where on the garment, and which vinyl or stones. */
const laidText = (desk: Desk, facts: TicketFacts, { place, layers }: PressStep): string => {
  const words = ticketWords[shopLanguage(desk)]
  const named = once(layers.map((id) => layerText(words, layerOf(facts, id)))).join(' + ')
  return [placeText(words, place), named].filter((part) => part !== '').join(' — ')
}

/** Steps that are about the whole garment, whatever lies on it. */
const ofGarment: readonly PressStep['action'][] = ['pre-press', 'protect', 'lift', 'cool', 'turn']

/** A step as it is read at the bench and at the press: '3 Place, back: back number — white standard vinyl · navy mesh jersey'. */
export const stepName = (desk: Desk, facts: TicketFacts, { no, kind, press }: WorkStep): string => {
  const words = wordsFor(desk)
  if (press === null) return words.steps[kind]
  const done = [`${no} ${words.pressActions[press.action] ?? press.action}`, words.pressWords[press.side] ?? press.side].join(
    ', ',
  )
  const laid = ofGarment.includes(press.action) ? '' : laidText(desk, facts, press)
  const garments = once(rowsOf(facts, press).map(({ garment }) => garment))
  const which = garments.map((id) => whichGarment(facts, id)).filter((name) => name !== '')
  return [[done, laid].filter((part) => part !== '').join(': '), ...which].join(' · ')
}

const mostNamed = 3

/** Steps in one line; of many the first ones. */
export const stepNames = (desk: Desk, facts: TicketFacts, steps: readonly WorkStep[]): string => {
  const named = steps.slice(0, mostNamed).map((step) => stepName(desk, facts, step))
  return [...named, ...(steps.length > mostNamed ? ['…'] : [])].join('; ')
}
