import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { isForLater } from '../calendar/later.ts'
import { hasSize } from '../sizes/sizes.ts'
import { sentencesOf } from '../text/statements.ts'
import { fold, isWord, type Token } from '../text/tokens.ts'
import { groupsIn } from '../whom/whom.ts'

const said = (tokens: readonly Token[]): string => fold(tokens.map(({ text }) => text).join(' '))

/** "Odile hasn't told me hers, I'll send her size later": the size of whoever a sentence names comes later. */
export const readTheirSizeLater = (tokens: readonly Token[], draft: Draft): readonly Patch[] =>
  sentencesOf(tokens).flatMap(({ from, to }) => {
    const sentence = tokens.slice(from, to)
    const ofSize = sentence.some((token) => isWord(token, ...listed.changes.sizeNoun))
    if (!ofSize || !isForLater(said(sentence)) || hasSize(sentence)) return []
    const [group, ...others] = groupsIn(sentence, draft)
    if (group === undefined || others.length > 0) return []
    const keys = group.refs.flatMap((ref) => (ref.keys.length === 1 ? ref.keys : []))
    return keys.map((key) => ({ path: ['rows', key, 'size'], value: 'later' }))
  })
