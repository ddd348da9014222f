/** Values by key, in the order in which keys first appear. */
export const groupsBy = <T>(values: readonly T[], keyOf: (value: T) => string): readonly (readonly T[])[] => {
  const groups = new Map<string, T[]>()
  for (const value of values) {
    const key = keyOf(value)
    const group = groups.get(key)
    groups.set(key, group === undefined ? [value] : [...group, value])
  }
  return [...groups.values()]
}
