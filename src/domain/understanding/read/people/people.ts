import type { Patch } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import { bodyIn, readBodies } from './bodies.ts'

const said = spoken.people

/** A name begins where no word goes on, and each of its words has an end: every pattern stays linear in the text. */
const NAME = [
  "(?<![\\p{L}\\p{M}'’.-])",
  `(?:\\p{Lu}[\\p{L}\\p{M}'’-]{0,40}(?:(?<=(?<!\\p{L})(?:\\p{Lu}|${said.shortened}))\\.)?)`,
  `(?: (?:${said.particles} )?(?!${said.endsName}|(?:CH|XG|XS|X{1,3}L|[YAW]X?[SML])(?!\\p{L}))\\p{Lu}[\\p{L}\\p{M}'’-]{0,40}){0,3}`,
].join('')
const TITLE = `(?:(?<![\\p{L}\\p{M}])(?:${said.titles}|${said.ours} (?:\\p{Ll}{1,20} )?\\p{Ll}{1,20}),? ){0,3}`

/** "Mrs Cole, our treasurer, signs off", "Ann from the office who pays": what somebody is, between the name and what they do. */
const PART = [
  `,?(?: ${said.ours} (?:\\p{Ll}{1,20} )?\\p{Ll}{1,20},?)?`,
  `(?: ${said.fromPlace} (?:\\p{Ll}{1,20} )?\\p{Ll}{1,20},?)?(?: ${said.whoDoes})? `,
].join('')

const pattern = (source: string): RegExp =>
  new RegExp(source.replaceAll('NAME', `(${NAME})`).replaceAll('TITLE', TITLE).replaceAll('PART', PART), 'u')

type Role = 'orders' | 'signsOff' | 'pays' | 'collects'

/** "Otis isn't paying, Nora Quist is": who does it in the place of somebody. */
const insteadOf = (refused: string): RegExp =>
  pattern(`${refused}[^.,\\n]{0,25}, (?:\\p{Ll}{1,8} ){0,2}TITLENAME ${said.isIt}(?!\\p{L})`)

/** The first pattern that fits gives the person; a name is taken as it is written. */
const patterns: readonly (readonly [Role, readonly RegExp[]])[] = [
  [
    'orders',
    [
      pattern(`${said.nameIs} TITLENAME`),
      pattern(`(?:^|[\\s,.!])${said.iAm} TITLENAME`),
      pattern(`TITLENAME ${said.orders}`),
      pattern(`(?:^|[.!\\n] ?)${said.greets}[,!.]? TITLENAME,? ${said.comesFrom} `),
      pattern(`^${said.opens} NAME,`),
      pattern(`^(?:${said.greets})[,!.]* (?:${said.opens}) NAME,`),
      pattern(`^(?:${said.greets})[,!.]* NAME, (?:${said.speaks}) `),
      pattern(`\\b${said.itIs} (\\p{Ll}{3,}) ${said.itIsFrom}\\b`),
      pattern(`(?:^|[.!?\\n] ?)(?:- ?|-- ?|${said.closes})NAME(?:, \\p{Ll}+)?\\s*$`),
      pattern("[.!?] (\\p{Lu}[\\p{L}'-]+ \\p{Lu}[\\p{L}'-]+)\\.?\\s*$"),
    ],
  ],
  [
    'signsOff',
    [
      pattern(`TITLENAMEPART${said.signs}`),
      insteadOf(said.notSigning),
      pattern(`${said.signer} ${said.theirs} \\p{Ll}{1,20}(?: \\p{Ll}{1,20})?,? NAME`),
      pattern(`${said.signedBy} TITLENAME`),
    ],
  ],
  [
    'pays',
    [
      pattern(`${said.paidBy} TITLENAME`),
      pattern(`TITLENAMEPART${said.pays}(?!\\p{L})`),
      insteadOf(said.notPaying),
      pattern(`${said.ours} (?:\\p{L}{2,20} )?\\p{L}{2,20}, NAME, ${said.pays}(?!\\p{L})`),
    ],
  ],
  [
    'collects',
    [pattern(`${said.collectedBy} TITLENAME`), pattern(`TITLENAMEPART${said.collects}`), insteadOf(said.notCollecting)],
  ],
]

/** Words that begin like a name and are none. */
const notNames = new RegExp(`^${said.notNames}$`, 'u')

const payers = listed.people.bodyPays.map((source) => new RegExp(source, 'u'))

/** Somebody who is said to be something: "Jill Paxton is our treasurer", "our AD is Mark Sutter". */
const introduced: readonly RegExp[] = [
  pattern(`TITLENAME,? (?:${said.isOurs})`),
  pattern(`(?:${said.ours}) (?:[\\p{L}]{2,20} ){1,2}(?:${said.isPerson}) TITLENAME`),
]

/** "… myself, Brigid Sayle": who writes, named at the end. */
const signed: readonly RegExp[] = [pattern(`${said.myself}, NAME[.! ]*$`)]

/** "Paso yo el jueves, Tirso Almanza": who writes, with two names behind what they do and nothing said of that name. */
const behindAct = pattern(`^(?: [\\p{L}\\d:.]{1,15}){0,10}, NAME(?=\\s*$|[.!,;\\n]| (?:${said.atService})(?!\\p{L}))`)

const behind = (text: string, act: RegExp): string | undefined => {
  const match = act.exec(text)
  const name = match === null ? undefined : nameIn(text.slice(match.index + match[0].length), [behindAct])
  return name?.includes(' ') === true ? name : undefined
}

/** What he, she or the writer does: "she pays", "I'm paying". */
const acts: readonly (readonly [Role, RegExp, RegExp])[] = (['signsOff', 'pays', 'collects'] as const).map((role) => {
  const does = { signsOff: said.signs, pays: said.pays, collects: said.collects }[role]
  const mine = { signsOff: said.iSign, pays: said.iPay, collects: said.iCollect }[role]
  return [
    role,
    new RegExp(`(?<!\\p{L})(?:${said.heOrShe}) (?:\\p{Ll}{1,12} ){0,2}?(?:${does})(?!\\p{L})`, 'iu'),
    new RegExp(`(?<!\\p{L})(?:${mine})(?!\\p{L})`, 'iu'),
  ]
})

const whoDoes = new RegExp(`^(?: ${said.fromPlace} (?:\\p{Ll}{1,20} )?\\p{Ll}{1,20})? (?:${said.whoDoes})(?!\\p{L})`, 'u')

const nameIn = (text: string, list: readonly RegExp[]): string | undefined =>
  list
    .map((one) => one.exec(text)?.[1])
    .find((one) => one !== undefined && !notNames.test(one))
    ?.replace(/[.,]+$/, '')

/** "It's Sheila Croft who collects": not who writes. */
const isOther = (text: string, name: string): boolean => whoDoes.test(text.slice(text.indexOf(name) + name.length))

/** Who does what by "she", "he" or "I": somebody introduced in the same message, or who writes. */
const byPronoun = (text: string, found: readonly Patch[], writer: string | undefined): readonly Patch[] => {
  const named = nameIn(text, introduced)
  const orders = found.find(({ path }) => path[0] === 'orders')?.value
  const own = typeof orders === 'string' ? orders : writer
  const called = acts.map(([, , mine]) => behind(text, mine)).find((one) => one !== undefined)
  return acts.flatMap(([role, theirs, mine]): readonly Patch[] => {
    if (found.some(({ path }) => path[0] === role)) return []
    if (named !== undefined && theirs.test(text)) return [{ path: [role], value: named }]
    const self = named === undefined ? (nameIn(text, signed) ?? called) : undefined
    const who = self ?? own
    return who !== undefined && mine.test(text) ? [{ path: [role], value: who }] : []
  })
}

const personPatches = (text: string, writer: string | undefined): readonly Patch[] => {
  const found: Patch[] = []
  for (const [role, list] of patterns) {
    const name = nameIn(text, list)
    if (name !== undefined && !(role === 'orders' && isOther(text, name))) found.push({ path: [role], value: name })
  }
  found.push(...byPronoun(text, found, writer))
  const bodies = readBodies(text).filter(({ path }) => !found.some((other) => other.path[0] === path[0]))
  const payer = bodyIn(text, payers)
  return [...found, ...bodies, ...(payer === undefined ? [] : [{ path: ['pays'], value: payer }])]
}

const plainly = (...sources: readonly string[]): RegExp => new RegExp(`\\b(?:${sources.join('|')})\\b`, 'iu')

const handOvers: readonly (readonly ['collect' | 'field' | 'post', RegExp])[] = [
  ['post', plainly(said.post)],
  ['field', plainly(said.toField)],
  ['collect', plainly(said.collect)],
]

const money = spoken.money

const orderNumber = new RegExp(
  `\\b${money.orderNumber}(?:\\s*(?:${money.orderNumberIs}|#|:|,))*\\s*((?:PO[- ]?)?[A-Z0-9][A-Z0-9/-]*\\d(?:[A-Z0-9/-]*[A-Z0-9])?)`,
  'iu',
)
const sum = '(\\d[\\d,]*(?:\\.\\d{2})?)'
const advance = new RegExp(
  `${sum}\\s+${money.asDeposit}\\s+${money.deposit}|${money.deposit}\\s+${money.of}\\s+\\$?\\s?${sum}`,
  'iu',
)
const amount = new RegExp(`\\$\\s?(\\d+(?:,\\d{3})*(?:\\.\\d{2})?)|(\\d+(?:\\.\\d{2})?)\\s*${money.currency}`, 'iu')
const deposit = new RegExp(`\\b${money.deposit}\\b|\\d ${money.down}\\b`, 'iu')
const taxExempt = plainly(money.taxExempt)
const gives = plainly(money.gives)
const paid = plainly(money.paid)
const onAccount = plainly(money.onAccount)

const moneyOf = (raw: string): readonly Patch[] => {
  const text = raw.normalize('NFD').replace(/\p{M}/gu, '')
  const patches: Patch[] = []
  const set = (key: string, value: Patch['value']) => patches.push({ path: ['money', key], value })
  const order = orderNumber.exec(text)
  if (order !== null) {
    set('state', 'order-number')
    set('reference', order[1])
  }
  if (taxExempt.test(text)) set('taxExempt', true)
  if (deposit.test(text) && order === null && gives.test(text)) {
    set('state', 'deposit')
    const [given, part] = [amount.exec(text), advance.exec(text)]
    const figure = given?.[1] ?? given?.[2] ?? part?.[1] ?? part?.[2]
    if (figure !== undefined) set('amount', Math.round(Number(figure.replace(/,/g, '')) * 100))
  } else if (paid.test(text)) set('state', 'paid')
  if (onAccount.test(text) && order === null) set('state', 'on-account')
  return patches
}

const parts: readonly string[] = ['signsOff', 'pays', 'collects', 'handOver']

/** Who signs, pays or collects, where a message is about something else. */
export const readPart = (text: string): readonly Patch[] => {
  const people = readPeople(text).filter(({ path }) => parts.includes(String(path[0])))
  return people.some(({ path: [part] }) => part !== 'handOver') ? people : []
}

/** Who orders, signs off, pays and collects, how it is handed over, and what was said of money. Names stand as they were written. */
export const readPeople = (text: string, writer?: string): readonly Patch[] => {
  const plain = text.normalize('NFD').replace(/\p{M}/gu, '')
  const handOver = handOvers.find(([, words]) => words.test(plain))?.[0]
  const people = personPatches(text, writer)
  const collects = people.some((patch) => patch.path[0] === 'collects')
  const how = handOver ?? (collects ? 'collect' : undefined)
  return [...people, ...(how === undefined ? [] : [{ path: ['handOver'], value: how }]), ...moneyOf(text)]
}
