import { deskWords } from '../../../../templates/desk/words.ts'
import { type Spoken, say } from '../../../../templates/replies/say.ts'
import type { Shop } from '../../../domain/shop/shop.ts'
import { showFor } from '../../../domain/shop/show.ts'
import type { Reply } from '../../../domain/understanding/replies.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { Action, Block, Form, Message } from '../../../ports/chat.ts'

const empty: Omit<Message, 'language'> = { blocks: [], picture: null, file: null, actions: [], choice: null, form: null }

export const messageWith = (language: Language, parts: Partial<Omit<Message, 'language'>>): Message => ({
  ...empty,
  language,
  ...parts,
})

/** A message of plain text. */
export const textMessage = (text: string, language: Language): Message =>
  messageWith(language, { blocks: [{ kind: 'text', text, tone: 'plain' }] })

/** Where a button of the conversation leads: the shown revision rides along, so that nothing else can be signed by it. */
const actionId = (action: string, version: { readonly revision?: number; readonly hash?: string }): string =>
  ['c', action, version.revision ?? '', version.hash ?? ''].join(':')

/** What keeps it from being made stands first, then what needs care; plain notes are one list. */
const problemBlocks = ({ problems }: Spoken): readonly Block[] => {
  const stops = problems.filter(({ severity }) => severity === 'stop')
  const cautions = problems.filter(({ severity }) => severity === 'needs-test' || severity === 'caution')
  const notes = problems.filter(({ severity }) => severity === 'note').map((note) => note.text)
  return [
    ...stops.map(({ text }): Block => ({ kind: 'text', text, tone: 'stop' })),
    ...cautions.map(({ text }): Block => ({ kind: 'text', text, tone: 'caution' })),
    ...(notes.length === 0 ? [] : [{ kind: 'list', title: null, items: [...new Set(notes)] } as const]),
  ]
}

const blocksOf = (spoken: Spoken): readonly Block[] => {
  const { before, fields, table, sums, after } = spoken.parts
  const text = (words: string): Block => ({ kind: 'text', text: words, tone: 'plain' })
  return [
    text(before),
    ...(fields === undefined ? [] : [{ kind: 'fields', fields } as const]),
    ...(table === undefined ? [] : [{ kind: 'table', head: table.head, rows: table.rows } as const]),
    ...problemBlocks(spoken),
    ...(sums === undefined ? [] : [{ kind: 'fields', fields: sums } as const]),
    ...(after === undefined ? [] : [text(after)]),
  ]
}

const graveActions: ReadonlySet<string> = new Set(['cancel', 'start-over'])

const actionsOf = (spoken: Spoken): readonly Action[] =>
  spoken.actions.map(({ action, label, ...version }) => ({
    id: actionId(action, version),
    label,
    weight: action === 'sign-off' ? 'main' : graveActions.has(action) ? 'grave' : 'plain',
  }))

const formOf = (spoken: Spoken, language: Language): Form | null => {
  if (spoken.form.length === 0) return null
  const fields = spoken.form.map(({ field, kind }) => ({
    name: field,
    label: field,
    kind: kind === 'lines' ? ('lines' as const) : ('line' as const),
    options: [],
    required: true,
  }))
  return { id: 'c:form', title: spoken.parts.before, fields, submit: deskWords[language].send }
}

/** A reply of the conversation as a message of the chat. */
export const replyMessage = (reply: Reply, language: Language, shop: Shop): Message => {
  const spoken = say(reply, language, showFor(shop, language))
  const alt =
    'revision' in reply.facts && typeof reply.facts.revision === 'number' ? deskWords[language].picture(reply.facts.revision) : ''
  return messageWith(language, {
    blocks: blocksOf(spoken),
    picture: spoken.picture === null ? null : { file: spoken.picture, alt },
    actions: actionsOf(spoken),
    choice:
      spoken.choices.length === 0
        ? null
        : { id: 'c:choice', label: spoken.parts.after ?? spoken.parts.before, options: spoken.choices },
    form: formOf(spoken, language),
  })
}
