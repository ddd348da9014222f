import type { Minutes } from '../domain/units/units.ts'

/** The morning's five figures of one press, centre and corners, and what follows from them for the day. */
export type PressCheck = {
  readonly press: string
  /** 'YYYY-MM-DD' in the shop's zone. */
  readonly day: string
  readonly setTenths: number
  readonly readings: readonly number[]
  /** Added to every set point of that press on that day. */
  readonly correctionTenths: number
  readonly verdict: 'fit' | 'corrected' | 'not-fit'
  readonly by: string
  readonly at: Minutes
}

/** Garments of one roster line that are made again, with what the loss is worth in minor units. */
export type Remake = {
  readonly remakeId: string
  readonly orderId: string
  readonly ticketId: string
  readonly line: number
  readonly quantity: number
  readonly reason: string
  readonly whose: string
  readonly photo: string | null
  readonly cost: number
  readonly by: string
  readonly at: Minutes
  readonly doneAt: Minutes | null
}

export type FloorBook = {
  /** One a press and day: a later check of the day stands in place of an earlier one. */
  checkPress(check: PressCheck): Promise<void>
  pressChecks(day: string): Promise<readonly PressCheck[]>
  addRemake(remake: Remake): Promise<void>
  remakes(since: Minutes): Promise<readonly Remake[]>
  remakesOf(orderId: string): Promise<readonly Remake[]>
  finishRemake(remakeId: string, at: Minutes): Promise<void>
}
