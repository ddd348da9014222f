const reasonOf = (cause: unknown): string => {
  if (!(cause instanceof Error)) return String(cause)
  return cause.cause === undefined ? cause.message : `${cause.message} (${reasonOf(cause.cause)})`
}

/** One line a trouble on standard error: when, which process, what. No personal data: messages carry ids only. */
export const reporter =
  (who: string) =>
  (cause: unknown): void => {
    const line = { at: new Date().toISOString(), who, trouble: reasonOf(cause).replaceAll(/\s+/g, ' ').slice(0, 500) }
    process.stderr.write(`${JSON.stringify(line)}\n`)
  }
