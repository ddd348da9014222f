import { fold } from './tokens.ts'

/** How many letters must be changed, put in or left out to make one word of another; more than two are not counted further. */
const apart = (a: string, b: string): number => {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index)
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1]
    for (let j = 0; j < b.length; j += 1)
      next.push(Math.min((row[j] ?? 0) + (letter === b[j] ? 0 : 1), (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1))
    row = next
  }
  return row[b.length] ?? 0
}

/** Two different words of one name: a letter or, in long words, two are other, or the shorter one begins the longer. */
export const isNear = (a: string, b: string): boolean => {
  const [short, long] = a.length < b.length ? [a, b] : [b, a]
  if (a === b || short.length < 3 || long.length > 40) return false
  if (long.startsWith(short) && short.length >= 4) return true
  const most = short.length >= 6 ? 2 : 1
  return long.length - short.length <= most && short.length > 3 && apart(a, b) <= most
}

/** Two words of four letters or more that differ by one letter: changed, put in or left out. */
export const isLetterApart = (a: string, b: string): boolean =>
  a !== b && Math.abs(a.length - b.length) < 2 && Math.min(a.length, b.length) > 3 && apart(a, b) < 2

/** A name of which one word gives way to one that is near to it: a letter away, its accents, or the whole of what was cut short. */
export const nearName = (had: string, fresh: string): string | null => {
  const isMeant = (word: string): boolean => {
    const [short, long] = word.length < fresh.length ? [word, fresh] : [fresh, word]
    if (word === fresh || short.length < 3) return false
    const [a, b] = [fold(short), fold(long)]
    return (
      a === b ||
      isLetterApart(a, b) ||
      b.startsWith(a) ||
      (a.length > 4 && b.startsWith(a.slice(0, -1)) && b.length - a.length < 2)
    )
  }
  const words = had.split(' ')
  const at = words.findIndex(isMeant)
  return at < 0 ? null : words.with(at, fresh).join(' ')
}

const sounds: readonly (readonly [RegExp, string])[] = [
  [/ph/g, 'f'],
  [/ck|q(?:u(?=[ei]))?|c(?![eih])/g, 'k'],
  [/ll/g, 'y'],
  [/(?<!c)h/g, ''],
  [/z|c(?=[ei])/g, 's'],
  [/v|w/g, 'b'],
  [/g(?=[ei])|x/g, 'j'],
  [/ie|ey|ee|y/g, 'i'],
  [/(.)\1/g, '$1'],
]

const sounded = (word: string): string => sounds.reduce((left, [from, to]) => left.replace(from, to), fold(word))

/** Two ways to write one word: it sounds nearly the same ("Sophia" and "Sofía", "Nayeli" and "Nallely"), or few letters are other. */
export const isAlike = (had: string, fresh: string): boolean => {
  if (had === fresh || Math.min(had.length, fresh.length) < 3 || Math.max(had.length, fresh.length) > 40) return false
  const [a, b] = [fold(had), fold(fresh)]
  const [x, y] = [sounded(had), sounded(fresh)]
  return a === b || x === y || isNear(a, b) || isLetterApart(x, y)
}

/** How somebody was spoken of: the folded words of the name that were said, and whether another surname is told. */
export type Spoken = { readonly words: readonly string[]; readonly surname: boolean }

/** Of a name of several words one alone changes: the one that was said ("Flo goes by Florence"), or the last where a surname is told. */
export const renamed = (had: string, value: string, { words: spoken, surname }: Spoken): string => {
  const words = had.split(' ')
  if (words.length < 2 || value.includes(' ') || words.some((word) => fold(word) === fold(value))) return value
  if (surname) return [...words.slice(0, -1), value].join(' ')
  const said = words.filter((word) => spoken.includes(fold(word)))
  return said.length === 1 ? words.map((word) => (word === said[0] ? value : word)).join(' ') : value
}
