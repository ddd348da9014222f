/** Limits of the law that the program asks certificates for; it never says that something complies. */
export const lawLimits = {
  /** Age 12 or under, accessible parts: 15 U.S.C. 1278a (read). */
  leadPpmMost: 100,
  /** Parts of children's wear that can be mouthed, in the EU: REACH XVII entry 63 (quoted); crystal glass is exempt. */
  leadInMouthablePpmMost: 500,
  /** Parts that stay on the skin, in the EU, in ng/cm² a week: REACH XVII entry 27 (quoted). */
  nickelNanogramsMost: 500,
  /** Small-parts cylinder, inner width: 16 CFR 1501.4 (from memory). */
  smallPartsMicrometres: 31_700,
} as const
