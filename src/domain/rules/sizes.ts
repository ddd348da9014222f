import type { Decoration } from '../order/order.ts'
import type { Extent } from '../press/job.ts'
import { way } from '../press/way.ts'
import type { Severity } from '../result/result.ts'
import { bookFacts, bookSeverity, markOf } from './book-facts.ts'
import { bindingBook, decorationsOf, type Rule, type RuleFacts } from './facts.ts'
import { groupsBy } from './group.ts'
import type { RuleProblem } from './problems.ts'
import type { Rulebook } from './rulebook.ts'

type NumberRules = Rulebook['number']
type Figure = keyof NumberRules & `${string}Micrometres`

type Measured = {
  readonly book: Rulebook
  readonly decoration: Decoration
  readonly at: string
  readonly extent: Extent
  readonly women: boolean
}

/** The widest surround of a decoration: the border the rule books speak of. */
const borderOf = (decoration: Decoration): number =>
  Math.max(
    0,
    ...decoration.layers.map((layer) => {
      if (layer.kind === 'stones' || layer.shape === 'face') return 0
      if ('surround' in layer.shape) return layer.shape.surround
      return Math.max(...layer.shape.shadow.map(Math.abs))
    }),
  )

const measured = (facts: RuleFacts, kind: Decoration['content']['kind']): readonly Measured[] => {
  const book = bindingBook(facts)
  if (book === null) return []
  const women = new Set(facts.order.roster.filter((row) => row.fit === 'women').map((row) => row.line))
  return decorationsOf(facts.order)
    .filter(({ decoration }) => decoration.content.kind === kind)
    .flatMap(({ decoration, at }) =>
      facts.extents
        .filter((extent) => extent.decoration === decoration.id)
        .map((extent) => ({ book, decoration, at, extent, women: extent.line !== null && women.has(extent.line) })),
    )
}

type Limits = { readonly least: Figure | null; readonly most: Figure | null }

const heightLimits = ({ decoration, women, book }: Measured): Limits => {
  switch (decoration.place) {
    case 'front-number':
    case 'left-chest':
    case 'right-chest':
    case 'full-front':
      return { least: 'frontLeastMicrometres', most: 'frontMostMicrometres' }
    case 'back-number':
      return women && book.number.womenBackLeastMicrometres !== null
        ? { least: 'womenBackLeastMicrometres', most: 'womenBackMostMicrometres' }
        : { least: 'backLeastMicrometres', most: 'backMostMicrometres' }
    case 'left-sleeve':
    case 'right-sleeve':
    case 'left-shoulder':
    case 'right-shoulder':
      return { least: 'sleeveLeastMicrometres', most: null }
    default:
      return { least: null, most: null }
  }
}

type Breach = { readonly has: number; readonly limit: number; readonly severity: Severity; readonly border: string }

/** A border that counts is added on both sides; where nobody says, the body decides and a doubt is only a caution. */
const judge = (bare: number, border: number, counts: NumberRules['borderCountsToHeight']) => ({
  sure: counts === 'yes' ? bare + 2 * border : bare,
  doubtful: counts === 'unknown' ? bare + 2 * border : null,
})

type Judged = ReturnType<typeof judge>

const under = (judged: Judged, limit: number | null, severity: Severity): Breach | null => {
  if (limit === null || judged.sure >= limit) return null
  const rescued = judged.doubtful !== null && judged.doubtful >= limit
  return { has: judged.sure, limit, severity: rescued ? 'caution' : severity, border: rescued ? 'may-count' : 'does-not-help' }
}

const over = (judged: Judged, limit: number | null, severity: Severity): Breach | null => {
  if (limit === null) return null
  if (judged.sure > limit) return { has: judged.sure, limit, severity, border: 'does-not-matter' }
  const doubt = judged.doubtful !== null && judged.doubtful > limit
  return doubt ? { has: judged.doubtful ?? judged.sure, limit, severity: 'caution', border: 'may-count' } : null
}

const worstOf = (problems: readonly RuleProblem[]): readonly RuleProblem[] => {
  const groups = groupsBy(problems, (problem) => `${problem.code} ${problem.at}`)
  return groups.flatMap((group) => group.toSorted((a, b) => rank(a.severity) - rank(b.severity)).slice(0, 1))
}

const rank = (severity: Severity): number => ['stop', 'needs-test', 'caution', 'note'].indexOf(severity)

const sizeFacts = (one: Measured, figure: Figure, breach: Breach) => ({
  ...bookFacts(one.book),
  mark: markOf(one.book, figure),
  place: one.decoration.place,
  text: one.extent.text,
  hasMicrometres: breach.has,
  border: breach.border,
})

const byHeight = (one: Measured): readonly RuleProblem[] => {
  const { least, most } = heightLimits(one)
  const rules = one.book.number
  const judged = judge(one.extent.heightMicrometres, borderOf(one.decoration), rules.borderCountsToHeight)
  const problems: RuleProblem[] = []
  const small = least === null ? null : under(judged, rules[least], bookSeverity(one.book, least))
  if (small !== null && least !== null) {
    const facts = { ...sizeFacts(one, least, small), leastMicrometres: small.limit, ways: [way('larger'), way('ask-league')] }
    problems.push({ code: 'number-too-small', at: `${one.at}/height`, severity: small.severity, facts })
  }
  const large = most === null ? null : over(judged, rules[most], bookSeverity(one.book, most))
  if (large !== null && most !== null) {
    const facts = { ...sizeFacts(one, most, large), mostMicrometres: large.limit, ways: [way('smaller'), way('ask-league')] }
    problems.push({ code: 'number-too-large', at: `${one.at}/height`, severity: large.severity, facts })
  }
  return problems
}

/** Least and greatest heights of numbers by place, and for women's cuts where the body gives other figures. */
export const numberHeights: Rule = (facts) => worstOf(measured(facts, 'number').flatMap(byHeight))

const byStroke = (one: Measured): readonly RuleProblem[] => {
  const stroke = one.extent.strokeMicrometres
  if (stroke === null || heightLimits(one).least === null) return []
  const rules = one.book.number
  const judged = judge(stroke, borderOf(one.decoration), rules.borderCountsToStroke)
  const problems: RuleProblem[] = []
  const thin = under(judged, rules.strokeLeastMicrometres, bookSeverity(one.book, 'strokeLeastMicrometres'))
  if (thin !== null) {
    const ways = [way('other-face'), way('larger'), way('ask-league')]
    const facts = { ...sizeFacts(one, 'strokeLeastMicrometres', thin), leastMicrometres: thin.limit, ways }
    problems.push({ code: 'stroke-too-thin', at: `${one.at}/face`, severity: thin.severity, facts })
  }
  const thick = over(judged, rules.strokeMostMicrometres, bookSeverity(one.book, 'strokeMostMicrometres'))
  if (thick !== null) {
    const ways = [way('other-face'), way('smaller'), way('ask-league')]
    const facts = { ...sizeFacts(one, 'strokeMostMicrometres', thick), mostMicrometres: thick.limit, ways }
    problems.push({ code: 'stroke-too-thick', at: `${one.at}/face`, severity: thick.severity, facts })
  }
  return problems
}

/** Least and greatest stroke of the body of a number. */
export const numberStrokes: Rule = (facts) => worstOf(measured(facts, 'number').flatMap(byStroke))

/** The border or shadow round a number may be at most so wide. */
export const numberBorders: Rule = (facts) =>
  worstOf(
    measured(facts, 'number').flatMap((one): ReturnType<Rule> => {
      const most = one.book.number.borderMostMicrometres
      const border = borderOf(one.decoration)
      if (most === null || border <= most) return []
      const severity = bookSeverity(one.book, 'borderMostMicrometres')
      const breach: Breach = { has: border, limit: most, severity, border: 'is-meant' }
      const facts_ = {
        ...sizeFacts(one, 'borderMostMicrometres', breach),
        mostMicrometres: most,
        ways: [way('smaller'), way('ask-league')],
      }
      return [{ code: 'border-too-wide', at: `${one.at}/layers`, severity, facts: facts_ }]
    }),
  )

/** At most so many colours in one number. */
export const numberColours: Rule = (facts) => {
  const book = bindingBook(facts)
  const most = book?.number.coloursMost ?? null
  if (book === null || most === null) return []
  return decorationsOf(facts.order)
    .filter(({ decoration }) => decoration.content.kind === 'number')
    .flatMap(({ decoration, at }): ReturnType<Rule> => {
      const colours = [...new Set(decoration.layers.map((layer) => layer.colour))]
      if (colours.length <= most) return []
      const found = {
        ...bookFacts(book),
        decoration: decoration.id,
        colours,
        most,
        ways: [way('other-colour'), way('ask-league')],
      }
      return [{ code: 'too-many-colours', at: `${at}/layers`, severity: bookSeverity(book, 'coloursMost'), facts: found }]
    })
}

const byName = (one: Measured): readonly RuleProblem[] => {
  const rules = one.book.name
  const bare = { sure: one.extent.heightMicrometres, doubtful: null }
  const severity = bookSeverity(one.book, 'name')
  const small = under(bare, rules?.leastMicrometres ?? null, severity)
  const large = over(bare, rules?.mostMicrometres ?? null, severity)
  const about = {
    ...bookFacts(one.book),
    place: one.decoration.place,
    text: one.extent.text,
    hasMicrometres: bare.sure,
    border: 'not-counted',
  }
  const at = `${one.at}/height`
  return [
    ...(small === null
      ? []
      : [
          {
            code: 'name-too-small',
            at,
            severity,
            facts: { ...about, leastMicrometres: small.limit, ways: [way('larger')] },
          } as const,
        ]),
    ...(large === null
      ? []
      : [
          {
            code: 'name-too-large',
            at,
            severity,
            facts: { ...about, mostMicrometres: large.limit, ways: [way('smaller')] },
          } as const,
        ]),
  ]
}

/** Least and greatest heights of names, where a body gives them. */
export const nameHeights: Rule = (facts) => worstOf(measured(facts, 'name').flatMap(byName))
