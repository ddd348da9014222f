import { type APIModalInteractionResponseCallbackData, InteractionResponseType, MessageFlags, REST, Routes } from 'discord.js'
import { inTurn } from './in-turn.ts'
import type { Interaction } from './interaction.ts'
import { label } from './plain-text.ts'
import { failureOf, hasCode } from './rest-failure.ts'

/**
 * `update`: the message stays as it is and a private note may follow. `private`: a private note is promised and must be
 * written. `late`: the platform no longer takes an answer; the deed itself still counts.
 */
export type Acknowledged = 'update' | 'private' | 'late'

/** The platform waits three seconds; two tries fit. */
const tryFor = 1_200
const alreadyAcknowledged = 40_060
const unknownInteraction = 10_062
/** Answers do not count against a bot's global limit (the platform's documentation); the library would count them. */
const answersPerSecond = 1_000
/** Lines opened at once: many more would only wait for one another. */
const calls = inTurn(64)

/** The REST side for answers: an interaction's own token is its only key. */
export const answerRest = (api: string | null): REST =>
  new REST({ version: '10', retries: 0, globalRequestsPerSecond: answersPerSecond, ...(api === null ? {} : { api }) })

type Taken = 'taken' | 'taken-before' | 'late'

const tryCallback = async (answers: REST, { id, token }: Interaction, body: object): Promise<Taken | 'unknown'> => {
  try {
    await calls(() =>
      answers.post(Routes.interactionCallback(id, token), { body, auth: false, signal: AbortSignal.timeout(tryFor) }),
    )
    return 'taken'
  } catch (error) {
    if (hasCode(error, alreadyAcknowledged)) return 'taken-before'
    if (hasCode(error, unknownInteraction)) return 'late'
    if (failureOf(error)?.kind === 'unknown') return 'unknown'
    throw error
  }
}

/** `taken-before`: by an earlier try of ours, or by another session of the same bot. */
const callback = async (answers: REST, interaction: Interaction, body: object): Promise<Taken> => {
  const first = await tryCallback(answers, interaction, body)
  if (first === 'taken-before') interaction.answered.elsewhere = true
  const last = first === 'unknown' ? await tryCallback(answers, interaction, body) : first
  return last === 'unknown' ? 'late' : last
}

const answerAs = (interaction: Interaction, how: Acknowledged): Acknowledged => {
  interaction.answered.how ??= how
  return interaction.answered.how
}

/**
 * Acknowledges with a private note to come. What was taken before may have been taken as an update, whose original is the
 * message everybody sees: then the note follows by itself.
 */
export const acknowledgePrivately = async (answers: REST, interaction: Interaction): Promise<Acknowledged> => {
  if (interaction.answered.how !== null) return interaction.answered.how
  const body = { type: InteractionResponseType.DeferredChannelMessageWithSource, data: { flags: MessageFlags.Ephemeral } }
  const taken = await callback(answers, interaction, body)
  if (taken === 'late') return answerAs(interaction, 'late')
  return answerAs(interaction, taken === 'taken-before' && interaction.message !== null ? 'update' : 'private')
}

/** Acknowledges: what stands on a message stays as it is, a command gets a private note. */
export const acknowledge = async (answers: REST, interaction: Interaction): Promise<Acknowledged> => {
  if (interaction.answered.how !== null) return interaction.answered.how
  if (interaction.message === null) return await acknowledgePrivately(answers, interaction)
  const body = { type: InteractionResponseType.DeferredMessageUpdate }
  return answerAs(interaction, (await callback(answers, interaction, body)) === 'late' ? 'late' : 'update')
}

export const showForm = async (
  answers: REST,
  interaction: Interaction,
  data: APIModalInteractionResponseCallbackData,
): Promise<void> => {
  await callback(answers, interaction, { type: InteractionResponseType.Modal, data })
}

const mostSuggestions = 25
const longestSuggestion = 100

export const suggest = async (answers: REST, interaction: Interaction, values: readonly string[]): Promise<void> => {
  const choices = values
    .filter((value) => value.length <= longestSuggestion)
    .slice(0, mostSuggestions)
    .map((value) => ({ name: label(value, longestSuggestion), value }))
  await callback(answers, interaction, { type: InteractionResponseType.ApplicationCommandAutocompleteResult, data: { choices } })
}
