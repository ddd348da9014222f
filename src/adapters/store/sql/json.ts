const storable = (text: string): string => text.replaceAll('\0', '\ufffd').replace(/\p{Surrogate}/gu, '\ufffd')

/** JSON text that PostgreSQL's jsonb takes: it refuses NUL and half surrogate pairs, which people can type. */
export const json = (value: unknown): string =>
  JSON.stringify(value ?? null, (_, part: unknown) => (typeof part === 'string' ? storable(part) : part))

/** The same for a plain text column. */
export const text = (value: string): string => storable(value)
