/** The answer, or an error that says what took longer than so many milliseconds; without it a test that hangs does not say where. */
export const within = async <T>(what: string, milliseconds: number, work: () => Promise<T>): Promise<T> => {
  let late: NodeJS.Timeout | undefined
  const over = new Promise<never>((_, reject) => {
    late = setTimeout(() => reject(new Error(`${what} took more than ${milliseconds} ms`)), milliseconds)
  })
  try {
    return await Promise.race([work(), over])
  } finally {
    clearTimeout(late)
  }
}
