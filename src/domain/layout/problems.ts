import type { ProblemOf } from '../result/result.ts'

export type Remedy =
  | 'smaller-stone'
  | 'larger-stone'
  | 'fewer-rows'
  | 'wider-tracking'
  | 'another-face'
  | 'larger-letters'
  | 'shorter-text'
  | 'vinyl'

export type LayoutProblems = {
  'text-empty': { readonly text: string }
  'text-too-long': { readonly characters: number; readonly most: number }
  'text-right-to-left': { readonly text: string }
  'height-impossible': { readonly heightMicrometres: number; readonly leastMicrometres: number; readonly mostMicrometres: number }
  'text-too-wide': {
    readonly text: string
    readonly widthMicrometres: number
    readonly mostMicrometres: number
    readonly leastHeightMicrometres: number
  }
  'line-too-bent': { readonly text: string; readonly riseMicrometres: number; readonly mostMicrometres: number }
  'too-many-rows': { readonly rows: number; readonly most: number }
  'stone-setting-impossible': { readonly size: string; readonly holeMicrometres: number; readonly webMicrometres: number }
  'no-room-for-stones': { readonly text: string; readonly size: string; readonly remedies: readonly string[] }
  'stones-too-many': {
    readonly text: string
    readonly about: number
    readonly most: number
    readonly remedies: readonly string[]
  }
  'letters-condensed': { readonly text: string; readonly percent: number }
  'letters-smaller': { readonly text: string; readonly heightMicrometres: number; readonly askedMicrometres: number }
  'letters-joined': { readonly text: string; readonly neededMicrometres: number; readonly remedies: readonly string[] }
  'letters-melt': {
    readonly text: string
    readonly size: string
    readonly heightMicrometres: number
    readonly neededMicrometres: number
    readonly remedies: readonly string[]
  }
  'row-dropped': { readonly text: string; readonly row: number; readonly remedies: readonly string[] }
  'row-shared': { readonly text: string; readonly remedies: readonly string[] }
  'row-gap': { readonly text: string; readonly pitches: number; readonly remedies: readonly string[] }
  'corner-bald': { readonly text: string; readonly corners: number; readonly remedies: readonly string[] }
  'corner-blunt': { readonly text: string; readonly corners: number; readonly remedies: readonly string[] }
}

export type LayoutProblem = ProblemOf<LayoutProblems>
