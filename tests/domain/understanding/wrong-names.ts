import { type Case, type Fact, holds, openOf, type Played, pick } from './corpus.ts'

/** A row's name or number that is another than was said; `told` where the customer was told that something was not understood, or is asked. */
export type WrongName = { readonly line: string; readonly told: boolean }

/** Answers after which nobody can think that all was heard. */
const sayingSo = new Set(['not-understood', 'words-unheard', 'lines-unread', 'ask-reading', 'ask-drop', 'ask-name-order'])
const asking = new Set(['drop', 'duplicate-number', 'same-surname', 'name', 'number'])

const ofName = ({ path }: Fact): boolean => /^\/roster\[.*\/(?:name|number)$/.test(path)

/** The row a fact is about, where it is found by its name or number. */
const rowOf = ({ path }: Fact): string | null =>
  /^\/roster(?:\[[^\]]*\])*\[(?:number|name)=[^\]]*\](?:\[[^\]]*\])*/.exec(path)?.[0] ?? null

const lineOf = (fact: Fact, values: readonly unknown[]): string => {
  const wanted = 'value' in fact ? JSON.stringify(fact.value) : 'includes' in fact ? `~${fact.includes}` : 'some'
  return `${fact.path}: ${JSON.stringify(values)}, said ${wanted}`
}

/** Names and numbers of rows that would be printed other than they were said, or whose row is not in the list; an empty place or list is asked for and does no harm. */
export const wrongNamesOf = (one: Case, played: Played): readonly WrongName[] => {
  const document = played.composed.order
  const told = played.replies.some(({ code }) => sayingSo.has(code)) || openOf(played).some(({ about }) => asking.has(about))
  const filled = (fact: Fact) => pick(document, fact.path).filter((value) => value !== undefined && value !== null)
  const unheld = one.facts.filter((fact) => !holds(document, fact))
  const missed = unheld.filter((fact) => ofName(fact) && filled(fact).length > 0)
  const absent = new Set(
    unheld.map(rowOf).filter((row) => row !== null && document.roster.length > 0 && pick(document, row).length === 0),
  )
  const forbidden = (one.not ?? []).filter((fact) => (ofName(fact) || rowOf(fact) === fact.path) && holds(document, fact))
  return [
    ...[...absent].map((row) => ({ line: `${row}: not there`, told })),
    ...missed.map((fact) => ({ line: lineOf(fact, filled(fact)), told })),
    ...forbidden.map((fact) => ({ line: `${fact.path}: ${JSON.stringify(filled(fact))}, may not be`, told })),
  ]
}
