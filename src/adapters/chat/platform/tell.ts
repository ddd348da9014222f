import { MessageFlags, type RawFile, type REST, Routes } from 'discord.js'
import type { Acknowledged } from './acknowledge.ts'
import type { Interaction } from './interaction.ts'
import { type Clock, withPatience } from './patience.ts'
import { bodyOf, type Part } from './render.ts'
import { failureOf, hasCode } from './rest-failure.ts'

export type AnswerNeeds = { readonly answers: REST; readonly clock: Clock }
export type Told = { readonly how: Acknowledged; readonly parts: readonly Part[]; readonly files: readonly RawFile[] }

/** Any number that is not one of a posting's marks. */
const unmarked = 1

const withFiles = (part: Part, files: readonly RawFile[]) => {
  const own = files.filter(({ name }) => part.files.includes(name))
  return { own, attachments: own.map(({ name }, id) => ({ id, filename: name })) }
}

/** The token has run out, or the interaction is gone. */
const overCodes = [10_015, 10_062, 50_027]

const mayBeMissing = (error: unknown): boolean => {
  const kind = failureOf(error)?.kind
  return kind === 'unknown' || kind === 'later' || hasCode(error, ...overCodes)
}

const sendPart = async (
  { answers, clock }: AnswerNeeds,
  interaction: Interaction,
  sent: { part: Part; files: readonly RawFile[]; fills: boolean },
) => {
  const { application, token } = interaction
  const { own, attachments } = withFiles(sent.part, sent.files)
  if (sent.fills) {
    const body = { ...bodyOf(sent.part, unmarked, 0), attachments }
    await withPatience(clock, () => answers.patch(Routes.webhookMessage(application, token), { body, files: own, auth: false }))
    return
  }
  const body = { ...bodyOf(sent.part, unmarked, MessageFlags.Ephemeral), attachments }
  await answers.post(Routes.webhook(application, token), { body, files: own, auth: false })
}

/**
 * Says something to the one who asked, and to nobody else. A follow-up cannot be told from its repetition, so it is sent
 * once and may be missing; what must not be lost is delivered, never told.
 */
export const tell = async (needs: AnswerNeeds, interaction: Interaction, { how, parts, files }: Told): Promise<void> => {
  if (how === 'late') return
  for (const [at, part] of parts.entries()) {
    try {
      await sendPart(needs, interaction, { part, files, fills: how === 'private' && at === 0 })
    } catch (error) {
      if (!mayBeMissing(error)) throw error
      return
    }
  }
}

/** Writes a private dialogue anew where it stands. */
export const rewrite = async (
  { answers, clock }: AnswerNeeds,
  { application, token }: Interaction,
  part: Part,
): Promise<void> => {
  const body = bodyOf(part, unmarked, 0)
  await withPatience(clock, () => answers.patch(Routes.webhookMessage(application, token), { body, auth: false }))
}
