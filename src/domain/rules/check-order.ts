import type { Problem } from '../result/result.ts'
import { agesUnknown, certificates, childrensWear, leadedStones, stonesUnderThree, strings } from './children.ts'
import { careLabel, fibresOnSheet, fibresRefused, fibresUnknown, finishRepels, repellence, waterDrops } from './cloth.ts'
import { failingPairs, lowContrast, ownColour } from './contrast.ts'
import type { Rule, RuleFacts } from './facts.ts'
import { collisions, freeWidth } from './fit.ts'
import { editions, numberPlaces, ornamentClauses, reflectiveBans, solidBodies, stonesInGames } from './game-wear.ts'
import {
  bleedRisk,
  layersInPiece,
  onTopOf,
  perforation,
  plausibleRecords,
  pressMarks,
  solidOnStretch,
  stretchCloth,
} from './layers.ts'
import { nameFromNumber } from './names.ts'
import { clashingNumbers, goalkeepers, legalNumbers, numbersTwice } from './numbers.ts'
import { nameHeights, numberBorders, numberColours, numberHeights, numberStrokes } from './sizes.ts'

/** Every rule by its name, in the order in which they are read out. */
const rules = {
  fibresUnknown,
  fibresOnSheet,
  fibresRefused,
  careLabel,
  finishRepels,
  waterDrops,
  repellence,
  bleedRisk,
  stretchCloth,
  solidOnStretch,
  perforation,
  pressMarks,
  onTopOf,
  layersInPiece,
  plausibleRecords,
  stonesUnderThree,
  leadedStones,
  certificates,
  agesUnknown,
  childrensWear,
  strings,
  stonesInGames,
  reflectiveBans,
  ornamentClauses,
  solidBodies,
  numberPlaces,
  legalNumbers,
  numbersTwice,
  clashingNumbers,
  goalkeepers,
  numberHeights,
  numberStrokes,
  numberBorders,
  numberColours,
  nameHeights,
  nameFromNumber,
  ownColour,
  failingPairs,
  lowContrast,
  freeWidth,
  collisions,
  editions,
} satisfies { readonly [name: string]: Rule }

const ranks = ['stop', 'needs-test', 'caution', 'note'] as const

const pressProblems = (facts: RuleFacts): readonly Problem[] =>
  facts.press.ok ? facts.press.value.problems : facts.press.problems

/** Everything the press plan and the rules have to say about an order, each once, stops first. */
export const checkOrder = (facts: RuleFacts): readonly Problem[] => {
  const found: readonly Problem[] = [...pressProblems(facts), ...Object.values(rules).flatMap((rule) => rule(facts))]
  const once = new Map(found.map((problem) => [JSON.stringify(problem), problem]))
  return [...once.values()].toSorted((a, b) => ranks.indexOf(a.severity) - ranks.indexOf(b.severity))
}
