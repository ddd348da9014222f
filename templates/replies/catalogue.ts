import type { CalendarProblems } from '../../src/domain/calendar/problems.ts'
import type { CuttingProblems } from '../../src/domain/cutting/problems.ts'
import type { FaceProblems } from '../../src/domain/face/problems.ts'
import type { LayoutProblems } from '../../src/domain/layout/problems.ts'
import type { OrderProblems } from '../../src/domain/order/problems.ts'
import type { PressProblems } from '../../src/domain/press/problems.ts'
import type { WayCode } from '../../src/domain/press/way.ts'
import type { ShapeProblems } from '../../src/domain/result/shape.ts'
import type { RuleProblems } from '../../src/domain/rules/problems.ts'
import type { ScheduleProblems } from '../../src/domain/schedule/book/problems.ts'
import type { ShopProblems } from '../../src/domain/shop/problems.ts'
import type { Show } from '../../src/domain/shop/show.ts'
import type { StockProblems } from '../../src/domain/stock/problems.ts'
import type { TicketProblems } from '../../src/domain/ticket/problems.ts'
import type { Button } from '../../src/domain/understanding/conversation.ts'
import type { Replies } from '../../src/domain/understanding/replies.ts'

/** Every problem of every folder, by code. A code that two folders use must carry the same facts. */
export type Problems = ShapeProblems &
  OrderProblems &
  FaceProblems &
  LayoutProblems &
  CuttingProblems &
  PressProblems &
  RuleProblems &
  StockProblems &
  ScheduleProblems &
  CalendarProblems &
  ShopProblems &
  TicketProblems

/** What is said in one message: a sentence, or a sentence with a list of fields and a table. */
export type Sentence = {
  readonly before: string
  readonly fields?: readonly { readonly name: string; readonly value: string; readonly assumed: boolean }[]
  readonly table?: { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] }
  /** What it costs, part by part, the total last. */
  readonly sums?: readonly { readonly name: string; readonly value: string; readonly assumed: boolean }[]
  readonly after?: string
}

/** One language: a sentence for every reply and every problem, and the words between them. */
export type Catalogue = {
  readonly replies: { readonly [C in keyof Replies]: (facts: Replies[C], show: Show) => string | Sentence }
  readonly problems: { readonly [C in keyof Problems]: (facts: Problems[C], show: Show) => string }
  readonly ways: { readonly [W in WayCode]: (subject: string) => string }
  readonly couldDo: (ways: string) => string
  /** Said of a refusal that knows no way out. */
  readonly noWay: string
  readonly severities: { readonly stop: string; readonly 'needs-test': string; readonly caution: string; readonly note: string }
  readonly buttons: { readonly [B in Button]: (revision: number) => string }
  readonly answers: { readonly [answer: string]: string }
  readonly garments: { readonly [id: string]: string }
  readonly fits: { readonly [fit: string]: string }
  readonly classes: { readonly [vinylClass: string]: string }
  readonly places: { readonly [place: string]: string }
  readonly row: (row: {
    readonly number: string | null
    readonly name: string | null
    readonly fit: string | null
    readonly size: string | null
  }) => string
  readonly fields: { readonly [field: string]: string }
  readonly assumedMark: string
}
