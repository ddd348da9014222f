/** Mean of five drops: sunk within 5 s adequate, still beaded at 60 s repellent (AATCC TM79, quoted). */
const sunkSeconds = 5
const beadedSeconds = 60

export type DropsVerdict = 'sunk' | 'doubtful' | 'beaded'

/** What the mean time in which the drops sank says of the cloth; 60 stands for a drop that never sank. */
export const dropsVerdict = (meanSeconds: number): DropsVerdict => {
  if (meanSeconds <= sunkSeconds) return 'sunk'
  return meanSeconds < beadedSeconds ? 'doubtful' : 'beaded'
}

export const meanOf = (seconds: readonly number[]): number =>
  seconds.reduce((sum, one) => sum + one, 0) / Math.max(1, seconds.length)
