import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Shop } from '../../../src/domain/shop/shop.ts'
import type { Complaint, Conversation, Want } from '../../../src/domain/understanding/conversation.ts'
import { startConversation } from '../../../src/domain/understanding/conversation.ts'
import { type Composed, documentOf } from '../../../src/domain/understanding/document.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { raisedBy } from '../../../src/domain/understanding/raise.ts'
import type { Reply } from '../../../src/domain/understanding/replies.ts'

export type Fact = { readonly path: string } & (
  | { readonly value: unknown }
  | { readonly includes: string }
  | { readonly present: true }
)
export type Case = {
  readonly id: string
  readonly now: string
  readonly language: 'en' | 'es'
  readonly says: readonly string[]
  readonly facts: readonly Fact[]
  readonly open?: readonly { readonly about: string; readonly path?: string; readonly readings: readonly unknown[] }[]
  readonly not?: readonly Fact[]
  readonly signed?: boolean
  readonly intent?: string
  readonly record?: Partial<Complaint>
}

export const readCorpus = (folder: string): readonly Case[] =>
  readdirSync(folder)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .flatMap((file) => JSON.parse(readFileSync(join(folder, file), 'utf8')) as readonly Case[])

export type Played = {
  readonly conversation: Conversation
  readonly composed: Composed
  readonly wants: readonly Want[]
  readonly replies: readonly Reply[]
  readonly questions: number
  /** Messages after which nothing was said and nothing was begun. */
  readonly unanswered: readonly string[]
}

/** Plays a conversation as the counter would; a complete order is worked out at once, and where the case signs, shown before the last word. */
export const play = (one: Case, shop: Shop): Played => {
  const context = { shop, now: one.now }
  let conversation = startConversation({ id: one.id, person: { id: 'p', name: null }, language: one.language })
  const wants: Want[] = []
  const replies: Reply[] = []
  const unanswered: string[] = []
  let questions = 0
  for (const [index, text] of one.says.entries()) {
    const last = index === one.says.length - 1
    if (last && one.signed !== undefined) conversation = shownTo(conversation, shop)
    const heard = hear(conversation, { id: `m${index}`, kind: 'said', text }, context)
    conversation = heard.conversation
    replies.push(...heard.replies)
    if (heard.replies.length === 0 && heard.wants === null) unanswered.push(text)
    questions += heard.replies.filter((reply) => /^(?:ask|raise)-/.test(reply.code)).length
    if (heard.wants !== null) wants.push(heard.wants)
    if (heard.wants?.kind === 'quote') {
      const { revision, hash } = heard.wants
      const quote = { price: null, promise: null, problems: [], picture: null }
      conversation = hear(conversation, { id: `q${index}`, kind: 'quoted', revision, hash, quote }, context).conversation
    }
  }
  return { conversation, composed: documentOf(withoutFillers(conversation), context), wants, replies, questions, unanswered }
}

/** Put in where a case leaves them out, so that a proof can be shown; nobody said them. */
const fillers = { team: 'A team nobody named', sport: 'unnamed', orders: 'Somebody unnamed', day: '2027-02-01', hour: '17:03' }

const withoutFillers = (conversation: Conversation): Conversation => ({
  ...conversation,
  draft: {
    ...conversation.draft,
    ...Object.fromEntries(
      Object.entries(fillers).flatMap(([key, value]) =>
        Reflect.get(conversation.draft, key) === value ? [[key, undefined]] : [],
      ),
    ),
  },
})

/** As if all that was missing had been said and the proof shown: the case is about the last word only. What amounts to no document is not shown. */
const shownTo = (conversation: Conversation, shop: Shop): Conversation => {
  const { draft } = conversation
  const ages = draft.ages ?? ('13-up' as const)
  const filled = {
    ...conversation,
    open: [],
    asked: null,
    draft: {
      ...draft,
      ...Object.fromEntries(Object.entries(fillers).filter(([key]) => Reflect.get(draft, key) === undefined)),
      ages,
      // Of toddlers' sizes it was asked again.
      agreed: { ...draft.agreed, [`ages:${ages}`]: true as const },
    },
  }
  const { hash } = documentOf(filled, { shop })
  return hash === null ? conversation : { ...filled, shown: { revision: 1, hash } }
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null

const matches = (member: unknown, key: string, text: string): boolean => {
  if (!isRecord(member)) return false
  const value = member[key]
  if (Array.isArray(value)) return value.map(String).includes(text)
  return value !== undefined && String(value) === text
}

/** All values a path with selectors picks; a step to nothing gives undefined. */
export const pick = (document: unknown, path: string): readonly unknown[] => {
  let values: readonly unknown[] = [document]
  for (const step of path.split('/').slice(1)) {
    const name = step.replace(/\[.*$/, '')
    const selectors = [...step.matchAll(/\[([^=\]]+)=([^\]]*)\]/g)].map((match) => [match[1] ?? '', match[2] ?? ''] as const)
    values = values.map((value) =>
      name === 'length' ? (Array.isArray(value) ? value.length : 0) : isRecord(value) ? value[name] : undefined,
    )
    if (selectors.length > 0) {
      values = values.flatMap((value) =>
        Array.isArray(value) ? value.filter((member) => selectors.every(([key, text]) => matches(member, key, text))) : [],
      )
    }
  }
  return values
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

export const holds = (document: unknown, fact: Fact): boolean => {
  const values = pick(document, fact.path)
  if ('present' in fact) return values.length > 0 && values.every((value) => value !== undefined && value !== null)
  if ('includes' in fact)
    return (
      values.length > 0 &&
      values.every((value) => typeof value === 'string' && value.toLowerCase().includes(fact.includes.toLowerCase()))
    )
  if (fact.value === null) return values.every((value) => value === undefined || value === null)
  if (fact.path.endsWith('/length') && values.length === 0) return fact.value === 0
  return values.length > 0 && values.every((value) => same(value, fact.value))
}

/** What is still to be asked, in the corpus's words. */
export const openOf = ({
  conversation,
  composed,
}: Played): readonly { readonly about: string; readonly readings: readonly string[] }[] => {
  const rowsOf = (test: (row: { number?: string | undefined; name?: string | undefined }) => boolean) =>
    composed.order.roster.filter(test).map((row) => `/roster[line=${row.line}]`)
  const raised = raisedBy(conversation, composed.order).map(({ about, quote, readings }) => {
    if (about === 'duplicate-number') return { about, readings: rowsOf((row) => row.number === quote) }
    if (about === 'same-surname') return { about, readings: rowsOf((row) => row.name?.toLowerCase() === quote.toLowerCase()) }
    return { about, readings: readings.map((reading) => reading.value) }
  })
  const open = conversation.open.map(({ about, readings }) => ({
    about,
    readings: readings.map((reading) => (about === 'drop' ? `/roster[line=${reading.value}]` : reading.value)),
  }))
  const hour = composed.missing.some((missing) => missing.code === 'ask-hour')
    ? [{ about: 'needBy', readings: [conversation.draft.day ?? ''] }]
    : []
  const fit = composed.missing.some((missing) => missing.code === 'ask-fit') ? [{ about: 'fit', readings: ['youth', 'men'] }] : []
  return [...open, ...raised, ...hour, ...fit]
}

export type Score = {
  readonly facts: number
  readonly missed: readonly string[]
  readonly wrong: readonly string[]
  readonly questions: number
  readonly played: Played
}

const intentOf = ({ wants, replies }: Played): string => {
  const kinds = wants.map((want) => want.kind)
  if (kinds.includes('complaint')) return 'complaint'
  if (kinds.includes('earlier-order')) return 'reorder'
  if (kinds.includes('status')) return 'status'
  return replies.some((reply) => ['off-topic', 'rude', 'not-understood'].includes(reply.code)) ? 'off-topic' : 'order'
}

const recordMisses = (one: Case, { wants }: Played): readonly string[] => {
  const complaint = wants.flatMap((want) => (want.kind === 'complaint' ? [want.complaint] : [])).at(-1)
  return Object.entries(one.record ?? {}).flatMap(([key, value]) => {
    const got: unknown = complaint === undefined ? undefined : Reflect.get(complaint, key)
    return agrees(key, { got, value }) ? [] : [`record ${key}: ${JSON.stringify(got)} ≠ ${JSON.stringify(value)}`]
  })
}

const isWord = (value: unknown): value is string => typeof value === 'string'

/** How a shop writes "hot dryer" or "la colgué" down is its own choice: two ways to dry are told apart, no wording. */
const drying = (words: string): string => (/dryer|secadora|tumble/i.test(words) ? 'dryer' : 'air')

/** A record's words: a team as the facts' `includes`, a kind with or without its hyphen. */
const agrees = (key: string, { got, value }: { readonly got: unknown; readonly value: unknown }): boolean => {
  if (!isWord(got) || !isWord(value)) return same(got, value)
  if (key === 'drying') return drying(got) === drying(value)
  return got.toLowerCase().replaceAll('-', ' ').includes(value.toLowerCase().replaceAll('-', ' '))
}

const wantedText = (fact: Fact): string =>
  'value' in fact ? JSON.stringify(fact.value) : 'includes' in fact ? `~${fact.includes}` : 'present'

const factMisses = (one: Case, document: unknown): readonly string[] =>
  one.facts
    .filter((fact) => !holds(document, fact))
    .map((fact) => `${fact.path}: ${JSON.stringify(pick(document, fact.path))} ≠ ${wantedText(fact)}`)

/** Questions whose readings are lines of the roster; a case may give them as bare line numbers. */
const ABOUT_LINES = new Set(['drop', 'duplicate-number', 'same-surname'])
const lineOf = (line: number): string => `/roster[line=${line}]`

const openMisses = (one: Case, played: Played): readonly string[] => {
  const open = openOf(played)
  const sorted = (readings: readonly unknown[]) => JSON.stringify(readings.map(String).sort())
  const wantedOf = ({ about, readings }: NonNullable<Case['open']>[number]) =>
    sorted(readings.map((reading) => (ABOUT_LINES.has(about) && typeof reading === 'number' ? lineOf(reading) : reading)))
  return (one.open ?? [])
    .filter((wanted) => !open.some((asked) => asked.about === wanted.about && sorted(asked.readings) === wantedOf(wanted)))
    .map((wanted) => `open ${wanted.about} ${wantedOf(wanted)}: ${JSON.stringify(open)}`)
}

const endMisses = (one: Case, played: Played): readonly string[] => {
  const signed = played.wants.some((want) => want.kind === 'sign-off')
  return [
    ...(one.intent !== undefined && intentOf(played) !== one.intent ? [`intent ${intentOf(played)} ≠ ${one.intent}`] : []),
    ...(one.signed !== undefined && signed !== one.signed ? [`signed ${signed}`] : []),
  ]
}

const countOf = (one: Case): number =>
  one.facts.length +
  (one.open?.length ?? 0) +
  Number(one.intent !== undefined) +
  Object.keys(one.record ?? {}).length +
  Number(one.signed !== undefined)

/** One case's score: every fact, open question, intent, record and signature counts one; `wrong` are readings that may never hold. */
export const score = (one: Case, shop: Shop): Score => {
  const played = play(one, shop)
  const document = played.composed.order
  const missed = [
    ...factMisses(one, document),
    ...openMisses(one, played),
    ...recordMisses(one, played),
    ...endMisses(one, played),
  ]
  const wrong = (one.not ?? []).filter((fact) => holds(document, fact)).map((fact) => JSON.stringify(fact))
  return { facts: countOf(one), missed, wrong, questions: played.questions, played }
}
