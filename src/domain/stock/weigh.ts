const gross = 144

/** Pieces that weigh so many milligrams, by the weight of one gross of their own lot; whole pieces, the nearest. */
export const piecesOfWeight = (milligrams: number, grossMilligrams: number): number =>
  grossMilligrams <= 0 ? 0 : Math.round((milligrams * gross) / grossMilligrams)
