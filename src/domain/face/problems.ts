import type { ProblemOf } from '../result/result.ts'

export type FaceProblems = {
  'face-unknown': { readonly face: string; readonly offered: readonly string[] }
  'face-unreadable': { readonly face: string; readonly reason: string }
  'face-lacks': { readonly face: string; readonly characters: readonly string[]; readonly faces: readonly string[] }
  'face-without-digits': { readonly face: string; readonly missing: readonly string[] }
  'face-contour-open': { readonly face: string; readonly character: string }
  'face-changed': { readonly face: string; readonly file: string; readonly expected: string; readonly found: string }
  'face-listed-twice': { readonly face: string }
  'face-file-missing': { readonly face: string; readonly file: string }
}

export type FaceProblem = ProblemOf<FaceProblems>
