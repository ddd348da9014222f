import { makeURLSearchParams, type REST, Routes } from 'discord.js'
import * as z from 'zod'
import { type Clock, withPatience } from './patience.ts'
import type { Part } from './render.ts'

type Needs = { readonly rest: REST; readonly clock: Clock; readonly own: () => Promise<string> }
type Wanted = { readonly channel: string; readonly after: string; readonly mark: number; readonly part: Part }

const pageSize = 100
const mostPages = 100

type Component = {
  readonly id?: number | undefined
  readonly custom_id?: string | undefined
  readonly components?: Component[] | undefined
}
const component: z.ZodType<Component> = z.lazy(() =>
  z.object({ id: z.number().optional(), custom_id: z.string().optional(), components: z.array(component).optional() }),
)
const messages = z.array(
  z.object({ id: z.string(), author: z.object({ id: z.string() }), components: z.array(component).default([]) }),
)

const customIds = (components: readonly Component[]): readonly string[] =>
  components.flatMap((one) => [...(one.custom_id === undefined ? [] : [one.custom_id]), ...customIds(one.components ?? [])])

const partIds = (part: Part): readonly string[] =>
  part.inside.flatMap((one) =>
    'components' in one ? one.components.flatMap((inner) => ('custom_id' in inner ? [inner.custom_id] : [])) : [],
  )

/** `t:<ticket>:open:<revision>` when the message is about that one ticket only. */
const openOf = (ids: readonly string[]): string | null => {
  const tickets = new Set(ids.flatMap((id) => /^t:([^:]+):/.exec(id)?.[1] ?? []))
  return tickets.size === 1 ? (ids.find((id) => /^t:[^:]+:open:\d+$/.test(id)) ?? null) : null
}

/**
 * Reads the channel from a moment on for the message that an earlier attempt may have left: our own, with the mark of this
 * posting, or with the ticket and revision it opens. null: it was never posted.
 */
export const findOwn = async (needs: Needs, { channel, after, mark, part }: Wanted): Promise<string | null> => {
  const own = await needs.own()
  const open = openOf(partIds(part))
  let from = after
  for (let page = 0; page < mostPages; page += 1) {
    const query = makeURLSearchParams({ after: from, limit: pageSize })
    const read = messages.parse(await withPatience(needs.clock, () => needs.rest.get(Routes.channelMessages(channel), { query })))
    const found = read.find(
      ({ author, components }) =>
        author.id === own &&
        (components.some(({ id }) => id === mark) || (open !== null && openOf(customIds(components)) === open)),
    )
    if (found !== undefined) return found.id
    if (read.length < pageSize) return null
    from = read.reduce((latest, { id }) => (BigInt(id) > BigInt(latest) ? id : latest), from)
  }
  throw new Error(`too many messages in channel ${channel} since the first attempt to tell whether it was posted`)
}
