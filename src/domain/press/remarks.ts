import type { InsidePress } from './inside-press.ts'
import { type SoftCap, softCaps } from './limits.ts'
import { joinedPressure, pressuresAsked, pressuresDiffer } from './pressure.ts'
import type { PressProblem } from './problems.ts'
import type { SetUp } from './set-ups.ts'
import { way } from './way.ts'
import { crossesZip, obstaclesNear } from './zones.ts'

const commonPractice = 'common practice'
const recordSource = "the maker's sheet named in the material's record"
/** Nothing is pressed within 25 mm of a zip, a seam or a snap (common practice). */
const clearMicrometres = 25_000

const where = (setUp: SetUp) => ({ garment: setUp.garment.id, places: setUp.places.map((place) => place.place) })
const pointerOf = (setUp: SetUp): string => setUp.places[0]?.at ?? setUp.garment.at

/** Usual points that lie too near a hard cap, and points that a person asked for there. */
const onMargins = (setUp: SetUp): readonly PressProblem[] =>
  setUp.heats.flatMap((heat): readonly PressProblem[] => {
    const { swingTenthsC } = setUp.machine
    const facts = {
      ...where(setUp),
      capTenthsC: heat.cap.tenthsC,
      capBy: heat.cap.by,
      swingTenthsC,
      source: heat.cap.source,
      ways: [],
    }
    if (heat.overMargin) {
      return [
        {
          code: 'asked-over-margin',
          at: pointerOf(setUp),
          severity: 'caution',
          facts: { ...facts, askedTenthsC: heat.tenthsC, ways: [way('usual-setting')] },
        },
      ]
    }
    if (heat.askedTenthsC !== null) return []
    const usuals = heat.group.members.map((layer) => ({ id: layer.material.id, usual: layer.material.window.tenthsC.usual }))
    const lowest = usuals.reduce((least, one) => (one.usual < least.usual ? one : least))
    if (lowest.usual <= heat.mostTenthsC) return []
    const point = { material: lowest.id, usualTenthsC: lowest.usual, setTenthsC: heat.tenthsC }
    return [{ code: 'usual-over-margin', at: pointerOf(setUp), severity: 'note', facts: { ...facts, ...point } }]
  })

/** A set point that was asked for and lies below what a layer needs: the least it needs is set. */
const onAskedTooCool = (setUp: SetUp): readonly PressProblem[] =>
  setUp.heats.flatMap(({ askedTenthsC, tenthsC, leastTenthsC, leastBy }): readonly PressProblem[] => {
    if (askedTenthsC === null || askedTenthsC >= leastTenthsC) return []
    const facts = { ...where(setUp), askedTenthsC, setTenthsC: tenthsC, leastTenthsC, leastBy, source: recordSource }
    const ways = [way('usual-setting'), way('another-class')]
    return [{ code: 'asked-too-cool', at: pointerOf(setUp), severity: 'caution', facts: { ...facts, ways } }]
  })

const onLowMargin = (setUp: SetUp): readonly PressProblem[] =>
  setUp.heats
    .filter((heat) => heat.tenthsC - setUp.machine.swingTenthsC < heat.leastTenthsC)
    .map((heat) => ({
      code: 'thin-low-margin',
      at: pointerOf(setUp),
      severity: 'note',
      facts: {
        ...where(setUp),
        setTenthsC: heat.tenthsC,
        leastTenthsC: heat.leastTenthsC,
        leastBy: heat.leastBy,
        swingTenthsC: setUp.machine.swingTenthsC,
        source: recordSource,
        ways: [],
      },
    }))

const suffers = (setUp: SetUp, cap: SoftCap): readonly PressProblem[] => {
  const hottest = Math.max(...setUp.heats.map((heat) => heat.tenthsC))
  if (hottest + setUp.machine.swingTenthsC <= cap.tenthsC) return []
  const { fibre, percent, source } = cap
  const facts = { ...where(setUp), fibre, percent, fromTenthsC: cap.tenthsC, setTenthsC: hottest, source }
  const ways = [way('test-press'), way('another-garment')]
  return [{ code: 'fibre-may-suffer', at: setUp.garment.at, severity: 'needs-test', facts: { ...facts, ways } }]
}

const onPresses = (setUp: SetUp): readonly PressProblem[] => {
  if (setUp.heats.length < 2) return []
  const facts = { ...where(setUp), presses: setUp.heats.length, source: "the records' tack, peel and re-press", ways: [] }
  return [{ code: 'separate-presses', at: pointerOf(setUp), severity: 'note', facts }]
}

const onPressure = (setUp: SetUp): readonly PressProblem[] =>
  setUp.heats
    .filter((heat) => pressuresDiffer(heat.group.members))
    .map((heat) => ({
      code: 'pressure-differs',
      at: pointerOf(setUp),
      severity: 'caution',
      facts: {
        ...where(setUp),
        words: pressuresAsked(heat.group.members),
        taken: joinedPressure(heat.group.members),
        source: commonPractice,
        ways: [way('separate-places'), way('test-press')],
      },
    }))

const onObstacles = (setUp: SetUp): readonly PressProblem[] =>
  setUp.places.flatMap((place): readonly PressProblem[] => {
    const obstacles = obstaclesNear(setUp.garment, place)
    const at = place.at
    const base = { garment: setUp.garment.id, places: [place.place], source: commonPractice }
    const near: readonly PressProblem[] =
      obstacles.length === 0
        ? []
        : [
            {
              code: 'obstacle-near',
              at,
              severity: 'caution',
              facts: { ...base, obstacles, clearMicrometres, ways: [way('pad-inside'), way('another-place')] },
            },
          ]
    if (!crossesZip(setUp.garment, place)) return near
    const ways = [way('two-halves'), way('another-place', 'left-chest')]
    return [...near, { code: 'zip-two-halves', at, severity: 'caution', facts: { ...base, ways } }]
  })

const onInside = (setUp: SetUp, inside: InsidePress): readonly PressProblem[] => {
  if (inside.kind !== 'left-out') return []
  const facts = { ...where(setUp), reason: inside.reason, source: commonPractice, ways: [] }
  return [{ code: 'inside-press-left-out', at: pointerOf(setUp), severity: 'note', facts }]
}

/** What is to be said about a set-up that can be pressed: margins, fibres known from memory, pressures, obstacles. */
export const remarksOn = (setUp: SetUp, inside: InsidePress): readonly PressProblem[] => [
  ...onMargins(setUp),
  ...onAskedTooCool(setUp),
  ...onLowMargin(setUp),
  ...softCaps(setUp.garment.cloth).flatMap((cap) => suffers(setUp, cap)),
  ...onPresses(setUp),
  ...onPressure(setUp),
  ...onObstacles(setUp),
  ...onInside(setUp, inside),
]
