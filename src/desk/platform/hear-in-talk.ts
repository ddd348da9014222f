import { serverWords } from '../../../templates/desk/server.ts'
import type { Language } from '../../domain/units/language.ts'
import type { Attachment, Form, Incoming } from '../../ports/chat.ts'
import type { Outcome, PlatformPerson, Talk } from '../../ports/platform-desk.ts'
import { conversationChannel, type Desk } from '../service/desk.ts'
import { orderIdOf } from '../service/records/order-id.ts'
import { saidFiles } from '../service/records/said-files.ts'
import { hearCustomer } from '../service/talk/hear-customer.ts'
import { orderStatus } from '../service/talk/order-status.ts'
import { done, known, refuse } from './refuse.ts'

const customersActions = /^c:(?:sign-off|undo|change|person|start-over|cancel|status)(?::|$)/
export const answerFormId = 'c:form'

/** Only what a conversation's own messages carry; anything else was made up or belongs elsewhere. */
const isTheirs = (talk: Talk, incoming: Incoming): boolean => {
  switch (incoming.kind) {
    case 'said':
      return true
    case 'pressed':
      return customersActions.test(incoming.action) || incoming.action.startsWith(`p:${orderIdOf(talk.conversation)}:`)
    case 'chose':
      return incoming.choice === 'c:choice'
    case 'filled':
      return incoming.form === answerFormId
  }
}

/** A room in which plain messages do not reach us is answered by a form: words, and a file beside them. */
export const answerForm = (language: Language): Form => {
  const words = serverWords[language]
  return {
    id: answerFormId,
    title: words.answer,
    submit: words.send,
    fields: [
      { name: 'words', label: words.words, kind: 'lines', options: [], required: false },
      { name: 'file', label: words.rosterFile, kind: 'file', options: [], required: false },
    ],
  }
}

const attachmentsOf = async (desk: Desk, talk: Talk, ids: string): Promise<readonly Attachment[]> => {
  const { files } = desk.store.shop(desk.shopId)
  const owner = conversationChannel(talk.conversation)
  const kept = await Promise.all(
    ids
      .split(',')
      .filter((id) => id !== '')
      .map(async (file) => ({ file, stored: await files.read(owner, file) })),
  )
  return kept.flatMap(({ file, stored }) =>
    stored === null ? [] : [{ file, name: stored.name, mime: stored.mime, bytes: stored.bytes.length }],
  )
}

/** A filled form says what a message with a file would have said. */
const asSaid = async (desk: Desk, talk: Talk, incoming: Incoming): Promise<Incoming> => {
  if (incoming.kind !== 'filled') return incoming
  const { id, values } = incoming
  return { kind: 'said', id, text: values['words'] ?? '', files: await attachmentsOf(desk, talk, values['file'] ?? '') }
}

/** Something done in a customer's conversation: only the customer themself is heard there, and each delivery once. */
export const hearInTalk = async (
  desk: Desk,
  talk: Talk,
  deed: { readonly by: PlatformPerson; readonly incoming: Incoming },
): Promise<Outcome> => {
  const { by, incoming } = deed
  const shop = desk.store.shop(desk.shopId)
  if (!(await shop.heard.isNew(incoming.id))) return known
  if (talk.person !== by.id || !isTheirs(talk, incoming)) return refuse(desk, { id: by.id, role: 'customer' }, incoming)
  if (incoming.kind === 'pressed' && incoming.action.startsWith('c:status')) {
    const said = await orderStatus(desk, shop, { id: talk.conversation, language: talk.language })
    return { ...done, said }
  }
  const said = await asSaid(desk, talk, incoming)
  const files = said.kind === 'said' ? await saidFiles(desk, talk.conversation, said.files) : []
  const heard = await hearCustomer(desk, talk.conversation, { incoming: said, files })
  if (!heard.ok)
    throw new Error(`a turn of ${talk.conversation} was not kept: ${heard.problems.map((one) => one.code).join(', ')}`)
  return done
}
