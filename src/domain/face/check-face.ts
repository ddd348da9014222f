import type { Contour } from '../geometry/contour.ts'
import { flatten } from '../geometry/contour.ts'
import { signedArea } from '../geometry/region.ts'
import { ok, type Result } from '../result/result.ts'
import type { Face } from './face.ts'
import type { FaceProblem } from './problems.ts'

const DIGITS = [...'0123456789']

/** A contour that encloses less than this share of the em square is a stray line, not a shape. */
const STRAY = 1e-5

const isOpen = (contours: readonly Contour[], unitsPerEm: number): boolean =>
  contours.length === 0 ||
  contours.some((contour) => Math.abs(signedArea(flatten(contour, unitsPerEm / 500))) < STRAY * unitsPerEm * unitsPerEm)

/** A shop's own face before its first use: all ten digits (`face-without-digits`), each of closed shapes (`face-contour-open`). */
export const checkFace = (face: Face): Result<Face, FaceProblem> => {
  const missing = DIGITS.filter((digit) => !face.has(digit))
  if (missing.length > 0) {
    const facts = { face: face.id, missing }
    return { ok: false, problems: [{ code: 'face-without-digits', at: '', severity: 'stop', facts }] }
  }
  const open = DIGITS.filter((digit) => isOpen(face.outline(digit), face.unitsPerEm))
  if (open.length === 0) return ok(face)
  return {
    ok: false,
    problems: open.map((character) => ({
      code: 'face-contour-open',
      at: '',
      severity: 'stop',
      facts: { face: face.id, character },
    })),
  }
}
