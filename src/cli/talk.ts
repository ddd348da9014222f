import { createInterface } from 'node:readline'
import { say } from '../../templates/replies/say.ts'
import { projectRoot } from '../adapters/folder/root.ts'
import { emptyShopFloor } from '../desk/floor.ts'
import { type Made, makeJob } from '../desk/make-job.ts'
import { quoteOf } from '../desk/quote.ts'
import { type Workshop, workOut } from '../desk/work-out.ts'
import { showFor } from '../domain/shop/show.ts'
import { type Conversation, type Said, startConversation, type Want } from '../domain/understanding/conversation.ts'
import { documentOf } from '../domain/understanding/document.ts'
import { hear } from '../domain/understanding/hear.ts'
import type { Reply } from '../domain/understanding/replies.ts'
import { openPress } from '../wiring/open-press.ts'
import { openWorkshop } from '../wiring/open-workshop.ts'
import { plainProblems, problemLines, recordLines } from '../wiring/say-problems.ts'
import { type Command, exitCodes, isOn, runCommand, text, type Words } from './command.ts'
import { shopNow } from './shop-clock.ts'
import { ticketNumber, writeJob } from './write-job.ts'

const usage = `talk: the conversation on standard input, one message a line (\\n inside a line is a line break)

  npm run -s talk -- [--now YYYY-MM-DDTHH:MM] [--shop <folder>] [--out <folder>] [--json]

With --json one object per reply { text, asks?, actions?, problems? } and a last line { order, missing, understood }.
When the order is signed off its ticket is written to --out (default: tickets/<ticket number>).`

type Talk = {
  readonly workshop: Workshop
  readonly now: string
  readonly json: boolean
  readonly out: string | undefined
  conversation: Conversation
  turns: number
}

const tell = (talk: Talk, reply: Reply): void => {
  const spoken = say(reply, talk.conversation.language, showFor(talk.workshop.shop, talk.conversation.language))
  if (!talk.json) {
    const buttons = spoken.actions.map(({ label }) => `[${label}]`).join(' ')
    const choices = spoken.choices.map(({ label }) => `(${label})`).join(' ')
    process.stdout.write(`${[spoken.text, buttons, choices].filter((part) => part !== '').join('\n')}\n\n`)
    return
  }
  const line = {
    text: spoken.text,
    ...(spoken.asks === undefined ? {} : { asks: spoken.asks }),
    ...(spoken.actions.length === 0 ? {} : { actions: spoken.actions }),
    ...(spoken.choices.length === 0 ? {} : { choices: spoken.choices }),
    ...(spoken.problems.length === 0 ? {} : { problems: spoken.problems }),
  }
  process.stdout.write(`${JSON.stringify(line)}\n`)
}

const signedJob = async (talk: Talk, document: unknown): Promise<{ readonly made: Made; readonly out: string }> => {
  const ticket = ticketNumber(document)
  const identity = { ticket, order: ticket, revision: 1, replaces: null, link: null, changes: [], throwAway: [] }
  const asked = { document, now: talk.now, job: ticket, floor: emptyShopFloor, identity }
  const made = await makeJob(asked, talk.workshop, await openPress(projectRoot()))
  const out = talk.out ?? `tickets/${ticket}`
  await writeJob(out, made)
  return { made, out }
}

/** Does what the conversation asks for: works the draft out and shows it, or writes the ticket of what was signed. */
const follow = async (talk: Talk, wish: Want): Promise<void> => {
  if (wish.kind === 'quote') {
    const asked = { document: wish.order, now: talk.now, job: ticketNumber(wish.order), floor: emptyShopFloor }
    const quote = quoteOf(workOut(asked, talk.workshop), talk.workshop.shop, null)
    talk.turns += 1
    await turn(talk, { id: `quote-${talk.turns}`, kind: 'quoted', revision: wish.revision, hash: wish.hash, quote })
  }
  const { variant } = talk.conversation
  if (wish.kind === 'variant' && variant) {
    const asked = { document: variant.order, now: talk.now, job: ticketNumber(variant.order), floor: emptyShopFloor }
    const { price, promise, problems } = quoteOf(workOut(asked, talk.workshop), talk.workshop.shop, null)
    const told = { total: price?.total ?? null, promised: promise?.promised ?? null, problems }
    await turn(talk, { id: `price-${variant.number}`, kind: 'priced', number: variant.number, ...told })
  }
  if (wish.kind === 'sign-off') {
    const { out } = await signedJob(talk, wish.order)
    if (!talk.json) process.stdout.write(`${out}/ticket.pdf\n\n`)
  }
}

const turn = async (talk: Talk, said: Said): Promise<void> => {
  const heard = hear(talk.conversation, said, { shop: talk.workshop.shop, now: talk.now })
  talk.conversation = heard.conversation
  for (const reply of heard.replies) tell(talk, reply)
  if (heard.wants !== null) await follow(talk, heard.wants)
}

const lastLine = (talk: Talk): string => {
  const { order, missing } = documentOf(talk.conversation, { shop: talk.workshop.shop })
  return `${JSON.stringify({ order, missing, understood: talk.conversation.facts })}\n`
}

const run = async (words: Words): Promise<number> => {
  const opened = await openWorkshop(projectRoot(), text(words, 'shop'))
  if (!opened.ok) {
    process.stderr.write(problemLines(plainProblems(opened.problems)))
    return exitCodes.refused
  }
  const workshop = opened.value
  process.stderr.write(recordLines(workshop.shop))
  const now = shopNow(text(words, 'now'), workshop.shop.profile.zone)
  const language = workshop.shop.profile.languages[0] ?? 'en'
  const conversation = startConversation({ id: 'talk', person: { id: 'talk', name: null }, language })
  const talk: Talk = { workshop, now, json: isOn(words, 'json'), out: text(words, 'out'), conversation, turns: 0 }
  if (!talk.json) tell(talk, { code: 'greeting', facts: {} })
  for await (const line of createInterface({ input: process.stdin })) {
    if (line.trim() === '') continue
    talk.turns += 1
    await turn(talk, { id: `line-${talk.turns}`, kind: 'said', text: line.replaceAll('\\n', '\n') })
  }
  if (talk.json) process.stdout.write(lastLine(talk))
  return exitCodes.done
}

const talkCommand: Command = {
  usage,
  options: { now: { type: 'string' }, shop: { type: 'string' }, out: { type: 'string' }, json: { type: 'boolean' } },
  run,
}

await runCommand(talkCommand)
