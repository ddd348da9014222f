import { listed, spoken } from '../../words/languages.ts'
import { type Change, nothing, type Scene, sized, span } from '../list/change.ts'
import { isPlainSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isCapital, isNumber, isWord, type Token } from '../text/tokens.ts'
import { isListed, type Ref, refAt, refsIn } from '../whom/refs.ts'
import { whichRow } from './drop-rows.ts'

/** Words that say a size of somebody named before. */
const turning: readonly string[] = listed.again.turning
/** Cámbiala, ponle, hazlo, súbanla, pásalas. */
const clitic = new RegExp(`^${spoken.again.clitic}$`, 'u')
const turns = (token: Token): boolean => isWord(token, ...turning) || clitic.test(token.key)

const small: readonly string[] = listed.again.small
const refusing: readonly string[] = listed.again.refusing

/** "not L", "no es G", "instead of an M", "de M a L": a size that was and shall be no more. */
const isOld = (tokens: readonly Token[], at: number, { to }: SizeFound): boolean => {
  let before = at - 1
  while (before > at - 4 && isWord(tokens[before], ...small) && !isWord(tokens[before], ...listed.again.of)) before -= 1
  const turned = isWord(tokens[to], ...listed.again.to) && sizeAt(tokens, to + 1)?.size !== undefined
  return turned || isWord(tokens[before], ...refusing)
}

const pronouns: readonly string[] = listed.again.pronouns

/** Between who is named and the size stands nobody else, no figure, and a word that turns to a size. */
const leadsTo = (tokens: readonly Token[], from: number, to: number): boolean => {
  const between = tokens.slice(from, to)
  if (between.length > 26 || !between.some(turns)) return false
  return between.every((token, index) => {
    if (isNumber(token) || token.kind === 'break') return false
    return !isCapital(token) || isWord(token, ...pronouns) || clitic.test(token.key) || sizeAt(tokens, from + index) !== null
  })
}

/** "Ana and Beto", "7, 9 y 12": those named together, the last of them first. */
const together = (tokens: readonly Token[], refs: readonly Ref[]): readonly Ref[] => {
  const group: Ref[] = []
  for (const ref of refs.toReversed()) {
    const next = group.at(-1)
    const joined =
      next === undefined ||
      tokens
        .slice(ref.to, next.from)
        .every((token) => isWord(token, ...listed.again.joins) || [',', '&', '#'].includes(token.text))
    if (!joined) break
    group.push(ref)
  }
  return group
}

const changeOf = (refs: readonly Ref[], size: SizeFound, scene: Scene): Pick<Change, 'patches' | 'open'> => ({
  patches: refs.flatMap(({ keys }) => (keys.length === 1 ? keys.flatMap((key) => sized(key, size)) : [])),
  open: refs.flatMap(({ keys }) =>
    keys.length === 1
      ? []
      : [
          whichRow(
            keys.map((key) => ({ key, patches: sized(key, size) })),
            scene,
          ),
        ],
  ),
})

/** "Josiah hit a growth spurt, make him an M", "Checo no es L, es 2XL", "Hank tried it on. He needs a 2XL". */
export const readSizedAgain = (tokens: readonly Token[], scene: Scene, taken: ReadonlySet<number>): Change => {
  const refs = refsIn(tokens, scene.draft.rows)
  for (const at of tokens.keys()) {
    const size = taken.has(at) || refAt(tokens, at, scene.draft.rows) !== null ? null : sizeAt(tokens, at)
    if (size?.size === undefined || isNumber(tokens[at - 1]) || isOld(tokens, at, size)) continue
    if (!isPlainSize(tokens, at, size)) continue
    const group = together(
      tokens,
      refs.filter((ref) => ref.to <= at),
    )
    const [last] = group
    if (
      last === undefined ||
      group.some((ref) => isListed(tokens, ref)) ||
      !leadsTo(tokens, last.to, at) ||
      group.some((ref) => taken.has(ref.from))
    )
      continue
    const from = Math.min(...group.map((ref) => ref.from))
    return { ...nothing, ...changeOf(group, size, scene), taken: new Set([...span(from, last.to), ...span(at, size.to)]) }
  }
  return nothing
}
