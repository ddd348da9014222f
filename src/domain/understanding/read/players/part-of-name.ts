import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { blanked, fold, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'

const said = spoken.rowMarks

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

const partsOf = (name: string): readonly string[] => name.split(/[\s-]+/).filter((part) => part !== '')

/** What is left of a name without one of its parts. */
const less = (name: string, part: string): string =>
  fold(name)
    .split(/(?<=[\s-])|(?=[\s-])/u)
    .reduce<{ readonly at: number; readonly kept: readonly string[] }>(
      ({ at, kept }, piece) => ({
        at: at + piece.length,
        kept: piece.replace(/\.$/, '') === part.replace(/\.$/, '') ? kept : [...kept, name.slice(at, at + piece.length)],
      }),
      { at: 0, kept: [] },
    )
    .kept.join('')
    .replace(/^[\s-]+|[\s-]+$/g, '')
    .replace(/\s+/g, ' ')

type Own = { readonly name: string; readonly rest: string }

/** "Solo Tagle", "just Tagle": a part of the name that alone is to stand there. */
const onlyPart = (text: string, name: string): Own | null => {
  const part = `(?:${partsOf(fold(name)).map(escaped).join('|')})`
  const found = new RegExp(`(?<!\\p{L})${said.partOnly} (${part}(?:[\\s-]${part})*)(?![\\p{L}\\d'-])`, 'u').exec(fold(text))
  const [whole = '', words = ''] = found ?? []
  const at = fold(name).indexOf(words)
  const several = partsOf(name).filter((one) => partsOf(words).includes(fold(one)))
  return found === null
    ? null
    : {
        name: at < 0 ? several.join(' ') : name.slice(at, at + words.length),
        rest: blanked(text, found.index, found.index + whole.length),
      }
}

/** "Sin el Ruiz", "quítale el Jr": a part of the name that is left out. */
const partOff = (text: string, name: string): Own | null => {
  const part = `(?:${partsOf(fold(name))
    .map((one) => escaped(one.replace(/\.$/, '')))
    .join('|')})`
  const found = new RegExp(`(?<!\\p{L})${said.partOff} (${part})(?![\\p{L}\\d'-])`, 'u').exec(fold(text))
  return found === null
    ? null
    : { name: less(name, found[1] ?? ''), rest: blanked(text, found.index, found.index + found[0].length) }
}

/** Lines that a sentence names for sure. */
const keysIn = (text: string, { rows }: Draft): readonly string[] => [
  ...new Set(refsIn(tokensOf(text), rows).flatMap(({ keys }) => (keys.length === 1 ? keys : ['?']))),
]

/** The line of a sentence whose name, in part, is told; it must be named besides that part, and nobody else with it. */
const partIn = (text: string, draft: Draft): Patch | null => {
  for (const [key, { name = '' }] of Object.entries(draft.rows)) {
    if (partsOf(name).length < 2) continue
    const own = onlyPart(text, name) ?? partOff(text, name)
    const rest = own === null ? null : (partOff(own.rest, name)?.rest ?? own.rest)
    const keys = rest === null ? [] : keysIn(rest, draft)
    if (own !== null && keys.length === 1 && keys[0] === key && own.name !== '' && own.name !== name)
      return { path: ['rows', key, 'name'], value: own.name }
  }
  return null
}

/** "El 12 solo quiere Tagle, sin el Ruiz": sentences that tell which part of somebody's name stands on the piece. */
export const readPartOfName = (text: string, draft: Draft): { readonly patches: readonly Patch[]; readonly rest: string } =>
  [...text.matchAll(/[^.\n!?;]+/g)].reduce<{ readonly patches: readonly Patch[]; readonly rest: string }>(
    (found, sentence) => {
      const patch = sentence[0].length > 160 ? null : partIn(sentence[0], draft)
      if (patch === null) return found
      const to = sentence.index + sentence[0].length
      return { patches: [...found.patches, patch], rest: blanked(found.rest, sentence.index, to) }
    },
    { patches: [], rest: text },
  )
