import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { type Stretch, sentencesOf } from '../text/statements.ts'
import { isEnd, isNumber, isWord, phraseEnd, phrasesOf, type Token, tokensOf } from '../text/tokens.ts'
import { nameAt } from '../whom/refs.ts'
import { isOtherThan } from './players.ts'

const said = listed.likeOthers
const same = phrasesOf(said.sameSize)
const signs: readonly string[] = ['#', '(', ')', '-', '"', '“', '”']
const mostLeads = 3

/** What a stretch of a list tells of one player; `leads` are plain words ahead of the name, `small` words that link. */
type Told = {
  readonly name?: string
  readonly number?: string
  readonly size?: string
  readonly same?: true
  readonly leads: readonly string[]
  readonly links: number
}

type Scene = { readonly text: string; readonly tokens: readonly Token[]; readonly isOther: (token: Token) => boolean }
type Step = { readonly told: Told; readonly to: number }

const blank: Told = { leads: [], links: 0 }

const sizeStep = ({ text, tokens }: Scene, at: number, told: Told): Step | null => {
  const size = sizeAt(tokens, at)
  if (size?.size === undefined || told.size !== undefined) return null
  return { told: { ...told, size: text.slice(tokens[at]?.start, tokens[size.to - 1]?.end) }, to: size.to }
}

const numberStep = ({ tokens }: Scene, at: number, told: Told): Step | null => {
  const [token, next] = [tokens[at], tokens[at + 1]]
  const glued = next?.kind === 'word' && next.start === token?.end
  const plain = isNumber(token) && /^\d{1,3}$/.test(token?.text ?? '') && !glued && told.number === undefined
  return plain ? { told: { ...told, number: token?.text ?? '' }, to: at + 1 } : null
}

const nameStep = ({ tokens, isOther }: Scene, at: number, told: Told): Step | null => {
  const named = told.name === undefined ? nameAt(tokens, at, isOther) : null
  return named === null ? null : { told: { ...told, name: named.name }, to: named.to }
}

const wordStep = ({ tokens }: Scene, at: number, told: Told): Step | null => {
  const token = tokens[at]
  const alike = phraseEnd(tokens, at, same)
  if (alike !== null) return { told: { ...told, same: true, links: told.links + 1 }, to: alike }
  if (isWord(token, ...said.inTurn) || signs.includes(token?.text ?? ''))
    return { told: { ...told, links: told.links + 1 }, to: at + 1 }
  const free = told.name === undefined && told.size === undefined && told.leads.length < mostLeads
  const isLead = free && isWord(token, ...said.relatives)
  return isLead && token !== undefined ? { told: { ...told, leads: [...told.leads, token.key] }, to: at + 1 } : null
}

const toldIn = (scene: Scene, { from, to }: Stretch): Told | null => {
  let step: Step = { told: blank, to: from }
  while (step.to < to) {
    const { told, to: at } = step
    const next =
      sizeStep(scene, at, told) ?? numberStep(scene, at, told) ?? nameStep(scene, at, told) ?? wordStep(scene, at, told)
    if (next === null || next.to > to) return null
    step = next
  }
  return step.told
}

const isJoint = (token: Token | undefined): boolean =>
  [',', ';'].includes(token?.text ?? '') || isWord(token, ...listed.again.and)

const partsOf = (tokens: readonly Token[], { from, to }: Stretch): readonly Stretch[] => {
  const joints = [...tokens.keys()].filter((at) => at >= from && at < to && isJoint(tokens[at]))
  return [from, ...joints.map((at) => at + 1)].flatMap((start, index) => {
    const end = joints[index] ?? to
    return end > start ? [{ from: start, to: end }] : []
  })
}

/** "Lowry, 8, YL", "M and he's number 2": a part without a name goes on with the player before it. */
const goesOn = (last: Told | undefined, next: Told): last is Told =>
  last !== undefined &&
  next.name === undefined &&
  next.leads.length === 0 &&
  !(last.number !== undefined && next.number !== undefined) &&
  !(last.size !== undefined && (next.size !== undefined || next.same === true))

const joinedTo = (last: Told, next: Told): Told => ({ ...last, ...next, leads: last.leads, links: last.links + next.links + 1 })

/** All that a sentence tells, a player after the other; null where it says anything else. */
const playersIn = (scene: Scene, list: Stretch): readonly Told[] | null => {
  const players: Told[] = []
  for (const part of partsOf(scene.tokens, list)) {
    const told = toldIn(scene, part)
    if (told === null) return null
    const last = players.at(-1)
    if (goesOn(last, told)) players.splice(-1, 1, joinedTo(last, told))
    else players.push(told)
  }
  return players.map((one, at) => (one.same === true && one.size === undefined ? { ...one, ...sizeBefore(players, at) } : one))
}

const sizeBefore = (players: readonly Told[], at: number): { readonly size?: string } => {
  const size = players.slice(0, at).findLast((one) => one.size !== undefined)?.size
  return size === undefined ? {} : { size }
}

/** Everybody has a name, a number and a size; or of three and more nobody has a number and everybody a size and a name, or who it is. */
const isWhole = (players: readonly Told[]): boolean => {
  if (players.some(({ size }) => size === undefined)) return false
  const numbered = players.filter(({ number }) => number !== undefined).length
  if (numbered > 0)
    return (
      players.length > 1 &&
      players.every(({ name, number, leads }) => name !== undefined && number !== undefined && leads.length === 0)
    )
  return players.length > 2 && players.filter(({ name }) => name !== undefined).length > 1 && players.every(isSomebody)
}

const isSomebody = ({ name, leads }: Told): boolean => name !== undefined || leads.length > 0

const lineOf = ({ name, number, size, leads }: Told, { orders }: Draft): string => {
  const own = name === undefined && leads.some((word) => said.oneself.includes(word)) ? orders : name
  return [number, own, size].filter((part) => part !== undefined).join(' ')
}

/** Lists that every other reader takes as they stand: a name, a number and a size beside each other. */
const isPlain = (players: readonly Told[]): boolean =>
  players.every(({ links, leads, same: alike }) => links === 0 && leads.length === 0 && alike === undefined)

/** A sentence without its head ("sizes: …") and the sign that ends it; nothing of what asks. */
const listIn = (tokens: readonly Token[], { from, to }: Stretch): Stretch => {
  const colon = tokens.slice(from, to).findLastIndex(({ text }) => text === ':')
  let end = to
  while (end > from && isEndOf(tokens[end - 1])) end -= 1
  return { from: tokens.slice(from, to).some(({ text }) => text === '?') ? end : from + colon + 1, to: end }
}

const isEndOf = (token: Token | undefined): boolean => token !== undefined && isEnd(token)

/** "Marval L con el 5, Ruza la misma talla con el 17", "Jo M, Bex XL, me L": players told one after the other in a sentence, a line for each. */
export const withPlayersInTurn = (
  text: string,
  { draft, lexicon }: { readonly draft: Draft; readonly lexicon: Lexicon },
): string => {
  const scene = { text, tokens: tokensOf(text), isOther: isOtherThan(lexicon) }
  return sentencesOf(scene.tokens).reduceRight((left, sentence) => {
    const list = listIn(scene.tokens, sentence)
    const players = list.to > list.from ? playersIn(scene, list) : null
    if (players === null || !isWhole(players) || isPlain(players)) return left
    const [start, end] = [scene.tokens[list.from]?.start ?? 0, scene.tokens[list.to - 1]?.end ?? 0]
    return `${left.slice(0, start)}\n${players.map((one) => lineOf(one, draft)).join('\n')}\n${left.slice(end)}`
  }, text)
}
