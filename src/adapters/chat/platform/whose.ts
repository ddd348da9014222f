import type { Channel, Incoming } from '../../../ports/chat.ts'
import type { Actor, GuildSettings, Outcome, PlatformPerson, Talk } from '../../../ports/platform-desk.ts'
import type { Needs } from './needs.ts'
import { actorOf } from './role.ts'

/** In whose conversation, or in which shop, something was done. */
export type Whose =
  | { readonly kind: 'talk'; readonly talk: Talk }
  | { readonly kind: 'shop'; readonly actor: Actor; readonly settings: GuildSettings }
  | { readonly kind: 'not-set-up' }
  | { readonly kind: 'nobody' }

export type Theirs = Extract<Whose, { kind: 'talk' | 'shop' }>

type Event = {
  readonly channel: string
  /** The message of ours it was done on. */
  readonly message: string | null
  readonly guild: string | null
  readonly person: PlatformPerson
  readonly roles: readonly string[]
}

/** A room that holds a conversation is the customer's; anything else in a server is the shop's. */
export const whoseIs = async ({ desk }: Needs, event: Event): Promise<Whose> => {
  const talk = await desk.talkIn(event.channel, event.message)
  if (talk !== null) return { kind: 'talk', talk }
  if (event.guild === null) return { kind: 'nobody' }
  const settings = await desk.guild(event.guild)
  return settings === null ? { kind: 'not-set-up' } : { kind: 'shop', actor: actorOf(settings, event), settings }
}

/** The shop, and the channel of it, in which files of this event are kept and shown. */
export const keptIn = (whose: Theirs): { readonly shop: string; readonly channel: Channel } =>
  whose.kind === 'talk'
    ? { shop: whose.talk.shop, channel: talkChannel(whose.talk) }
    : { shop: whose.actor.shop, channel: { kind: 'shop', name: 'bench' } }

export const talkChannel = (talk: Talk): Channel => ({ kind: 'conversation', id: talk.conversation })

/** Hands it to the desk, which decides whether it is theirs to do. */
export const handOver = async (
  { desk }: Needs,
  whose: Theirs,
  done: { readonly by: PlatformPerson; readonly incoming: Incoming },
): Promise<Outcome> =>
  whose.kind === 'talk' ? await desk.hear(whose.talk, done.by, done.incoming) : await desk.act(whose.actor, done.incoming)
