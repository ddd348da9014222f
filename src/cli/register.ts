import { type Registered, registerCommands } from '../adapters/chat/platform/register.ts'
import { projectRoot } from '../adapters/folder/root.ts'
import { readConfig } from '../config.ts'
import { type Command, exitCodes, isOn, runCommand, text, UsageError, type Words } from './command.ts'
import { problemText } from './problem-text.ts'

const USAGE = `register: registers the chat platform's commands

  npm run -s register -- [--guild ID | --everywhere] [--json]

In one server while trying (there at once), or everywhere (for production).
PLATFORM_TOKEN is the bot's token; PLATFORM_GUILD is the server when none is given.`

const reasons: { readonly [why in Exclude<Registered, { ok: true }>['why']]: string } = {
  'token-refused': 'the platform refused the token; copy it again from the bot’s page into PLATFORM_TOKEN',
  'server-refused': 'the platform refused this server; add the bot to it first, and look at the id',
  'commands-refused': 'the platform refused the commands',
  'not-reached': 'the platform could not be reached',
}

const guildOf = (words: Words, preset: string | null): string | null => {
  const given = text(words, 'guild')
  if (given !== undefined && isOn(words, 'everywhere')) throw new UsageError('give --guild or --everywhere, not both')
  if (isOn(words, 'everywhere')) return null
  const guild = given ?? preset
  if (guild !== null && !/^\d{17,20}$/.test(guild)) throw new UsageError(`${guild} is not the id of a server: 17 to 20 digits`)
  return guild
}

const run = async (words: Words): Promise<number> => {
  const config = readConfig(projectRoot())
  if (!config.ok) throw new UsageError(config.problems.map(problemText).join('\n'))
  const { token, guild: preset, api } = config.value.platform
  if (token === null) throw new UsageError('PLATFORM_TOKEN is not set; it is the bot’s token')
  const guild = guildOf(words, preset)
  const done = await registerCommands({ token, guild, api })
  if (isOn(words, 'json')) console.log(JSON.stringify(done))
  else if (done.ok) console.log(`${done.commands} commands registered ${guild === null ? 'everywhere' : `in server ${guild}`}`)
  else console.error(`${reasons[done.why]}: ${done.detail}`)
  return done.ok ? exitCodes.done : exitCodes.refused
}

const command: Command = {
  usage: USAGE,
  options: { guild: { type: 'string' }, everywhere: { type: 'boolean' }, json: { type: 'boolean' } },
  run,
}

await runCommand(command)
