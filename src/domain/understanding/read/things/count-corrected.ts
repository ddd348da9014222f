import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { blanked, fold } from '../text/tokens.ts'

const said = spoken.things
const start = `(?:^|(?<=[.,;!\\n]))\\s*(?:${said.countLeads}[,]? )*`
const end = '(?= *(?:[.,;!?\\n]|$))'

/** "11 not 12", "son 13, no 12": of one figure another; `old` first in "not 12 but 14". */
const forms: readonly { readonly pattern: RegExp; readonly fresh: 1 | 2; readonly old: 1 | 2 | null }[] = [
  { pattern: new RegExp(`${start}(\\d{1,3}),? (?:${said.countNot}) (\\d{1,3})${end}`, 'g'), fresh: 1, old: 2 },
  { pattern: new RegExp(`${start}(?:${said.countNot}) (\\d{1,3}),? ${said.countBut} (\\d{1,3})${end}`, 'g'), fresh: 2, old: 1 },
  { pattern: new RegExp(`${start}(\\d{1,3}) ${said.countInAll}${end}`, 'g'), fresh: 1, old: null },
  { pattern: new RegExp(`${start}${said.inAllCount} (\\d{1,3})${end}`, 'g'), fresh: 1, old: null },
]

type Kept = { readonly path: Patch['path']; readonly count: number }

/** The one amount that was told; null where several garments have theirs. */
const keptIn = ({ count, garments }: Draft): readonly Kept[] => {
  const counted = Object.entries(garments).flatMap(([id, wish]): readonly Kept[] =>
    wish.count === undefined ? [] : [{ path: ['garments', id, 'count'], count: wish.count }],
  )
  const own = count === undefined ? [] : [{ path: ['count'], count }]
  return counted.length > 1 ? [] : [...own, ...counted]
}

/** The amount of pieces told anew, before there is any list whose numbers it could be; `rest` is the text without it. */
export const readCountCorrected = (text: string, draft: Draft): { readonly patches: readonly Patch[]; readonly rest: string } => {
  const kept = keptIn(draft)
  const listed = Object.keys(draft.rows).length + Object.keys(draft.tally).length > 0
  if (listed || kept.length === 0) return { patches: [], rest: text }
  for (const { pattern, fresh, old } of forms) {
    const [found] = fold(text).matchAll(pattern)
    const amount = Number(found?.[fresh])
    if (found === undefined || amount < 1 || amount > 500) continue
    if (old !== null && kept.every(({ count }) => count !== Number(found[old]))) continue
    const rest = blanked(text, found.index, found.index + found[0].length)
    return { patches: kept.map(({ path }): Patch => ({ path, value: amount })), rest }
  }
  return { patches: [], rest: text }
}
