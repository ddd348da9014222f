import {
  type APIChannelSelectComponent,
  type APIComponentInContainer,
  type APIComponentInMessageActionRow,
  type APIRoleSelectComponent,
  type APIStringSelectComponent,
  ChannelType,
  ComponentType,
  SelectMenuDefaultValueType,
} from 'discord.js'
import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { GuildChange, GuildSettings } from '../../../ports/platform-desk.ts'
import { customId } from './custom-id.ts'
import { label, shown } from './plain-text.ts'
import type { Part } from './render.ts'
import { settingButton } from './say.ts'

const channelNames = ['bench', 'owner', 'orders'] as const
const roleNames = ['staffRoles', 'ownerRoles'] as const
type ChannelName = (typeof channelNames)[number]
type RoleName = (typeof roleNames)[number]

const mostRoles = 10
const id = /^\d{17,20}$/

const row = (component: APIComponentInMessageActionRow): APIComponentInContainer => ({
  type: ComponentType.ActionRow,
  components: [component],
})

const channelSelect = (name: ChannelName, text: string, chosen: string | null): APIChannelSelectComponent => ({
  type: ComponentType.ChannelSelect,
  custom_id: customId({ kind: 'setting', name }),
  placeholder: label(text, 150),
  channel_types: [ChannelType.GuildText],
  ...(chosen === null ? {} : { default_values: [{ id: chosen, type: SelectMenuDefaultValueType.Channel }] }),
})

const roleSelect = (name: RoleName, text: string, chosen: readonly string[]): APIRoleSelectComponent => ({
  type: ComponentType.RoleSelect,
  custom_id: customId({ kind: 'setting', name }),
  placeholder: label(text, 150),
  min_values: 0,
  max_values: mostRoles,
  default_values: chosen.map((role) => ({ id: role, type: SelectMenuDefaultValueType.Role })),
})

const oneOf = (
  name: 'talks' | 'language',
  text: string,
  options: readonly (readonly [string, string, boolean])[],
): APIStringSelectComponent => ({
  type: ComponentType.StringSelect,
  custom_id: customId({ kind: 'setting', name }),
  placeholder: label(text, 150),
  options: options.map(([value, said, chosen]) => ({ value, label: label(said, 100), default: chosen })),
})

/** What must be chosen before anything can be delivered. */
const missingOf = (settings: GuildSettings, language: Language): readonly string[] => {
  const words = platformWords[language].setUp
  return [
    ...(settings.bench === null ? [words.bench] : []),
    ...(settings.owner === null ? [words.owner] : []),
    ...(settings.staffRoles.length === 0 ? [words.staffRoles] : []),
    ...(settings.ownerRoles.length === 0 ? [words.ownerRoles] : []),
  ]
}

/** The dialogue with what is chosen so far; `note` says what came of the last step. */
export const setUpPart = (settings: GuildSettings, language: Language, note: string | null): Part => {
  const words = platformWords[language].setUp
  const text = (content: string): APIComponentInContainer => ({ type: ComponentType.TextDisplay, content })
  const missing = missingOf(settings, language)
  return {
    inside: [
      text(`**${shown(words.title)}**\n${shown(words.intro)}\n${shown(words.may)}`),
      ...channelNames.map((name) => row(channelSelect(name, words[name], settings[name]))),
      ...roleNames.map((name) => row(roleSelect(name, words[name], settings[name]))),
      row(
        oneOf('talks', words.talks, [
          ['direct', words.direct, settings.talks === 'direct'],
          ['thread', words.thread, settings.talks === 'thread'],
        ]),
      ),
      row(
        oneOf('language', words.language, [
          ['en', words.languages.en, settings.language === 'en'],
          ['es', words.languages.es, settings.language === 'es'],
        ]),
      ),
      text(shown(missing.length === 0 ? words.complete : words.missing(missing.join('; ')))),
      ...(note === null ? [] : [text(shown(note))]),
      settingButton('finish', words.finish),
    ],
    files: [],
  }
}

const channelChange = (name: ChannelName, value: string | undefined): GuildChange | null =>
  value !== undefined && id.test(value) ? { [name]: value } : null

const roleChange = (name: RoleName, values: readonly string[]): GuildChange | null =>
  values.length <= mostRoles && values.every((one) => id.test(one)) ? { [name]: values } : null

/** What a choice in the dialogue changes; null: not one of its parts, or not a value it offers. */
export const changeOf = (name: string, values: readonly string[]): GuildChange | null => {
  const [value] = values
  const channel = channelNames.find((one) => one === name)
  if (channel !== undefined) return channelChange(channel, value)
  const role = roleNames.find((one) => one === name)
  if (role !== undefined) return roleChange(role, values)
  if (name === 'talks' && (value === 'direct' || value === 'thread')) return { talks: value }
  if (name === 'language' && (value === 'en' || value === 'es')) return { language: value }
  return null
}
