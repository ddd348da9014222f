import type { Draft, Player } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { type SizeFound, sizeAt } from '../sizes/sizes.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { fold, isEnd, isWord, type Token } from '../text/tokens.ts'
import { nameAt, rowsByName } from '../whom/refs.ts'
import { isOtherThan } from './players.ts'

type Entry = { readonly player: Player; readonly from: number; readonly to: number }

type Scene = { readonly tokens: readonly Token[]; readonly draft: Draft; readonly lexicon: Lexicon }

const joints: readonly string[] = [',', ';', '&', ':', '.', '(', ')', '-']

const isJoint = (token: Token | undefined): boolean =>
  token === undefined || isEnd(token) || joints.includes(token.text) || isWord(token, ...listed.again.and)

/** "Dayra M", "Rufus is a mens 3XL", "Zoë: S": the size behind a name, small words between. */
const sizeBehind = (tokens: readonly Token[], to: number): SizeFound | null => {
  let at = to
  while (
    at < to + 3 &&
    sizeAt(tokens, at) === null &&
    (isWord(tokens[at], ...links) || [':', '-'].includes(tokens[at]?.text ?? ''))
  )
    at += 1
  return sizeAt(tokens, at)
}

const links: readonly string[] = [...listed.players.areSized, ...listed.players.one]

/** "Dayra M": a name with its size right behind it, and a pause or an "and" behind that. */
const entryAt = ({ tokens, draft, lexicon }: Scene, at: number): Entry | null => {
  const isOther = isOtherThan(lexicon)
  const named = nameAt(tokens, at, (token) => isOther(token) || lexicon.entries.get(token.key)?.kind === 'colour')
  const size = named === null ? null : sizeBehind(tokens, named.to)
  const closed = size !== null && (isJoint(tokens[size.to]) || isWord(tokens[size.to], ...listed.players.takenBack))
  if (named === null || size?.size === undefined || !closed || rowsByName(draft.rows, named.name).length > 0) return null
  const fit = size.fit === undefined ? {} : { fit: size.fit }
  return { player: { name: named.name, size: size.size, ...fit }, from: at, to: size.to }
}

/** The names with their sizes in one sentence, from a token on. */
const listFrom = (scene: Scene, from: number): readonly Entry[] => {
  const entries: Entry[] = []
  let at = from
  for (let token = scene.tokens[at]; token !== undefined && !(entries.length > 0 && isEnd(token)); token = scene.tokens[at]) {
    const entry = entryAt(scene, at)
    if (entry !== null) entries.push(entry)
    const gap = at - (entries.at(-1)?.to ?? at)
    if (entries.length > 0 && entry === null && gap > 3) break
    at = entry?.to ?? at + 1
  }
  return entries
}

export type NamedSizes = { readonly players: readonly Player[]; readonly taken: ReadonlySet<number> }

/** "Soy Aranza CH, Dayra M, Itzel G no perdón Itzel M y Brenda XG": names with their sizes in a sentence, two of them or more; of one said twice the last holds. */
export const readNamedSizes = (scene: Scene): NamedSizes => {
  for (const at of scene.tokens.keys()) {
    const first = entryAt(scene, at)
    const list = first === null ? [] : listFrom(scene, at)
    if (list.length < 2) continue
    const players = new Map(list.map(({ player }) => [fold(player.name ?? ''), player]))
    const taken = list.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, index) => from + index))
    return { players: [...players.values()], taken: new Set(taken) }
  }
  return { players: [], taken: new Set() }
}
