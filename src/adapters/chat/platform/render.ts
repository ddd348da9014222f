import {
  type APIActionRowComponent,
  type APIButtonComponentWithCustomId,
  type APIComponentInContainer,
  type APIContainerComponent,
  type APIStringSelectComponent,
  ButtonStyle,
  ComponentType,
  MessageFlags,
} from 'discord.js'
import type { Action, Choice, Form, Message } from '../../../ports/chat.ts'
import { blockTexts } from './blocks.ts'
import { customId } from './custom-id.ts'
import { formPages } from './form.ts'
import { label, shown } from './plain-text.ts'

/** A file of a message: its name there and its size in bytes. */
type CarriedFile = { readonly name: string; readonly bytes: number }
/** The files a message carries, and what to say about those it cannot. */
export type Carried = {
  readonly picture: CarriedFile | null
  readonly papers: readonly CarriedFile[]
  readonly note: string | null
}
export const nothingCarried: Carried = { picture: null, papers: [], note: null }

/** One message of the platform: components only, no mention ever takes effect. */
export type Body = {
  readonly flags: number
  readonly components: readonly [APIContainerComponent]
  readonly allowed_mentions: { readonly parse: readonly never[] }
}
/** `files` are the names that must be uploaded with it. */
export type Part = { readonly inside: readonly APIComponentInContainer[]; readonly files: readonly string[] }

/** The platform's limits on one message of components: 4,000 signs of text and 40 components; a little is kept back. */
const mostSigns = 3_900
const mostComponents = 38
/** How many files one message takes, and how many bytes one request to a server that nobody boosted. */
const mostFiles = 10
export const mostBytes = 10 * 1024 * 1024

type Atom = {
  readonly component: APIComponentInContainer
  readonly signs: number
  readonly components: number
  readonly bytes: number
  readonly file: string | null
}

const textAtom = (content: string): Atom => ({
  component: { type: ComponentType.TextDisplay, content },
  signs: content.length,
  components: 1,
  bytes: 0,
  file: null,
})

const styles = { main: ButtonStyle.Primary, plain: ButtonStyle.Secondary, grave: ButtonStyle.Danger } as const

const buttonOf = ({ id, label: text, weight }: Action): APIButtonComponentWithCustomId => ({
  type: ComponentType.Button,
  custom_id: customId({ kind: 'action', id }),
  label: label(text, 80),
  style: styles[weight],
})

const formButtons = (form: Form): readonly APIButtonComponentWithCustomId[] => {
  const pages = formPages(form)
  return pages.map((_, at) => ({
    type: ComponentType.Button,
    custom_id: customId({ kind: 'form', id: form.id, page: at + 1 }),
    label: label(pages.length > 1 ? `${label(form.title, 70)} ${at + 1}/${pages.length}` : form.title, 80),
    style: ButtonStyle.Primary,
  }))
}

const inGroups = <T>(items: readonly T[], size: number): readonly (readonly T[])[] =>
  Array.from({ length: Math.ceil(items.length / size) }, (_, at) => items.slice(at * size, (at + 1) * size))

const rowAtom = (components: readonly (APIButtonComponentWithCustomId | APIStringSelectComponent)[]): Atom => {
  const component: APIActionRowComponent<APIButtonComponentWithCustomId | APIStringSelectComponent> = {
    type: ComponentType.ActionRow,
    components: [...components],
  }
  return { component, signs: 0, components: 1 + components.length, bytes: 0, file: null }
}

/** A choice of more than 25 is shown in several lists. */
const choiceAtoms = (choice: Choice): readonly Atom[] => {
  const options = new Map(choice.options.map(({ value, label: text }) => [value.slice(0, 100), label(text, 100)]))
  const lists = inGroups([...options], 25)
  return lists.map((list, at) =>
    rowAtom([
      {
        type: ComponentType.StringSelect,
        custom_id: customId({ kind: 'choice', id: choice.id, part: at + 1 }),
        placeholder: label(lists.length > 1 ? `${label(choice.label, 100)} (${at + 1}/${lists.length})` : choice.label, 150),
        options: list.map(([value, text]) => ({ value, label: text })),
      },
    ]),
  )
}

const pictureAtom = ({ name, bytes }: CarriedFile, alt: string): Atom => ({
  component: {
    type: ComponentType.MediaGallery,
    items: [{ media: { url: `attachment://${name}` }, description: label(alt, 1_000) }],
  },
  signs: 0,
  components: 2,
  bytes,
  file: name,
})

const fileAtom = ({ name, bytes }: CarriedFile): Atom => ({
  component: { type: ComponentType.File, file: { url: `attachment://${name}` } },
  signs: 0,
  components: 1,
  bytes,
  file: name,
})

const atomsOf = (message: Message, carried: Carried): readonly Atom[] => {
  const buttons = [...message.actions.map(buttonOf), ...(message.form === null ? [] : formButtons(message.form))]
  return [
    ...message.blocks.flatMap((block) => blockTexts(block, message.language, mostSigns)).map(textAtom),
    ...(carried.picture === null ? [] : [pictureAtom(carried.picture, message.picture?.alt ?? '')]),
    ...carried.papers.map(fileAtom),
    ...(carried.note === null ? [] : [textAtom(shown(carried.note))]),
    ...(message.choice === null ? [] : choiceAtoms(message.choice)),
    ...inGroups(buttons, 5).map(rowAtom),
  ]
}

const sum = (atoms: readonly Atom[], of: 'signs' | 'components' | 'bytes'): number =>
  atoms.reduce((total, atom) => total + atom[of], 0)

const filesOf = (atoms: readonly Atom[]): readonly string[] => atoms.flatMap((atom) => atom.file ?? [])

const isWithinLimits = (atoms: readonly Atom[]): boolean =>
  sum(atoms, 'signs') <= mostSigns &&
  sum(atoms, 'components') <= mostComponents &&
  sum(atoms, 'bytes') <= mostBytes &&
  filesOf(atoms).length <= mostFiles

/** The message in as few parts as the platform's limits allow, in reading order; at least one. */
export const renderParts = (message: Message, carried: Carried): readonly Part[] => {
  const groups: Atom[][] = [[]]
  for (const atom of atomsOf(message, carried)) {
    const group = groups.at(-1) ?? []
    if (group.length === 0 || isWithinLimits([...group, atom])) group.push(atom)
    else groups.push([atom])
  }
  return groups.map((group) => ({
    inside: group.length === 0 ? [textAtom('–').component] : group.map((atom) => atom.component),
    files: filesOf(group),
  }))
}

/** `mark` is a number by which our own message is found again among those of a channel. */
export const bodyOf = (part: Part, mark: number, extraFlags: number): Body => ({
  flags: MessageFlags.IsComponentsV2 | extraFlags,
  components: [{ type: ComponentType.Container, id: mark, components: [...part.inside] }],
  allowed_mentions: { parse: [] },
})
