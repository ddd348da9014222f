import { ticketWords } from '../../../templates/ticket/words.ts'
import type { Shop } from '../../domain/shop/shop.ts'
import type { TicketFacts } from '../../domain/ticket/facts.ts'
import { composeTemplatePrint, type PrintedTemplate } from '../../domain/ticket/template-print.ts'
import type { Ticket } from '../../domain/ticket/ticket.ts'
import { type PlacedTemplate, templateName } from '../count.ts'
import { freshTemplates } from '../cut.ts'
import { templateShelf, type Work } from '../work-out.ts'
import { type PickMeans, shownColour } from './picks.ts'

const printed = (template: PlacedTemplate, means: PickMeans): PrintedTemplate => ({
  text: templateName(template),
  stone: `${template.size} ${shownColour(means, template.colour).name}`,
  heightMicrometres: template.heightMicrometres,
  holeMicrometres: template.hole,
  holes: template.piece.stones.map(([x, y]): readonly [number, number] => [Math.round(x), Math.round(-y) + 0]),
  paths: [],
})

/** The templates that are cut for a job, one to one on paper; null when all of them lie on the shelf. */
export const templatePrint = (work: Work, facts: TicketFacts, shop: Shop): Ticket | null => {
  const fresh = freshTemplates(work.counted, templateShelf(shop))
  if (fresh.length === 0) return null
  const { now, language, show, ticket, team, revision } = facts
  const means = { colours: shop.colours, stock: shop.stock, language }
  const templates = fresh.map((template) => printed(template, means))
  return composeTemplatePrint(
    { now, language, show, of: ticket === '' ? team : ticket, revision, templates },
    ticketWords[language],
  )
}
