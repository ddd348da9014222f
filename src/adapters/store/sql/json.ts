const storable = (text: string): string => text.replaceAll('\0', '\ufffd').replace(/\p{Surrogate}/gu, '\ufffd')

/** How `JSON.stringify` writes what is not storable; a person may have typed the very same signs, which harms nothing. */
const isSuspect = (written: string): boolean => /\\u(?:0000|d[89a-f])/.test(written)

/** JSON text that PostgreSQL takes: it refuses NUL and half surrogate pairs, which people can type. */
export const json = (value: unknown): string => {
  const written = JSON.stringify(value ?? null)
  if (!isSuspect(written)) return written
  return JSON.stringify(value, (_, part: unknown) => (typeof part === 'string' ? storable(part) : part))
}

/** The same for a plain text column. */
export const text = (value: string): string => storable(value)
