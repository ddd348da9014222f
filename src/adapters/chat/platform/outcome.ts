import type { RawFile } from 'discord.js'
import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Channel, Message } from '../../../ports/chat.ts'
import type { Outcome } from '../../../ports/platform-desk.ts'
import type { Acknowledged } from './acknowledge.ts'
import type { Interaction } from './interaction.ts'
import type { Needs } from './needs.ts'
import { type Part, renderParts } from './render.ts'
import { textPart } from './say.ts'
import { tell } from './tell.ts'
import { bundlesOf } from './uploads.ts'

type Shown = { readonly parts: readonly Part[]; readonly files: readonly RawFile[] }

type Kept = { readonly shop: string; readonly channel: Channel }

const shownMessage = async ({ desk }: Needs, kept: Kept, message: Message): Promise<Shown> => {
  const [bundle] = await bundlesOf(desk, kept, message)
  if (bundle === undefined) throw new Error('a message has no set of files to show')
  const files = bundle.uploads.map(({ name, mime, bytes }) => ({ name, contentType: mime, data: Buffer.from(bytes) }))
  return { parts: renderParts(message, bundle.carried), files }
}

/** Tells the one who did it what came of it: what the desk says, a polite refusal, or for a command at least that it is done. */
export const tellOutcome = async (
  needs: Needs,
  interaction: Interaction,
  told: { readonly how: Acknowledged; readonly kept: Kept; readonly outcome: Outcome; readonly refusals: readonly string[] },
): Promise<void> => {
  const { how, kept, outcome, refusals } = told
  const words = platformWords[interaction.person.language]
  const texts = [
    ...refusals,
    ...(outcome.said === null ? [] : [outcome.said]),
    ...(outcome.outcome === 'refused' && outcome.said === null ? [words.refused] : []),
  ]
  const shown = outcome.shown === null ? null : await shownMessage(needs, kept, outcome.shown)
  const parts = [...texts.map((text) => textPart(text)), ...(shown?.parts ?? [])]
  const all = parts.length === 0 && how === 'private' ? [textPart(words.done)] : parts
  await tell(needs, interaction, { how, parts: all, files: shown?.files ?? [] })
}
