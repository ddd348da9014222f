import { spoken } from '../../words/languages.ts'

/** A stretch of a message between two pauses; `joint` is the sign or word in front of it, empty at the start. */
export type Clause = { readonly text: string; readonly from: number; readonly to: number; readonly joint: string }

const joint = new RegExp(`[,;:!?\\n…]|\\.(?= |$)| (?:${spoken.rosters.and}) |&`, 'gu')

/** The clauses of a text in order, the empty ones left out. */
export const clausesOf = (text: string): readonly Clause[] => {
  const joints = [...text.matchAll(joint)].map((match) => ({
    from: match.index,
    to: match.index + match[0].length,
    sign: match[0].trim(),
  }))
  const starts = [{ to: 0, sign: '' }, ...joints]
  return starts
    .map(({ to, sign }, index) => ({ from: to, to: joints[index]?.from ?? text.length, joint: sign }))
    .map((one) => ({ ...one, text: text.slice(one.from, one.to).trim() }))
    .map((one, index, all) => (isAfterEnd(all, index) ? { ...one, joint: '.' } : one))
    .filter((one) => one.text !== '')
}

/** ". And he …": of several pauses with nothing between them the end of the sentence counts. */
const isAfterEnd = (all: readonly Clause[], index: number): boolean => {
  const own = all.slice(0, index).findLastIndex(({ text }) => text !== '') + 1
  return all.slice(own, index + 1).some(({ joint: sign }) => isSentenceEnd(sign))
}

/** A sign behind which a new sentence begins. */
export const isSentenceEnd = (sign: string): boolean => ['.', '!', '?', ';', '\n', '…'].includes(sign)
