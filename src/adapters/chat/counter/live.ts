import { type SSEStreamingApi, streamSSE } from 'hono/streaming'
import { type Html, markupOf } from '../../../../templates/page/html.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { Channel } from '../../../ports/chat.ts'
import { refuse } from './answer.ts'
import type { Counter, Visit } from './counter.ts'
import { type Place, renderSlip } from './slip.ts'

/** A part of a page that is replaced whole; `mark` is another one as soon as it shows something else. */
export type LiveSheet = { readonly mark: string; readonly html: Html }

/**
 * What one open page watches. `still` is asked again and again: false ends it. `place` is where slips are laid, null on a page
 * without slips. `sheet` is the part that is replaced whole; null when it is gone.
 */
export type Watch = {
  readonly channel: Channel
  readonly place: Place | null
  readonly language: Language
  /** Whose page it is; each may have a few open. */
  readonly seat: string
  readonly still: () => Promise<boolean>
  readonly sheet: (() => Promise<LiveSheet | null>) | null
}

const beatMs = 15_000
const retryMs = 3_000

const isSameChannel = (a: Channel, b: Channel): boolean =>
  a.kind === 'conversation' ? b.kind === 'conversation' && a.id === b.id : b.kind === 'shop' && a.name === b.name

/** Rings when there is news; a ring while nobody listens is kept, so none is lost. */
const makeBell = () => {
  const state: { rung: boolean; wake: (() => void) | null } = { rung: false, wake: null }
  const ring = (): void => {
    state.rung = true
    state.wake?.()
  }
  const heard = async (ms: number): Promise<void> => {
    if (!state.rung) {
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, ms)
        state.wake = () => {
          clearTimeout(timer)
          resolve()
        }
      })
    }
    state.rung = false
    state.wake = null
  }
  return { ring, heard }
}

const startOf = (c: Visit): number => {
  const asked = Number(c.req.header('last-event-id') ?? c.req.query('after') ?? 0)
  return Number.isSafeInteger(asked) && asked > 0 ? asked : 0
}

type Seen = { readonly change: number; readonly mark: string }

/** Sends what changed since it was last seen; null when the page may not watch any longer. */
const sendNews = async (stream: SSEStreamingApi, counter: Counter, at: { readonly watch: Watch; readonly seen: Seen }) => {
  const { watch, seen } = at
  if (!(await watch.still())) {
    await stream.writeSSE({ event: 'over', data: '' })
    return null
  }
  const { place } = watch
  const lines = place === null ? [] : await counter.desk.lines(watch.channel, seen.change)
  for (const line of lines.toSorted((a, b) => a.change - b.change)) {
    if (place === null) break
    await stream.writeSSE({ event: 'slip', id: String(line.change), data: markupOf(renderSlip(line, place)) })
  }
  const sheet = (await watch.sheet?.()) ?? null
  const isNew = sheet !== null && sheet.mark !== seen.mark
  if (isNew) await stream.writeSSE({ event: 'sheet', data: markupOf(sheet.html) })
  if (lines.length === 0) await stream.write(': beat\n\n')
  return { change: Math.max(seen.change, ...lines.map((line) => line.change)), mark: isNew ? sheet.mark : seen.mark }
}

/**
 * Slips as they are posted or edited, as Server-Sent Events: `slip` with its markup, `sheet` for the part replaced whole, `over`
 * when the page may not watch any longer. News is best effort, so the channel is also looked at every 15 s.
 */
export const liveStream = (c: Visit, counter: Counter, watch: Watch): Response => {
  // Who asks for the head alone never leaves: it would keep its seat for good.
  if (c.req.method === 'HEAD') return c.body(null, 200, { 'content-type': 'text/event-stream' })
  const leave = counter.limits.live.sit(watch.seat)
  if (leave === null) return refuse(c, counter, { trouble: { code: 'too-many-open' }, language: watch.language, back: '/' })
  const bell = makeBell()
  const isOurs = (channel: Channel): boolean =>
    isSameChannel(channel, watch.channel) || (watch.sheet !== null && channel.kind === 'shop')
  const stop = counter.desk.onNews((channel) => {
    if (isOurs(channel)) bell.ring()
  })
  counter.closing.addEventListener('abort', bell.ring)
  const end = (): void => {
    stop()
    leave()
    counter.closing.removeEventListener('abort', bell.ring)
  }
  const follow = async (stream: SSEStreamingApi): Promise<void> => {
    stream.onAbort(bell.ring)
    await stream.write(`retry: ${retryMs}\n\n`)
    let seen: Seen | null = { change: startOf(c), mark: '' }
    while (seen !== null && !stream.aborted && !counter.closing.aborted) {
      seen = await sendNews(stream, counter, { watch, seen })
      if (seen !== null) await bell.heard(beatMs)
    }
  }
  c.header('x-accel-buffering', 'no')
  // A bug is told to the shop's own record only: the library would send its words to the page.
  return streamSSE(c, (stream) => follow(stream).catch(counter.report).finally(end))
}
