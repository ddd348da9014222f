import type { Problem } from '../domain/result/result.ts'

const factText = (value: unknown): string => (Array.isArray(value) ? value.join(', ') : String(value))

/** A problem in one line for the command line: its code in words, then its facts. */
export const problemText = ({ code, facts }: Problem): string => {
  const told = Object.entries(facts).map(([name, value]) => `${name} ${factText(value)}`)
  return `${code.replaceAll('-', ' ')}: ${told.join('; ')}`
}
