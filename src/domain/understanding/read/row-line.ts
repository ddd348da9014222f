import type { Fit, Size } from '../../garment/garment.ts'
import { type SizeFound, sizeAt } from './sizes.ts'
import { isNumber, isWord, type Token, tokensOf } from './tokens.ts'
import { isMonth, isWeekday } from './when.ts'

/** One pasted line taken apart. `index` is a running number that stands before a marked one ("3. Cutter #41"). */
export type RowLine = {
  readonly number?: string
  readonly index?: string
  readonly name?: string
  readonly size?: Size
  readonly fit?: Fit
  readonly quantity?: number
  readonly note?: string
  /** The size was written out in words or with its cut, as sizes are counted. */
  readonly spelled: boolean
}

const skipped: readonly string[] = ['size', 'talla', 'number', 'numero', 'no.', 'num', 'num.', 'name', 'nombre', 'jersey', 'sz']
const noNumber = /\b(?:no number|without a number|sin n[uú]mero)\b/iu

/** Words that stand in sentences about orders and hardly in a name. */
const sentenceWords = new Set(
  (
    'need needs want wants please thanks thank for the on in with and or by at is are was were we our us you your have has it this that them they there ' +
    'vinyl jersey jerseys tee tees shirt shirts hoodie hoodies polo polos number numbers names roster front back sleeve sleeves chest inch stones glitter outline ' +
    'necesito necesitamos ocupo quiero queremos para por favor con que los las son es una nuestros nuestras gracias lista equipo jugadores vinil playeras camisetas ' +
    'espalda frente atras adelante pulgadas pedreria brillo contorno hola buenas hello hi hey pick pickup paso game games match bus will i im ' +
    'everybody everyone all todos todas each sizes tallas colour color players going here drop add make change remove swap quita agrega cambia put get gets same quit his her ' +
    'am pm captain capitana capitan lista club squad baseball softball soccer football basketball volleyball hockey lacrosse rugby handball beisbol futbol voleibol basquetbol ' +
    'border trim outline piedra piedras price cost how much when what who where which does do can could would should'
  ).split(' '),
)

const cellsOf = (line: string): readonly string[] => {
  const quoted = line.replace(/"([^"]*)"/g, (_, inner: string) => inner.replace(/[,;]/g, ' '))
  if (quoted.includes('\t')) return quoted.split('\t')
  if (quoted.includes(';')) return quoted.split(';')
  if (quoted.includes('|')) return quoted.split('|')
  if (quoted.includes(',')) return quoted.split(',')
  if (/\S {2,}\S/.test(quoted)) return quoted.split(/ {2,}/)
  return quoted.split(/\s+[-–:]\s+|:\s+/)
}

/** A name keeps every sign it was written with, but no separators round it. */
export const trimName = (text: string): string => text.replace(/^[\s,;:#\-–.*•()]+|[\s,;:#\-–*•()]+$/g, '').replace(/\s+/g, ' ')

const isName = (words: readonly Token[]): boolean => {
  const letters = words.filter((token) => token.kind === 'word')
  if (letters.length === 0 || letters.length > 5 || words.some((token) => token.kind === 'number')) return false
  return (
    !letters.some((token) => sentenceWords.has(token.key)) &&
    words.every((token) => token.kind === 'word' || "'-.".includes(token.text))
  )
}

type Found = {
  sizeText?: string
  number?: string
  index?: string
  name?: string
  size?: Size
  fit?: Fit
  spelled: boolean
  bad: boolean
}

const takeNumber = (found: Found, text: string, marked: boolean): void => {
  if (!/^\d{1,3}$/.test(text)) found.bad = true
  else if (found.number === undefined) found.number = text
  else if (marked && found.index === undefined) {
    found.index = found.number
    found.number = text
  } else if (found.index === undefined) found.index = text
  else found.bad = true
}

const takeName = (found: Found, text: string): void => {
  const name = trimName(text)
  if (name === '') return
  if (found.name !== undefined && found.index !== undefined) found.bad = true
  found.name = found.name === undefined ? name : `${found.name} ${name}`
}

/** Of two that look like sizes the last is the size and the first a name or an initial: "7 Small M". */
const takeSize = (found: Found, size: SizeFound, text: string): void => {
  if (found.sizeText !== undefined) found.name = found.name === undefined ? found.sizeText : `${found.sizeText} ${found.name}`
  found.sizeText = text
  if (size.size !== undefined) found.size = size.size
  if (size.fit !== undefined) found.fit = size.fit
}

/** Reads one cell: figures and sizes at its ends are taken off, what is left is the name. */
const takeCell = (found: Found, cell: string): void => {
  const tokens = tokensOf(cell)
  let at = 0
  let nameFrom = -1
  let nameTo = -1
  const whole = (to: number): boolean =>
    nameFrom < 0 || to === tokens.length || isNumber(tokens[to]) || tokens[to]?.kind === 'sign'
  while (at < tokens.length) {
    const token = tokens[at]
    if (token === undefined) break
    const size = sizeAt(tokens, at, tokens.length === 1)
    if (size !== null && whole(size.to)) {
      takeSize(found, size, cell.slice(token.start, tokens[size.to - 1]?.end))
      found.spelled ||= size.to - at > 1 || (token.kind === 'word' && token.text.length > 3)
      at = size.to
      continue
    }
    if (isNumber(token)) {
      const marked = tokens[at - 1]?.text === '#'
      takeNumber(found, token.text, marked)
      at += 1
      if (tokens[at]?.text === '.' || tokens[at]?.text === ')') at += 1
      continue
    }
    if (token.kind === 'word' && !(tokens.length > 1 && skipped.includes(token.key))) {
      if (nameFrom < 0) nameFrom = token.start
      else if (nameTo >= 0 && tokens.slice(0, at).some((other) => isNumber(other) && other.start > nameFrom)) found.bad = true
      nameTo = token.end
    }
    at += 1
  }
  if (nameFrom < 0) return
  const words = tokens.filter((token) => token.start >= nameFrom && token.end <= nameTo)
  if (!isName(words)) found.bad = true
  takeName(found, cell.slice(nameFrom, nameTo))
}

const finished = (found: Found): RowLine => {
  const { bad: _bad, sizeText: _size, ...row } = found
  return row
}

/** A pasted line as a roster line, or null when it is a sentence. */
export const readRowLine = (line: string): RowLine | null => {
  const note = noNumber.exec(line)?.[0]
  const text = note === undefined ? line : line.replace(noNumber, '')
  const cells = cellsOf(text.trim()).filter((cell) => cell.trim() !== '')
  if (text.trim() === '' || text.length > 90 || /[?!]\s*$/.test(text) || cells.length > 6) return null
  const found: Found = { spelled: false, bad: false }
  for (const cell of cells) takeCell(found, cell)
  const parts = [found.number, found.name, found.size].filter((part) => part !== undefined).length
  if (found.bad || parts === 0) return null
  if (found.size === undefined && tokensOf(found.name ?? '').some((token) => isMonth(token) || isWeekday(token))) return null
  if (isWord(tokensOf(found.name ?? '')[0], 'and', 'y') && parts === 1) return null
  return note === undefined ? finished(found) : { ...finished(found), note }
}
