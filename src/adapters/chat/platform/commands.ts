import {
  type APIApplicationCommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  PermissionFlagsBits,
  type RESTPostAPIChatInputApplicationCommandsJSONBody,
} from 'discord.js'
import { platformWords } from '../../../../templates/platform/languages.ts'
import { type CommandWord, commandWords } from '../../../ports/platform-desk.ts'

type OptionName = keyof typeof platformWords.en.options
type CommandShape = {
  readonly options: readonly OptionName[]
  /** Offered in direct messages with us too. */
  readonly direct: boolean
  /** Hidden by default from those who may not manage the server; the desk decides in any case. */
  readonly managers: boolean
}

const shapes: { readonly [word in CommandWord]: CommandShape } = {
  order: { options: ['text', 'file'], direct: true, managers: false },
  status: { options: [], direct: true, managers: false },
  tickets: { options: ['station', 'day'], direct: false, managers: false },
  morning: { options: [], direct: false, managers: false },
  load: { options: [], direct: false, managers: false },
  setup: { options: [], direct: false, managers: true },
}

/** The platform's code of Spanish as spoken in Latin America and in Spain. */
const spanish = (text: string) => ({ 'es-ES': text, 'es-419': text })

const optionOf = (name: OptionName): APIApplicationCommandOption => {
  const { en, es } = platformWords
  const said = {
    name: en.options[name].name,
    name_localizations: spanish(es.options[name].name),
    description: en.options[name].description,
    description_localizations: spanish(es.options[name].description),
    required: false,
  }
  if (name === 'file') return { type: ApplicationCommandOptionType.Attachment, ...said }
  return { type: ApplicationCommandOptionType.String, ...said, ...(name === 'text' ? {} : { autocomplete: true }) }
}

const commandOf = (word: CommandWord): RESTPostAPIChatInputApplicationCommandsJSONBody => {
  const { en, es } = platformWords
  const shape = shapes[word]
  return {
    type: ApplicationCommandType.ChatInput,
    name: en.commands[word].name,
    name_localizations: spanish(es.commands[word].name),
    description: en.commands[word].description,
    description_localizations: spanish(es.commands[word].description),
    options: shape.options.map(optionOf),
    default_member_permissions: shape.managers ? String(PermissionFlagsBits.ManageGuild) : null,
    integration_types: [ApplicationIntegrationType.GuildInstall],
    contexts: [InteractionContextType.Guild, ...(shape.direct ? [InteractionContextType.BotDM] : [])],
  }
}

/** What is registered with the platform; names are those of the port. */
export const platformCommands: readonly RESTPostAPIChatInputApplicationCommandsJSONBody[] = commandWords.map(commandOf)
