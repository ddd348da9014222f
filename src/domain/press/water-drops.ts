/** Five drops: sunk within 5 s adequate, still beaded at 60 s repellent (AATCC TM79, quoted). */
const sunkSeconds = 5
const beadedSeconds = 60

export type DropsVerdict = 'sunk' | 'doubtful' | 'beaded'

/** What the time of the slowest drop says of the cloth; 60 stands for a drop that never sank. */
export const dropsVerdict = (slowestSeconds: number): DropsVerdict => {
  if (slowestSeconds <= sunkSeconds) return 'sunk'
  return slowestSeconds < beadedSeconds ? 'doubtful' : 'beaded'
}

/**
 * The slowest drop speaks for the cloth, the safe way: the quoted method takes the mean of five, in which four drops that never sank
 * hide behind one that did.
 */
export const slowestOf = (seconds: readonly number[]): number => Math.max(0, ...seconds)
