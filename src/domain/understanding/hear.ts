import { canonical } from './content-hash.ts'
import type { Button, Conversation, How, Said, SaidFile, Want } from './conversation.ts'
import { type Context, documentOf } from './document.ts'
import { hearFiles } from './files.ts'
import { firstReplies } from './first-replies.ts'
import { answerCancel, askCancel, cancel } from './hear-cancel.ts'
import { moreOfComplaint, noteComplaint, wordsOfComplaint } from './hear-complaint.ts'
import { askedOnce, hearEarlier } from './hear-earlier.ts'
import { hearQuote } from './hear-quoted.ts'
import type { Patch } from './patch.ts'
import { closeTurn, type Heard, proceed, tidyOf } from './proceed.ts'
import { understand } from './read/understand.ts'
import type { Reply } from './replies.ts'
import { signPressed, signSaid } from './sign.ts'
import { takeBothBack } from './take-both-back.ts'
import { markSeen, takeBack, takeTurn } from './turn.ts'
import type { Intent, Understood } from './understood.ts'
import { askVariant, hearPriced } from './variant.ts'

const reply = (
  code:
    | 'earlier-order-elsewhere'
    | 'undone'
    | 'nothing-to-undo'
    | 'care'
    | 'kept-as-is'
    | 'no-hurry'
    | 'earlier-mentioned'
    | 'thanks'
    | 'off-topic'
    | 'rude'
    | 'started-over'
    | 'already-answered'
    | 'already-so'
    | 'status-asked'
    | 'not-understood',
): Reply => ({ code, facts: {} })

const only = (conversation: Conversation, replies: readonly Reply[], wants: Want | null = null): Heard => ({
  conversation,
  replies,
  wants,
})

const undo = (conversation: Conversation, context: Context, both = false): Heard => {
  const before = both ? takeBothBack(conversation) : takeBack(conversation)
  if (before === null) return only(conversation, [reply('nothing-to-undo')])
  return proceed(before, [reply('undone')], context)
}

const startOver = (conversation: Conversation): Conversation => ({
  ...conversation,
  draft: { garments: {}, styles: {}, marks: {}, rows: {}, tally: {}, later: {}, agreed: {}, notes: [] },
  facts: [],
  open: [],
  asked: null,
  put: {},
  shown: null,
  read: null,
  sent: null,
  past: [...conversation.past, { draft: conversation.draft, facts: conversation.facts, open: conversation.open }].slice(-20),
})

/** What a message asks for that is not a fact of the order; null when it is about the order. */
const hearIntent = (conversation: Conversation, intent: Intent, context: Context): Heard | null => {
  switch (intent.kind) {
    case 'undo':
      return undo(conversation, context, intent.both)
    case 'start-over':
      return proceed(startOver(conversation), [reply('started-over')], context)
    case 'cancel':
      return askCancel(conversation)
    case 'status':
      return only(conversation, [reply('status-asked')], { kind: 'status' })
    case 'person':
      return only(conversation, [{ code: 'person-called', facts: { ask: context.shop.profile.ask } }], {
        kind: 'person',
        about: 'asked',
      })
    case 'complaint':
      return noteComplaint(conversation, intent.complaint, false)
    case 'waits':
      return only(conversation, [reply('no-hurry')])
    case 'earlier-mentioned':
    case 'care':
    case 'thanks':
    case 'rude':
    case 'off-topic':
      return only(conversation, [reply(intent.kind)])
    case 'language':
      return proceed(
        { ...conversation, language: intent.language },
        [{ code: 'language-chosen', facts: { language: intent.language } }],
        context,
      )
    default:
      return null
  }
}

const hearText = (start: Conversation, text: string, context: Context): Heard => {
  const told = moreOfComplaint(start, text)
  if (told !== null) return told
  const understood = askedOnce(understand(text, start, context), start)
  const conversation: Conversation = {
    ...start,
    language: understood.language ?? start.language,
    settled: start.settled || understood.language !== null,
  }
  if (start.signed !== null && understood.intent.kind === 'earlier-order')
    return only(conversation, [reply('earlier-order-elsewhere')], understood.intent)
  return hearUnderstood(conversation, { understood, text }, context)
}

/** The last change is taken back, and what else the message says is taken into the order as it is then. */
const undoBeside = (conversation: Conversation, { understood, text }: Words, context: Context): Heard => {
  const before = takeBack(conversation)
  if (before === null) return only(conversation, [reply('nothing-to-undo')])
  return closeTurn(before, { understood, quote: text, first: [reply('undone')] }, context)
}

/** "Are they ready? Glenn Abbott will pick them up": who does what is kept, and the question answered. */
const statusBeside = (conversation: Conversation, { understood, text }: Words, context: Context): Heard => {
  const { patches, open } = understood
  const turn = takeTurn(conversation, { patches, open, how: 'said', quote: text }, context)
  return only(turn.conversation, [reply('status-asked')], { kind: 'status' })
}

/** Nothing of the message was left without effect. */
const isWhole = ({ unheard, undecided, alike, which }: Understood): boolean =>
  unheard.length + undecided.length + alike.length + which.length === 0

type Words = { readonly understood: Understood; readonly text: string }

const hearUnderstood = (conversation: Conversation, { understood, text }: Words, context: Context): Heard => {
  if (understood.variant !== null) return askVariant(conversation, { patches: understood.variant, quote: text }, context)
  if (understood.patches.length === 0 && understood.open.length === 0) {
    const answered =
      answerCancel(conversation, understood.intent, context) ??
      wordsOfComplaint(conversation, understood, text) ??
      hearIntent(conversation, understood.intent, context)
    if (answered !== null) return answered
  }
  if (understood.intent.kind === 'status') return statusBeside(conversation, { understood, text }, context)
  if (understood.intent.kind === 'undo') return undoBeside(conversation, { understood, text }, context)
  // What was not understood may be a change: nothing is signed in the same breath, and it is said.
  if (understood.signing !== null && isWhole(understood)) {
    const signed = signSaid(conversation, understood, context)
    if (signed !== null) return signed
  }
  return closeTurn(conversation, { understood, quote: text, first: firstReplies(understood) }, context)
}

const hearPatches = (
  conversation: Conversation,
  change: { readonly patches: readonly Patch[]; readonly how: How; readonly quote: string },
  context: Context,
): Heard => {
  const turn = takeTurn(conversation, { ...change, open: [] }, context)
  return proceed(turn.conversation, [], context)
}

const hearChoice = (conversation: Conversation, value: string, context: Context): Heard => {
  if (conversation.asked?.code === 'cancel' && value === 'cancel') return cancel(conversation)
  const reading = (conversation.asked?.readings ?? []).find((one) => one.value === value)
  if (reading === undefined) return proceed(conversation, [reply('already-answered')], context)
  if (reading.value === 'keep-order') return only({ ...conversation, asked: null }, [reply('kept-as-is')])
  const open = conversation.open.filter(
    (one) => !one.readings.some((mine) => mine.value === value && one.path === conversation.asked?.path),
  )
  return hearPatches({ ...conversation, open }, { patches: reading.patches, how: 'chosen', quote: value }, context)
}

type Pressed = Extract<Said, { kind: 'pressed' }>

const hearButton = (conversation: Conversation, pressed: Pressed, context: Context): Heard => {
  const acts: Readonly<Record<Exclude<Button, 'sign-off' | 'change'>, Intent>> = {
    undo: { kind: 'undo' },
    person: { kind: 'person' },
    'start-over': { kind: 'start-over' },
    cancel: { kind: 'cancel' },
    status: { kind: 'status' },
  }
  if (pressed.action === 'sign-off') return signPressed(conversation, pressed, context)
  if (pressed.action === 'change')
    return only(conversation, [{ code: 'understood', facts: tidyOf(conversation, documentOf(conversation, context)) }])
  return hearIntent(conversation, acts[pressed.action], context) ?? only(conversation, [])
}

const hearSaid = (
  conversation: Conversation,
  { text, files }: { readonly text: string; readonly files?: readonly SaidFile[] },
  context: Context,
): Heard => {
  if (files === undefined || files.length === 0) return hearText(conversation, text, context)
  const kept = hearFiles(conversation, files, context)
  if (text.trim() === '') return proceed(kept.conversation, kept.replies, context)
  const heard = hearText(kept.conversation, text, context)
  return { ...heard, replies: [...kept.replies, ...heard.replies] }
}

const dispatch = (conversation: Conversation, said: Said, context: Context): Heard => {
  switch (said.kind) {
    case 'said':
      return hearSaid(conversation, said, context)
    case 'pressed':
      return hearButton(conversation, said, context)
    case 'chose':
      return hearChoice(conversation, said.value, context)
    case 'filled':
      return hearText(conversation, Object.values(said.values).join('\n'), context)
    case 'priced':
      return hearPriced(conversation, said)
    case 'quoted':
      return hearQuote(conversation, said, context)
    case 'earlier':
      return hearEarlier(conversation, said, context)
    case 'found':
      return hearPatches(conversation, { patches: said.patches, how: 'corrected', quote: said.quote }, context)
  }
}

const fromCustomer: readonly string[] = ['said', 'chose', 'filled', 'pressed']

/** Nobody is left without a word: what came to nothing is said to have changed nothing. */
const answered = (before: Conversation, { kind }: Said, heard: Heard): Heard => {
  if (!fromCustomer.includes(kind) || heard.replies.length > 0 || heard.wants !== null) return heard
  const taken = canonical(before.draft) !== canonical(heard.conversation.draft)
  return { ...heard, replies: [reply(taken ? 'already-so' : 'not-understood')] }
}

/**
 * One thing a customer (or the desk, with a worked-out quote) says, and what follows from it: the conversation after it, replies by
 * code, and what the desk shall do. The same delivery id is heard once. Never throws on any text.
 */
export const hear = (conversation: Conversation, said: Said, context: Context): Heard => {
  if (conversation.seen.includes(said.id)) return only(conversation, [])
  const heard = answered(conversation, said, dispatch(conversation, said, context))
  return { ...heard, conversation: markSeen(heard.conversation, said.id) }
}
