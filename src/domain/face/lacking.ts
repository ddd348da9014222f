import type { Face } from './face.ts'
import type { FaceProblem } from './problems.ts'

const visible = (text: string): readonly string[] => [...new Set(text)].filter((character) => character.trim() !== '')

const missing = (face: Face, text: string): readonly string[] => visible(text).filter((character) => !face.has(character))

/** `face-lacks` when the face has no glyph for a character of the text; it names the offered faces that have them all. */
export const lacking = (face: Face, text: string, offered: readonly Face[]): readonly FaceProblem[] => {
  const characters = missing(face, text)
  if (characters.length === 0) return []
  const faces = offered.filter((other) => missing(other, text).length === 0).map(({ id }) => id)
  return [{ code: 'face-lacks', at: '', severity: 'stop', facts: { face: face.id, characters, faces } }]
}
