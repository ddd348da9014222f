import { createHash } from 'node:crypto'
import { type APIComponentInContainer, ButtonStyle, ComponentType, type REST, Routes } from 'discord.js'
import type { Message } from '../../../ports/chat.ts'
import { customId } from './custom-id.ts'
import { type Clock, withPatience } from './patience.ts'
import { label, shown } from './plain-text.ts'
import { bodyOf, nothingCarried, type Part, renderParts } from './render.ts'

/** Short words of the adapter itself, outside of what the desk delivers. */
export const textPart = (text: string, ...more: readonly APIComponentInContainer[]): Part => ({
  inside: [{ type: ComponentType.TextDisplay, content: shown(text) }, ...more],
  files: [],
})

export const linkRow = (text: string, url: string): APIComponentInContainer => ({
  type: ComponentType.ActionRow,
  components: [{ type: ComponentType.Button, style: ButtonStyle.Link, label: label(text, 80), url }],
})

export const settingButton = (name: string, text: string): APIComponentInContainer => ({
  type: ComponentType.ActionRow,
  components: [
    {
      type: ComponentType.Button,
      style: ButtonStyle.Primary,
      custom_id: customId({ kind: 'setting', name }),
      label: label(text, 80),
    },
  ],
})

export const messageParts = (message: Message): readonly Part[] => renderParts(message, nothingCarried)

/**
 * Says something in a channel because of one event: `cause` (the event's id and what for) makes the nonce, so that the same
 * event said twice stands there once.
 */
export const sayIn = async (
  { rest, clock }: { readonly rest: REST; readonly clock: Clock },
  channel: string,
  said: { readonly part: Part; readonly cause: string },
): Promise<void> => {
  const digest = createHash('sha256').update(`${channel}|${said.cause}`).digest()
  const body = {
    ...bodyOf(said.part, 2 ** 29 + (digest.readUInt32BE(24) % 2 ** 29), 0),
    nonce: digest.toString('base64url').slice(0, 24),
    enforce_nonce: true,
  }
  await withPatience(clock, () => rest.post(Routes.channelMessages(channel), { body }))
}
