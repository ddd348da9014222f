import { DiscordAPIError, REST, Routes } from 'discord.js'
import * as z from 'zod'
import { platformCommands } from './commands.ts'
import { systemClock, withPatience } from './patience.ts'

export type Registration = { readonly token: string; readonly guild: string | null; readonly api: string | null }
export type Registered =
  | { readonly ok: true; readonly commands: number; readonly application: string }
  | {
      readonly ok: false
      readonly why: 'token-refused' | 'server-refused' | 'commands-refused' | 'not-reached'
      readonly detail: string
    }

const application = z.object({ id: z.string() })

const whyOf = (error: unknown): Exclude<Registered, { ok: true }> => {
  if (!(error instanceof DiscordAPIError)) {
    return { ok: false, why: 'not-reached', detail: error instanceof Error ? error.message || error.name : String(error) }
  }
  const why =
    error.status === 401 ? 'token-refused' : error.status === 403 || error.status === 404 ? 'server-refused' : 'commands-refused'
  return { ok: false, why, detail: error.message }
}

/** Puts our commands in place of whatever was registered: everywhere, or in one server only. May be run again. */
export const registerCommands = async ({ token, guild, api }: Registration): Promise<Registered> => {
  const rest = new REST({ version: '10', retries: 0, ...(api === null ? {} : { api }) }).setToken(token)
  try {
    const { id } = application.parse(await withPatience(systemClock, () => rest.get(Routes.currentApplication())))
    const route = guild === null ? Routes.applicationCommands(id) : Routes.applicationGuildCommands(id, guild)
    await withPatience(systemClock, () => rest.put(route, { body: platformCommands }))
    return { ok: true, commands: platformCommands.length, application: id }
  } catch (error) {
    return whyOf(error)
  }
}
