type Of<Key extends string> = Readonly<Record<Key, string>>

/** What stands on the customer's own papers: price slip and care card. */
export type SlipWords = {
  readonly price: string
  readonly heads: Of<'what' | 'quantity' | 'unit' | 'amount'>
  readonly total: string
  readonly money: Of<'none' | 'deposit' | 'paid' | 'order-number' | 'on-account'>
  readonly paid: (amount: string, open: string) => string
  readonly reference: (reference: string) => string
  readonly questions: (shop: string, ask: string) => string
  readonly care: string
  readonly colours: (colours: string) => string
  readonly wash: readonly string[]
  readonly stones: readonly string[]
  readonly complaint: string
}

export type TemplateWords = {
  readonly all: (job: string) => string
  readonly title: (text: string, height: string, stone: string) => string
  readonly fullSize: string
  readonly readsRight: string
  readonly top: string
  /** How the sheets of one template are put together. */
  readonly join: string
  readonly sheet: (sheet: number, of: number) => string
  readonly ruler: (length: string) => string
  readonly holes: (count: number) => string
}
