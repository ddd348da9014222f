/**
 * The packs to order so that they hold at least `needed` (in gross), with the least left over and, among those, the fewest
 * packs; largest packs first. Whole packs only, as sellers ship them.
 */
export const packsFor = (needed: number, sizes: readonly number[]): readonly number[] => {
  const offered = [...new Set(sizes)].sort((a, b) => b - a)
  const largest = offered[0]
  if (largest === undefined || needed <= 0) return []
  // Of `largest` smaller packs some add up to a multiple of the largest, so the best answer never holds that many of them.
  const whole = Math.max(0, Math.floor(needed / largest) - largest)
  const rest = fewest(needed - whole * largest, offered)
  return [...Array.from({ length: whole }, () => largest), ...rest].sort((a, b) => b - a)
}

/** Dynamic programme over totals up to one largest pack above the need. */
const fewest = (needed: number, offered: readonly number[]): readonly number[] => {
  const most = needed + (offered[0] ?? 0)
  const best: (readonly number[] | undefined)[] = [[]]
  for (let total = 1; total <= most; total += 1) {
    for (const size of offered) {
      const before = total >= size ? best[total - size] : undefined
      const known = best[total]
      if (before !== undefined && (known === undefined || before.length + 1 < known.length)) best[total] = [...before, size]
    }
  }
  return best.slice(needed).find((packs) => packs !== undefined) ?? []
}
