import { dayNumber, writeLocal } from '../../../domain/calendar/local-time.ts'
import { type StationKind, stationKinds } from '../../../domain/schedule/book/operation.ts'
import { type DayLoad, type DueLoad, dueLoadOf, loadOf } from '../../../domain/schedule/load/load.ts'
import { loadPicture, narrowLoadPicture, type PictureWords, percentOf } from '../../../domain/schedule/load/load-picture.ts'
import { type LearnedStage, learnedStages } from '../../../domain/schedule/work/learned-rates.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { LoadRate, LoadSheet, LoadTable } from '../../../ports/counter-desk.ts'
import type { Desk } from '../desk.ts'
import { isStopped } from '../floor/stopped.ts'
import { jobNames } from '../plan/job-names.ts'
import { momentText, type PlanWords, planWords, stationText } from '../plan/plan-words.ts'
import { presentPlan } from '../plan/present-plan.ts'
import { tightOf } from '../plan/tight-jobs.ts'
import { type ShopPlan, shopPlanFrom } from '../records/records.ts'

/** So many days with open hours are shown; what is due later is shown by the days on which it is due. */
const mostDays = 12

const shortDay = (said: PlanWords, day: string): readonly [string, string] => {
  // 1970-01-01 was a Thursday.
  const weekday = ((((dayNumber(day) ?? 0) + 4) % 7) + 7) % 7
  const [, month = '', date = ''] = day.split('-')
  return [said.words.days[weekday] ?? '', said.words.date(Number(month), Number(date))]
}

const oneLine = (said: PlanWords, day: string): string => shortDay(said, day).join(' ')

const isKind = (kind: string): kind is StationKind => stationKinds.some((one) => one === kind)
const kindText = (said: PlanWords, kind: string): string => (isKind(kind) ? said.words.kindsOf[kind] : kind)

type Shares = { readonly load: readonly DayLoad[]; readonly due: readonly DueLoad[] }

const inView = (load: readonly DayLoad[], due: readonly DueLoad[]): Shares => {
  const days = [...new Set(load.filter((one) => one.open > 0).map((one) => one.day))].toSorted().slice(0, mostDays)
  const dueDays = [...new Set(due.map((one) => one.day))].toSorted().slice(0, mostDays)
  return { load: load.filter((one) => days.includes(one.day)), due: due.filter((one) => dueDays.includes(one.day)) }
}

const tableOf = (
  said: PlanWords,
  rows: readonly { readonly name: string; readonly key: string }[],
  cells: { readonly days: readonly string[]; readonly percent: (key: string, day: string) => number | null },
): LoadTable => ({
  head: [said.words.station, ...cells.days.map((day) => oneLine(said, day))],
  rows: rows.map(({ name, key }) => ({ name, percents: cells.days.map((day) => cells.percent(key, day)) })),
})

const stationTable = (said: PlanWords, load: readonly DayLoad[]): LoadTable => {
  const stations = [...new Set(load.map((one) => one.station))]
  return tableOf(
    said,
    stations.map((key) => ({ name: stationText(said, key), key })),
    {
      days: [...new Set(load.map((one) => one.day))].toSorted(),
      percent: (key, day) => {
        const one = load.find((each) => each.station === key && each.day === day)
        return one === undefined ? null : percentOf(one.busy, one.open)
      },
    },
  )
}

const dueTable = (said: PlanWords, due: readonly DueLoad[]): LoadTable => {
  const kinds = [...new Set(due.map((one) => one.kind))]
  return tableOf(
    said,
    kinds.map((key) => ({ name: kindText(said, key), key })),
    {
      days: [...new Set(due.map((one) => one.day))].toSorted(),
      percent: (key, day) => due.find((one) => one.kind === key && one.day === day)?.percent ?? null,
    },
  )
}

const tightFrom = 90
/** More is due by a day than can be done until then: somebody is late whatever the order of work. */
const overFrom = 100

const worstText = (said: PlanWords, { load, due }: Shares): string => {
  if (due.length === 0) return said.words.idle
  const over = due.reduce<DueLoad | null>((most, one) => (one.percent > (most?.percent ?? overFrom) ? one : most), null)
  if (over !== null) return said.words.over(kindText(said, over.kind), oneLine(said, over.day), over.percent)
  const worst = load
    .map((one) => ({ ...one, percent: percentOf(one.busy, one.open) }))
    .reduce<(DayLoad & { readonly percent: number }) | null>(
      (most, one) => (most === null || one.percent > most.percent ? one : most),
      null,
    )
  if (worst === null || worst.percent < tightFrom) return said.words.calm
  return said.words.worst(stationText(said, worst.station), oneLine(said, worst.day), worst.percent)
}

const rateOf = (said: PlanWords, plan: ShopPlan, stage: LearnedStage): LoadRate => {
  const rate = plan.pace[stage]
  const { words } = said
  const text = rate.seen === 0 ? words.rateUnseen : words.rate(Math.round(rate.minutes), rate.seen, Math.round(rate.spread))
  return {
    name: words.stages[stage],
    text: rate.frozen ? `${text} (${words.frozen})` : text,
    action: {
      id: `r:${stage}:${rate.frozen ? 'thaw' : 'freeze'}`,
      label: rate.frozen ? words.thaw : words.freeze,
      weight: 'plain',
    },
  }
}

const changesOf = (said: PlanWords, plan: ShopPlan): LoadSheet['changes'] =>
  plan.changes
    .slice(-5)
    .toReversed()
    .map(({ reason, at, orderId }) => {
      const when = said.show.moment(writeLocal(said.zone, at))
      const job = orderId === null ? '' : `${said.jobs.get(orderId) ?? orderId}: `
      return `${when}: ${job}${said.words.kept[reason]}`
    })

/** Orders that nobody goes on with, whatever the plan has for them. */
const stoppedJobs = async (desk: Desk, said: PlanWords, plan: ShopPlan): Promise<LoadSheet['late']['jobs']> => {
  const shop = desk.store.shop(desk.shopId)
  const orders = await shop.orders.list(['signed-off', 'planned', 'ticketed', 'on-bench'])
  const stopped = await Promise.all(orders.map((order) => isStopped(desk, shop, order)))
  return orders
    .filter((_, at) => stopped[at] === true)
    .map(({ orderId }) => {
      const placed = plan.sold.find(({ id }) => id === orderId)
      const promised = placed === undefined ? null : momentText(said, placed.promised ?? placed.needBy)
      return { text: said.words.stopped(said.jobs.get(orderId) ?? orderId, promised), causes: [], fixes: [] }
    })
}

const pictureWords = (said: PlanWords): PictureWords => ({
  title: said.words.stationsTitle,
  dueTitle: said.words.dueTitle,
  day: (day) => shortDay(said, day),
  station: (id) => stationText(said, id),
  kind: (kind) => kindText(said, kind),
})

/** Changes as soon as the plan does, and each quarter of an hour, in which the load moves on. */
export const loadMark = async (desk: Desk): Promise<string> => {
  const { version } = await desk.store.shop(desk.shopId).plan.read()
  return `${version}-${Math.floor(desk.clock.now() / 15)}`
}

/** The load of the shop, its late and tight jobs, and how long work takes here: in words, tables and a picture. */
export const loadSheet = async (desk: Desk, language: Language): Promise<LoadSheet> => {
  const shop = desk.store.shop(desk.shopId)
  const plan = shopPlanFrom((await shop.plan.read()).body)
  const ids = [...plan.sold, ...plan.changes.flatMap(({ orderId }) => (orderId === null ? [] : [{ id: orderId }]))]
  const said = planWords(desk, language, await jobNames(shop, [...new Set(ids.map(({ id }) => id))]))
  const present = presentPlan(desk, plan)
  const tight = tightOf(desk, plan, said)
  if (!present.ok || !tight.ok) throw new Error('the load of the shop cannot be worked out from its plan')
  const stopped = await stoppedJobs(desk, said, plan)
  const { book } = present.value
  const shares = inView(
    loadOf(
      book,
      desk.zone,
      plan.slots.filter(({ end }) => end > book.now),
    ),
    dueLoadOf(book, desk.zone),
  )
  const { words } = said
  return {
    title: words.title,
    picture: loadPicture(shares.load, shares.due, pictureWords(said)),
    narrowPicture: narrowLoadPicture(shares.load, shares.due, pictureWords(said)),
    pictureAlt: words.pictureAlt(worstText(said, shares)),
    lead: worstText(said, shares),
    stations: { title: words.stationsTitle, ...stationTable(said, shares.load) },
    due: { title: words.dueTitle, ...dueTable(said, shares.due) },
    late: {
      title: words.lateTitle,
      none: words.nobodyLate,
      because: words.because,
      fixesTitle: words.fixesTitle,
      jobs: [...stopped, ...tight.value.map(({ text, causes, fixes }) => ({ text, causes, fixes }))],
    },
    rates: { title: words.ratesTitle, lead: words.ratesLead, rates: learnedStages.map((stage) => rateOf(said, plan, stage)) },
    changesTitle: words.keptTitle,
    changes: changesOf(said, plan),
  }
}
