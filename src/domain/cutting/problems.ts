import type { ProblemOf } from '../result/result.ts'

export type CuttingProblems = {
  'part-wider-than-roll': {
    readonly tag: string
    readonly widthMicrometres: number
    readonly mostMicrometres: number
    readonly material: string
  }
  'template-larger-than-sheet': {
    readonly text: string
    readonly widthMicrometres: number
    readonly heightMicrometres: number
    readonly sheetWidthMicrometres: number
    readonly sheetHeightMicrometres: number
  }
}

export type CuttingProblem = ProblemOf<CuttingProblems>
