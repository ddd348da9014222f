/** What to look for at a step. */
export const lookForCodes = [
  'no-steam',
  'lies-flat',
  'sheet-on-pillow',
  'sheet-on-cloth',
  'stones-face-into-pillow',
  'other-side-away',
  'nothing-under-load',
  'pressure-with-pad-in',
  'centred-and-height',
  'ticks-meet',
  'row-clear-of-vinyl',
  'stones-right-way-up',
  'edges-down',
  'carrier-comes-clean',
  'tape-stays-put',
  'inside-free-of-glue',
  'no-heat-felt',
  'stone-that-lifts',
  'empty-holes',
  'stones-between-stones',
  'lifted-edges',
  'press-marks',
  'other-side-clean',
] as const
export type LookForCode = (typeof lookForCodes)[number]

/** Why a step is as it is. */
export const whyCodes = [
  'drives-moisture-out',
  'glue-passes-through',
  'holds-platen-up',
  'stones-finished-below',
  'garment-is-threaded',
  'places-kept-apart',
  'flat-layers-first',
  'tack-only-holds',
  'full-dwell-first',
  'joint-heat',
  'least-asking-layer',
  'below-hard-cap',
  'asked-for',
  'cover-what-has-no-carrier',
  'bond-breaks-while-warm',
  'glue-sets-when-cool',
  'record-says',
  'glue-from-inside',
  'finish-one-side',
  'bleed-shows-late',
] as const
export type WhyCode = (typeof whyCodes)[number]

/** What can hurt a person or the work at a step. */
export const cautionCodes = [
  'hot-platen',
  'hands-out-before-closing',
  'gloves-for-pillow-and-stones',
  'keep-25-mm-off',
  'zip-in-two-halves',
  'do-not-bend-stones',
  'do-not-move-tape',
  'never-leave-closed',
  'stones-never-on-bare-platen',
  'hood-and-strings-clear',
  'over-margin',
  'stones-on-floor',
  'ventilate',
] as const
export type CautionCode = (typeof cautionCodes)[number]
