/** How many letters must be changed, put in or left out to make one word of another; more than two are not counted further. */
const apart = (a: string, b: string): number => {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index)
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1]
    for (let j = 0; j < b.length; j += 1)
      next.push(Math.min((row[j] ?? 0) + (letter === b[j] ? 0 : 1), (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1))
    row = next
  }
  return row[b.length] ?? 0
}

/** Two different words of one name: a letter or, in long words, two are other, or the shorter one begins the longer. */
export const isNear = (a: string, b: string): boolean => {
  const [short, long] = a.length < b.length ? [a, b] : [b, a]
  if (a === b || short.length < 3 || long.length > 40) return false
  if (long.startsWith(short) && short.length >= 4) return true
  const most = short.length >= 6 ? 2 : 1
  return long.length - short.length <= most && short.length > 3 && apart(a, b) <= most
}
