import type { ProblemOf } from '../result/result.ts'
import type { Way } from './way.ts'

/** Every problem says where its limit comes from and what could be done instead; an empty list means there is no way out. */
type Why = { readonly source: string; readonly ways: readonly Way[] }
type Where = { readonly garment: string; readonly places: readonly string[] }

/** What the planning of a press sequence can find. Temperatures in tenths of °C, times in seconds. */
export type PressProblems = {
  /** A fibre that no transfer temperature leaves whole. */
  'fibre-melts': Why & {
    readonly garment: string
    readonly fibre: string
    readonly percent: number
    readonly fromTenthsC: number
  }
  /** The layers' windows and the cloth's limits, less the swing, have no temperature in common. */
  'no-common-heat': Why &
    Where & {
      readonly leastTenthsC: number
      readonly leastBy: string
      readonly mostTenthsC: number
      readonly mostBy: string
      readonly swingTenthsC: number
    }
  /** What is asked for least is longer than what is permitted in all. */
  'no-common-time': Why &
    Where & { readonly leastSeconds: number; readonly leastBy: string; readonly mostSeconds: number; readonly mostBy: string }
  /** A finished layer would meet the press again more often, or for longer, than its record allows. */
  're-press-not-allowed': Why &
    Where & {
      readonly layer: string
      readonly material: string
      readonly times: number
      readonly allowedTimes: number
      readonly seconds: number
      readonly allowedSeconds: number
    }
  /** No step of the thermostat lies inside the window. */
  'no-setting': Why & Where & { readonly machine: string; readonly leastTenthsC: number; readonly mostTenthsC: number }
  'platen-too-small': Why & Where & { readonly widthMicrometres: number; readonly heightMicrometres: number }
  'auxiliary-missing': Why & Where & { readonly kind: string }
  /** A vinyl that lies on stones is never reached by the platen. */
  'vinyl-over-stones': Why & Where & { readonly layer: string }
  'asked-over-cap': Why & Where & { readonly askedTenthsC: number; readonly capTenthsC: number; readonly capBy: string }
  'asked-over-margin': Why &
    Where & { readonly askedTenthsC: number; readonly capTenthsC: number; readonly capBy: string; readonly swingTenthsC: number }
  /** What was asked for lies below what a layer needs. */
  'asked-too-cool': Why &
    Where & {
      readonly askedTenthsC: number
      readonly setTenthsC: number
      readonly leastTenthsC: number
      readonly leastBy: string
    }
  /** A record's usual point lies within the press's swing of a hard cap, so the setting stays below it. */
  'usual-over-margin': Why &
    Where & {
      readonly material: string
      readonly usualTenthsC: number
      readonly setTenthsC: number
      readonly capTenthsC: number
      readonly capBy: string
      readonly swingTenthsC: number
    }
  /** A limit known from memory only is passed: test first. */
  'fibre-may-suffer': Why &
    Where & { readonly fibre: string; readonly percent: number; readonly fromTenthsC: number; readonly setTenthsC: number }
  /** The cold side of the swing falls below what a layer asks for least. */
  'thin-low-margin': Why &
    Where & {
      readonly setTenthsC: number
      readonly leastTenthsC: number
      readonly leastBy: string
      readonly swingTenthsC: number
    }
  /** Layers are finished in more than one full press. */
  'separate-presses': Why & Where & { readonly presses: number }
  'pressure-differs': Why & Where & { readonly words: readonly string[]; readonly taken: string }
  'obstacle-near': Why & Where & { readonly obstacles: readonly string[]; readonly clearMicrometres: number }
  'zip-two-halves': Why & Where
  'inside-press-left-out': Why & Where & { readonly reason: string }
}
export type PressProblem = ProblemOf<PressProblems>
