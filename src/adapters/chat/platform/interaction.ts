import { PermissionFlagsBits } from 'discord.js'
import { type CommandWord, commandWords, type PlatformPerson } from '../../../ports/platform-desk.ts'
import { type ComponentRef, readCustomId } from './custom-id.ts'
import { fieldOf } from './form.ts'
import { type GivenFile, type InteractionPayload, interactionSchema, type UserPayload } from './payload.ts'
import { oneLine } from './plain-text.ts'

type Texts = { readonly [name: string]: string }
export type Asking =
  | { readonly kind: 'command'; readonly word: CommandWord; readonly texts: Texts; readonly files: readonly GivenFile[] }
  | { readonly kind: 'typing'; readonly word: CommandWord; readonly option: string; readonly text: string }
  | { readonly kind: 'component'; readonly ref: ComponentRef; readonly values: readonly string[] }
  | {
      readonly kind: 'submitted'
      readonly ref: ComponentRef
      readonly texts: Texts
      readonly files: readonly { readonly field: string; readonly file: GivenFile }[]
    }
  | { readonly kind: 'unknown' }

/** One interaction, read: who did what where. Rights are looked up elsewhere; nothing here grants one. */
export type Interaction = {
  readonly id: string
  readonly application: string
  readonly token: string
  readonly channel: string
  readonly guild: string | null
  readonly person: PlatformPerson
  readonly roles: readonly string[]
  /** May manage the server, as the platform computes it. */
  readonly manages: boolean
  /** The message it came from, whose answer may be an edit of it. */
  readonly message: string | null
  readonly asking: Asking
  /** How it was acknowledged, once it was; `elsewhere`: before us, by another session of the same bot, which is at it. */
  readonly answered: { how: 'update' | 'private' | 'late' | null; elsewhere: boolean }
}

const longestName = 60

export const personOf = (user: UserPayload, locale: string): PlatformPerson => ({
  id: user.id,
  name: oneLine(user.global_name ?? user.username).slice(0, longestName) || user.id,
  language: locale.startsWith('es') ? 'es' : 'en',
})

const wordOf = (name: string): CommandWord | null => commandWords.find((word) => word === name) ?? null

const textsOf = (options: readonly { readonly name: string; readonly value?: string | number | boolean | undefined }[]): Texts =>
  Object.fromEntries(options.flatMap(({ name, value }) => (value === undefined ? [] : [[name, String(value)]])))

type Payload<Type extends number> = Extract<InteractionPayload, { type: Type }>

const commandOf = ({ data }: Payload<2>): Asking => {
  const word = wordOf(data.name)
  if (word === null) return { kind: 'unknown' }
  const isFile = ({ type }: { readonly type: number }): boolean => type === 11
  const files = data.options.filter(isFile).flatMap(({ value }) => data.resolved.attachments[String(value)] ?? [])
  return { kind: 'command', word, texts: textsOf(data.options.filter((one) => !isFile(one))), files }
}

const typingOf = ({ data }: Payload<4>): Asking => {
  const word = wordOf(data.name)
  const focused = data.options.find((one) => one.focused === true)
  if (word === null || focused === undefined) return { kind: 'unknown' }
  return { kind: 'typing', word, option: focused.name, text: String(focused.value ?? '') }
}

const submittedOf = ({ data }: Payload<5>): Asking => {
  const ref = readCustomId(data.custom_id)
  if (ref === null) return { kind: 'unknown' }
  const parts = data.components.flatMap(({ component, components }) => [component, ...(components ?? [])])
  const texts = new Map<string, string>()
  const files: { field: string; file: GivenFile }[] = []
  for (const part of parts) {
    if (part?.custom_id === undefined) continue
    const field = fieldOf(part.custom_id)
    const sent = (part.values ?? []).flatMap((id) => data.resolved.attachments[id] ?? [])
    files.push(...sent.map((file) => ({ field, file })))
    const value = part.value ?? part.values?.[0]
    if (sent.length === 0 && value !== undefined && (texts.get(field) ?? '') === '') texts.set(field, value)
  }
  return { kind: 'submitted', ref, texts: Object.fromEntries(texts), files }
}

const askingOf = (payload: InteractionPayload): Asking => {
  switch (payload.type) {
    case 2:
      return commandOf(payload)
    case 3: {
      const ref = readCustomId(payload.data.custom_id)
      return ref === null ? { kind: 'unknown' } : { kind: 'component', ref, values: payload.data.values }
    }
    case 4:
      return typingOf(payload)
    case 5:
      return submittedOf(payload)
  }
}

const mayManage = PermissionFlagsBits.ManageGuild | PermissionFlagsBits.Administrator

/** null: nothing that we sent or registered could have led to it. */
export const readInteraction = (data: unknown): Interaction | null => {
  const parsed = interactionSchema.safeParse(data)
  if (!parsed.success) return null
  const payload = parsed.data
  const user = payload.member?.user ?? payload.user
  if (user === undefined) return null
  return {
    id: payload.id,
    application: payload.application_id,
    token: payload.token,
    channel: payload.channel_id,
    guild: payload.guild_id ?? null,
    person: personOf(user, payload.locale),
    roles: payload.member?.roles ?? [],
    manages: (BigInt(payload.member?.permissions ?? '0') & mayManage) !== 0n,
    message: payload.message?.id ?? null,
    asking: askingOf(payload),
    answered: { how: null, elsewhere: false },
  }
}
