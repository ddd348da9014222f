import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { registered } from '../../../src/domain/understanding/words/registered.ts'

const folder = fileURLToPath(new URL('../../../src/domain/understanding', import.meta.url))

const stringsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null && !(value instanceof RegExp)
    ? Object.entries(value).flatMap(([key, inner]) => [key, ...stringsIn(inner)])
    : []
}

const wordsIn = (text: string): readonly string[] => text.match(/\p{L}{3,}/gu) ?? []

/** Every word of three letters or more that a language has, out of phrases and patterns alike. */
const vocabulary = (language: keyof typeof registered): ReadonlySet<string> => {
  const { en, es } = registered
  const rooms = Object.values(language === 'en' ? en : es)
  return new Set(rooms.flatMap(stringsIn).flatMap(wordsIn))
}

const english = vocabulary('en')
const spanish = vocabulary('es')
/** Signs that are written alike everywhere. */
const signs: readonly string[] = ['pdf', 'xls']

const isKnown = (word: string): boolean => !signs.includes(word) && (english.has(word) || spanish.has(word))

const withoutComments = (source: string): string =>
  source.replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, ' ')).replace(/(?<=^|\s)\/\/.*$/gm, '')

/** Patterns written out: literals, and templates that are made into patterns; what is put into a template stands elsewhere. */
const patternsIn = (line: string): readonly string[] => [
  ...(line.match(/(?<=[(,=:!&|?[{;>]\s*|return\s|^\s+)\/(?![*/])(?:[^/\\\n[]|\\.|\[(?:[^\]\\\n]|\\.)*\])+\/[a-z]*/g) ?? []),
  ...(line.match(/`[^`]*`/g) ?? []).filter((template) => template.includes('\\\\')),
]

const plainPart = (pattern: string): string =>
  pattern
    .replace(/\$\{[^}]*\}|\\{1,2}[pP]\{\w+\}|\\u[\da-f]{4}|\\{1,2}[a-zA-Z]|\/[a-z]*$/g, ' ')
    .replace(/\bNAME\b|\bTITLE\w*/g, ' ')

/** Addresses within a document are no words. */
const isPath = (pattern: string): boolean => /^\/\^?\\\//.test(pattern)

/** Words that a token is compared with: `isWord(token, 'word')`, `token.key === 'word'`, `['word'].includes(token.key)`. */
const comparedIn = (line: string): readonly string[] => [
  ...(line.match(/isWord\([^)]*\)/g) ?? []),
  ...(line.match(/\.key(?: \?\? '')?\)? === '[^']*'/g) ?? []),
  ...(line.match(/\[[^[\]]*\]\.includes\([\w.?[\] +-]*\bkey(?: \?\? '')?\)/g) ?? []),
]

const quotedIn = (text: string): readonly string[] => (text.match(/'[^'\n]*'/g) ?? []).flatMap(wordsIn)

/** Words of a language in the patterns and comparisons of a file, and any literal that only Spanish has. */
const strayWords = (source: string): readonly string[] =>
  withoutComments(source)
    .split('\n')
    .filter((line) => !/^\s*(?:import|\} from) /.test(line))
    .flatMap((line) => [
      ...patternsIn(line)
        .filter((pattern) => !isPath(pattern))
        .flatMap((pattern) => wordsIn(plainPart(pattern)).filter(isKnown)),
      ...comparedIn(line).flatMap(quotedIn).filter(isKnown),
      ...quotedIn(line).filter((word) => spanish.has(word) && !english.has(word)),
    ])

test('words of a language stand in its own folder, not in the readers', () => {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !file.startsWith('words'),
  )
  const stray = files.flatMap((file) => strayWords(readFileSync(`${folder}/${file}`, 'utf8')).map((word) => `${file}: ${word}`))
  expect(files.length).toBeGreaterThan(50)
  expect(stray).toEqual([])
})

test('the check sees words in patterns, templates, comparisons and lists', () => {
  expect(strayWords('const asks = /^(?:how much|cuanto)\\b/u')).toEqual(['how', 'much', 'cuanto'])
  expect(strayWords(`const said = new RegExp(\`\\\\b\${spoken.days.span} from (?:now|today)\`)`)).toEqual([
    'from',
    'now',
    'today',
  ])
  expect(strayWords("if (isWord(token, 'swap', ...others)) return at")).toEqual(['swap'])
  expect(strayWords("const is = token.key === 'number'")).toEqual(['number'])
  expect(strayWords("const is = ['then', 'next'].includes(item.key)")).toEqual(['then', 'next'])
  expect(strayWords("const links = ['una', 'talla']")).toEqual(['una', 'talla'])
  expect(strayWords("const kind = { kind: 'number' } // how much\n/* isWord(token, 'swap') */")).toEqual([])
})
