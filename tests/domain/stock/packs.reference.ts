/** Every combination of packs up to one pack above the need; the least left over, then the fewest packs. */
export const packsByTrying = (needed: number, sizes: readonly number[]): { readonly total: number; readonly count: number } => {
  let best = { total: Number.POSITIVE_INFINITY, count: Number.POSITIVE_INFINITY }
  const tryFrom = (index: number, total: number, count: number): void => {
    if (total >= needed) {
      if (total < best.total || (total === best.total && count < best.count)) best = { total, count }
      return
    }
    for (let next = index; next < sizes.length; next += 1) tryFrom(next, total + (sizes[next] ?? 1), count + 1)
  }
  tryFrom(0, 0, 0)
  return best
}
