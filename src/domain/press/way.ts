/**
 * A way out of a problem: what could be done instead. `subject` names the material, press, garment or number it is about;
 * `inStock` is what lies on the shelf of it (µm of roll or pieces), null where the shelf does not matter. An empty list of
 * ways says that there is none.
 */
export type Way = { readonly way: WayCode; readonly subject: string | null; readonly inStock: number | null }

export const wayCodes = [
  'another-class',
  'another-press',
  'another-garment',
  'another-place',
  'another-stone',
  'separate-places',
  'no-stones',
  'bleed-test',
  'blocker',
  'low-temperature-vinyl',
  'stretch-vinyl',
  'coated-cloth-vinyl',
  'test-press',
  'water-drops',
  'read-label',
  'lead-free-stones',
  'certificate',
  'ask-age',
  'ask-league',
  'ask-owner',
  'remove-strings',
  'two-halves',
  'pad-inside',
  'swap-layers',
  'knock-out-below',
  'outline-instead',
  'other-number',
  'other-colour',
  'other-face',
  'larger',
  'smaller',
  'usual-setting',
  'customer-signs',
] as const
export type WayCode = (typeof wayCodes)[number]

export const way = (code: WayCode, subject: string | null = null, inStock: number | null = null): Way => ({
  way: code,
  subject,
  inStock,
})
