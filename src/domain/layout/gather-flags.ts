import type { LayoutProblem } from './problems.ts'

type Flag = Extract<LayoutProblem, { readonly code: 'row-dropped' | 'row-shared' | 'row-gap' | 'corner-bald' | 'corner-blunt' }>

const isFlag = (problem: LayoutProblem): problem is Flag =>
  ['row-dropped', 'row-shared', 'row-gap', 'corner-bald', 'corner-blunt'].includes(problem.code)

const kindOf = (flag: Flag): string => (flag.code === 'row-dropped' ? `${flag.code} ${flag.facts.row}` : flag.code)

const together = (one: Flag, two: Flag): Flag => {
  const text = one.facts.text.split(', ').includes(two.facts.text) ? one.facts.text : `${one.facts.text}, ${two.facts.text}`
  if (one.code === 'row-gap' && two.code === 'row-gap')
    return { ...one, facts: { ...one.facts, text, pitches: Math.max(one.facts.pitches, two.facts.pitches) } }
  if (one.code === 'corner-bald' && two.code === 'corner-bald')
    return { ...one, facts: { ...one.facts, text, corners: one.facts.corners + two.facts.corners } }
  if (one.code === 'corner-blunt' && two.code === 'corner-blunt')
    return { ...one, facts: { ...one.facts, text, corners: one.facts.corners + two.facts.corners } }
  if (one.code === 'row-dropped') return { ...one, facts: { ...one.facts, text } }
  if (one.code === 'row-shared') return { ...one, facts: { ...one.facts, text } }
  return one
}

/** One flag of each kind for a whole text: pieces are named together, corners added up, the widest gap kept. */
export const gatherFlags = (flags: readonly LayoutProblem[]): readonly LayoutProblem[] => {
  const gathered = new Map<string, Flag>()
  for (const flag of flags.filter(isFlag)) {
    const known = gathered.get(kindOf(flag))
    gathered.set(kindOf(flag), known === undefined ? flag : together(known, flag))
  }
  return [...flags.filter((flag) => !isFlag(flag)), ...gathered.values()]
}
