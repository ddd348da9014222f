import type { Language } from '../../shop/show.ts'
import { enWords } from './en.ts'
import { esWords } from './es.ts'
import type { ArtworkWords, FaceWords, Words } from './word-list.ts'

/** The one place where the words of customers are registered: a language is its file here and its line below. */
export const languages: Readonly<Record<Language, Words>> = { en: enWords, es: esWords }

const all = Object.values(languages)

/** The words of one kind in every language, for customers who mix them. */
const together = <Key extends string>(
  lists: readonly Readonly<Record<Key, readonly string[]>>[],
  key: Key,
): ReadonlySet<string> => new Set(lists.flatMap((list) => list[key]))

const drawings = all.map((words) => words.artwork)

/** How people speak of a drawing. */
export const artworkWords: Readonly<Record<keyof ArtworkWords, ReadonlySet<string>>> = {
  words: together(drawings, 'words'),
  lettered: together(drawings, 'lettered'),
  refused: together(drawings, 'refused'),
}

const faces = all.map((words) => words.faces)

/** How people speak of a type face. */
export const faceWords: Readonly<Record<keyof FaceWords, ReadonlySet<string>>> = {
  lettering: together(faces, 'lettering'),
  typeface: together(faces, 'typeface'),
  called: together(faces, 'called'),
  plain: together(faces, 'plain'),
  numbers: together(faces, 'numbers'),
  names: together(faces, 'names'),
  links: together(faces, 'links'),
  joins: together(faces, 'joins'),
}
