import { platformWords } from '../../../../templates/platform/languages.ts'
import type { GuildChange, GuildSettings } from '../../../ports/platform-desk.ts'
import { type Acknowledged, acknowledge, acknowledgePrivately } from './acknowledge.ts'
import type { Interaction } from './interaction.ts'
import type { Needs } from './needs.ts'
import { failureOf } from './rest-failure.ts'
import { actorOf } from './role.ts'
import { sayIn, textPart } from './say.ts'
import { changeOf, setUpPart } from './set-up.ts'
import { rewrite, tell } from './tell.ts'

/** Whoever manages the server, or is the shop's owner by its stored roles; others are refused by the desk, which notes it. */
const mayArrange = async ({ desk }: Needs, interaction: Interaction, settings: GuildSettings | null): Promise<boolean> => {
  if (interaction.manages) return true
  if (settings === null) return false
  const outcome = await desk.act(actorOf(settings, interaction), { kind: 'pressed', id: interaction.id, action: 'c:setup' })
  return outcome.outcome !== 'refused'
}

const settingsAfter = async (
  needs: Needs,
  interaction: Interaction,
  change: GuildChange,
): Promise<GuildSettings | 'refused' | 'elsewhere'> => {
  const { guild, person } = interaction
  if (guild === null) return 'elsewhere'
  const settings = await needs.desk.guild(guild)
  if (!(await mayArrange(needs, interaction, settings))) return 'refused'
  if (settings !== null && Object.keys(change).length === 0) return settings
  return await needs.desk.setUp({ id: guild, name: needs.serverName(guild) ?? guild }, person, change)
}

const refuse = async (
  needs: Needs,
  interaction: Interaction,
  told: { readonly how: Acknowledged; readonly why: 'refused' | 'elsewhere' },
) => {
  const words = platformWords[interaction.person.language]
  const text = told.why === 'refused' ? words.refused : words.onlyInServer
  await tell(needs, interaction, { how: told.how, parts: [textPart(text)], files: [] })
}

/** Opens the set-up dialogue, seen only by the one who asked. */
export const openSetUp = async (needs: Needs, interaction: Interaction, how: Acknowledged): Promise<void> => {
  const settings = await settingsAfter(needs, interaction, {})
  if (settings === 'refused' || settings === 'elsewhere') return await refuse(needs, interaction, { how, why: settings })
  const part = setUpPart(settings, interaction.person.language, null)
  return await tell(needs, interaction, { how, parts: [part], files: [] })
}

/** Writes into each chosen channel; gives back the names of those where it could not. */
const tryChannels = async (needs: Needs, interaction: Interaction, settings: GuildSettings): Promise<readonly string[]> => {
  const words = platformWords[settings.language].setUp
  const failed: string[] = []
  for (const name of ['bench', 'owner'] as const) {
    const channel = settings[name]
    if (channel === null) continue
    try {
      await sayIn(needs, channel, { part: textPart(words.hello(words[name])), cause: `hello|${name}|${interaction.id}` })
    } catch (error) {
      if (failureOf(error)?.kind !== 'never') throw error
      failed.push(words[name])
    }
  }
  return failed
}

const finish = async (needs: Needs, interaction: Interaction, settings: GuildSettings): Promise<string> => {
  const failed = await tryChannels(needs, interaction, settings)
  const words = platformWords[interaction.person.language].setUp
  return failed.length === 0 ? words.tried : words.notTried(failed.join('; '))
}

/** A part of the set-up dialogue was used: kept at once, and the dialogue is written anew with what is chosen. */
export const onSetting = async (
  needs: Needs,
  interaction: Interaction,
  chosen: { readonly name: string; readonly values: readonly string[] },
): Promise<void> => {
  if (chosen.name === 'start') {
    return await openSetUp(needs, interaction, await acknowledgePrivately(needs.answers, interaction))
  }
  const how = await acknowledge(needs.answers, interaction)
  const change = chosen.name === 'finish' ? {} : changeOf(chosen.name, chosen.values)
  const settings = change === null ? 'refused' : await settingsAfter(needs, interaction, change)
  if (settings === 'refused' || settings === 'elsewhere') return await refuse(needs, interaction, { how, why: settings })
  const note = chosen.name === 'finish' ? await finish(needs, interaction, settings) : null
  return await rewrite(needs, interaction, setUpPart(settings, interaction.person.language, note))
}
