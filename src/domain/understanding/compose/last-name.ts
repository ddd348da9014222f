import { listed } from '../words/languages.ts'

const particles: readonly string[] = [...listed.changes.particles, ...listed.told.surnameLeads]
const ending = /^(?:\p{L}\.?|jr\.?|sr\.?|i{2,3}|iv)$/iu

/**
 * A name without its given name: "Ana Ruiz" → "Ruiz", "Emmy St. James" → "St. James", "Ana Ruiz Peña" → "Ruiz Peña". What begins like a
 * surname ("Van Horn") or would leave an initial or "Jr." alone ("Smith J.") stays whole.
 */
export const lastName = (name: string): string => {
  const [first = '', ...rest] = name.split(' ')
  const alone = rest.every((word) => ending.test(word))
  return alone || particles.includes(first.toLowerCase()) ? name : rest.join(' ')
}
