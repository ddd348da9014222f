import { listed } from '../../words/languages.ts'
import { isMonth, isWeekday } from '../calendar/day-parts.ts'
import { sizeAt } from '../sizes/sizes.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { isCapital, isWord, type Token } from '../text/tokens.ts'

const cues: readonly string[] = listed.team.cues
const leads: readonly string[] = listed.team.leads
/** What a group of people is called behind its name. */
const groups: readonly string[] = listed.team.groups
/** Words of a name that say it is a team's or a school's. */
const bodies = new Set(listed.team.bodies)
const joiners: readonly string[] = listed.team.joiners
const personal: readonly string[] = listed.team.personal

type Run = { readonly from: number; readonly to: number; readonly text: string }

const isNamelike = (token: Token | undefined): boolean => isCapital(token) && !isMonth(token) && !isWeekday(token)

/** "Ernesto Quiroga de los Halcones": what follows is the team, not the person's name. */
const isOfThe = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...listed.team.of) && isWord(tokens[at + 1], ...listed.team.the)

/** The K of "5K" is no name. */
const isGlued = (tokens: readonly Token[], at: number): boolean =>
  tokens[at - 1]?.kind === 'number' && tokens[at - 1]?.end === tokens[at]?.start

/** Runs of capitalised words, joined over "de", "of the" and the like. */
const runsOf = (tokens: readonly Token[], text: string): readonly Run[] => {
  const runs: Run[] = []
  let at = 0
  while (at < tokens.length) {
    if (!isNamelike(tokens[at]) || isGlued(tokens, at)) {
      at += 1
      continue
    }
    let to = at + 1
    for (;;) {
      let next = to
      while (isWord(tokens[next], ...joiners) && !isCapital(tokens[next]) && !isOfThe(tokens, next)) next += 1
      if (!isNamelike(tokens[next]) || next - to > 2) break
      to = next + 1
    }
    runs.push({ from: at, to, text: text.slice(tokens[at]?.start, tokens[to - 1]?.end) })
    at = to
  }
  return runs
}

type Scene = {
  readonly tokens: readonly Token[]
  readonly text: string
  readonly lexicon: Lexicon
  readonly people: readonly string[]
  readonly sports: ReadonlySet<number>
}

const isPause = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'break' || [',', '.', ';', '!', '?', '(', ':', '-'].includes(token.text)

/** Words at the head of a run that only begin a sentence: "Roster", "Need", "Parents", "Same". */
const trimmed = (run: Run, { tokens, text, lexicon }: Scene): Run | null => {
  let from = run.from
  const opens = isPause(tokens[from - 1])
  while (
    from < run.to &&
    (opens || from > run.from || run.to - run.from === 1) &&
    isOpening(tokens[from], lexicon, run.to - from === 1)
  )
    from += 1
  while (from < run.to && isWord(tokens[from], ...joiners) && !isCapital(tokens[from])) from += 1
  let to = run.to
  while (
    to > from &&
    isOpening(tokens[to - 1], lexicon, false) &&
    to - from > 2 &&
    lexicon.entries.get(tokens[to - 1]?.key ?? '')?.kind === 'sport'
  )
    to -= 1
  return from >= to ? null : { from, to, text: text.slice(tokens[from]?.start, tokens[to - 1]?.end) }
}

const openings = new Set(listed.team.openings)

const isOpening = (token: Token | undefined, lexicon: Lexicon, single: boolean): boolean => {
  if (token === undefined) return false
  if (openings.has(token.key)) return true
  const meaning = lexicon.entries.get(token.key)
  return meaning !== undefined && (single || meaning.kind === 'sport' || meaning.kind === 'garment')
}

const nearSport = ({ tokens, sports }: Scene, run: Run): boolean => {
  const beside = [run.to, run.to + 1, run.to + 2].some(
    (at) => sports.has(at) && !tokens.slice(run.to, at).some((token) => token.kind === 'break' || token.text === '.'),
  )
  const before = [run.from - 1, run.from - 2, run.from - 3].some((at) => sports.has(at))
  return beside || before
}

/** A run of capitals with a sport or a word like "club" in it. */
const isBody = ({ tokens, sports }: Scene, { from, to }: Run): boolean =>
  tokens.slice(from, to).some((token, index) => bodies.has(token.key) || sports.has(from + index))

/** Who is called something is a player here, and no team. */
const kin = new Set(listed.team.kin)

/** "My kid's team is …", "el equipo de mi hijo es …": over a few words. */
const isCalled = (tokens: readonly Token[], { from }: Run): boolean => {
  const near = tokens.slice(Math.max(0, from - 6), from - 1)
  const own = near.slice(near.findLastIndex((token) => token.kind !== 'word') + 1)
  return isWord(tokens[from - 1], ...listed.team.is) && own.some((token) => cues.includes(token.key))
}

/** "The Herons": a name with its article and nothing else. */
const isWhole = (tokens: readonly Token[], { from, to }: Run): boolean =>
  from === 1 && isWord(tokens[0], ...listed.team.the) && tokens.slice(to).every((token) => token.kind === 'sign')

const score = (scene: Scene, run: Run): number => {
  const { tokens, people } = scene
  const previous = [1, 2, 3].map((back) => tokens[run.from - back]?.key ?? '')
  if (people.some((person) => run.text.includes(person) || person.includes(run.text))) return 0
  if (personal.includes(previous[0] ?? '') || personal.includes(tokens[run.from]?.key.replace(/\.$/, '') ?? '')) return 0
  if (
    isWord(tokens[run.from - 1], ...listed.team.called) &&
    tokens.slice(Math.max(0, run.from - 6), run.from).some((token) => kin.has(token.key))
  )
    return 0
  const words = run.to - run.from
  const cued =
    previous.some((key, index) => cues.includes(key) && index < 3) ||
    isCalled(tokens, run) ||
    isWord(tokens[run.to], ...groups) ||
    (isWord(tokens[run.to], ...listed.team.is) && isWord(tokens[run.to + 2], ...listed.team.isA))
  const led = leads.includes(previous[0] ?? '')
  const plural = listed.team.articles.includes(previous[0] ?? '')
  const needs = isWord(tokens[run.to], ...listed.team.needs)
  const opens =
    isPause(tokens[run.from - 1]) &&
    (tokens[run.to]?.text === ',' ||
      tokens[run.to]?.text === '.' ||
      tokens[run.to]?.kind === 'break' ||
      isWord(tokens[run.to + 1], ...listed.team.ordinals) ||
      tokens[run.to] === undefined)
  return (
    Number(cued) * 4 +
    Number(isWhole(tokens, run)) * 2 +
    Number(nearSport(scene, run)) * 2 +
    Number(led) * 1.5 +
    Number(plural) +
    Number(needs) * 1.5 +
    Number(words > 1 && isBody(scene, run)) * 1.75 +
    Number(opens && words > 1) * 1.5 +
    Number(words > 1) * 0.75
  )
}

/** "6 de las M de dama": a size is nobody's name. */
const isSize = (tokens: readonly Token[], { from, to }: Run): boolean => (sizeAt(tokens, from)?.to ?? 0) >= to

/** The team's name as it is written: a run of capitals beside a word like team, a sport, or at the head of a message; null when none is. */
export const readTeam = (scene: Scene): string | null => {
  const runs = runsOf(scene.tokens, scene.text).flatMap((run) => trimmed(run, scene) ?? [])
  let best: { readonly run: Run; readonly points: number } | null = null
  for (const run of runs) {
    const points = score(scene, run)
    if (points >= 2 && !isSize(scene.tokens, run) && points > (best?.points ?? 0)) best = { run, points }
  }
  if (best === null) return null
  const { run } = best
  const article =
    listed.team.articles.includes(scene.tokens[run.from - 1]?.key ?? '') &&
    /^\p{Lu}/u.test(scene.tokens[run.from - 1]?.text ?? '')
  const text = article ? scene.text.slice(scene.tokens[run.from - 1]?.start, scene.tokens[run.to - 1]?.end) : run.text
  return text.replace(/[.,]+$/, '').slice(0, 120)
}
