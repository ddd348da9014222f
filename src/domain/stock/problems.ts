export type StockProblems = {
  /** `missing` in pieces of stones or µm of roll; `packs` is what to order, in whole gross or rolls. */
  'short-of-material': { material: string; kind: 'stones' | 'vinyl'; missing: number; packs: readonly number[]; days: number }
}
