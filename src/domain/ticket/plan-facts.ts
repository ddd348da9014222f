/** A minute on the shop's clock, YYYY-MM-DDTHH:MM. */
export type LocalMinute = string

/** A booked piece of work; `work` and `stations` are names as people read them. */
export type SlotFacts = {
  readonly work: string
  readonly stations: readonly string[]
  readonly start: LocalMinute
  readonly end: LocalMinute
  /** Minutes of it that set the station up. */
  readonly setUpMinutes?: number
}

export type PlanFacts = {
  readonly promised: LocalMinute | null
  readonly slackMinutes: number | null
  readonly hangsOn: readonly string[]
  readonly slots: readonly SlotFacts[]
  /** Until when the roster may still be changed. */
  readonly freezesAt?: LocalMinute | null
}
