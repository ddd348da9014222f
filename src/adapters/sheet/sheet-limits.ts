/** What is read of a sheet that a customer sends. */
export const sheetLimits = {
  bytes: 1_000_000,
  unpackedBytes: 20_000_000,
  lines: 500,
  cells: 30,
  characters: 200,
  seconds: 10,
  megabytes: 128,
} as const

export type SheetTask = { readonly kind: 'csv' | 'xlsx'; readonly bytes: Uint8Array }
