/** What staff can do with an open ticket by one press, in the order in which it is done. */
export const plainActs = ['take', 'hand-on', 'pause', 'resume', 'seen', 'start', 'checked', 'bagged', 'collected'] as const
export type PlainAct = (typeof plainActs)[number]

/**
 * What asks for something to be filled in: the gates, a tick for chosen lines, a spoiled garment and its remake, what is short, what
 * the customer is asked, and what became of a garment in the wash.
 */
export const formActs = [
  'count-in',
  'strings',
  'water-drops',
  'test-press',
  'bleed-test',
  'certificate',
  'coupon',
  'first-piece',
  'second-look',
  'tick',
  'spoiled',
  'remade',
  'short',
  'ask',
  'complaint',
] as const
export type FormAct = (typeof formActs)[number]

export const ticketActs = [...plainActs, ...formActs] as const
export type TicketAct = PlainAct | FormAct

/** What is done with the shop's own things: presses, deliveries, the shelf. */
export const shopActs = ['press-check', 'received', 'counted', 'written-off', 'ordered', 'template'] as const
export type ShopAct = (typeof shopActs)[number]

export const isTicketAct = (name: string): name is TicketAct => ticketActs.some((act) => act === name)
export const isPlainAct = (name: string): name is PlainAct => plainActs.some((act) => act === name)
export const isFormAct = (name: string): name is FormAct => formActs.some((act) => act === name)
export const isShopAct = (name: string): name is ShopAct => shopActs.some((act) => act === name)
