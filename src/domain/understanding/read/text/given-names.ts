import { listed } from '../../words/languages.ts'
import { isCapital, type Token } from './tokens.ts'

/** Words of orders that are given names too. */
const words = new Set(listed.rosters.given)

/** In capitals, where a player may stand, such a word is a name. */
export const isGivenName = (token: Token | undefined): boolean => token !== undefined && isCapital(token) && words.has(token.key)
