/**
 * Work of one name is done piece after piece, in the order in which it came, whatever became of the piece before; work of other names
 * does not wait for it.
 */
export const inOrder = (): ((name: string, work: () => Promise<void>) => Promise<void>) => {
  const last = new Map<string, Promise<void>>()
  return (name, work) => {
    const before = last.get(name) ?? Promise.resolve()
    const done = before.then(work, work)
    last.set(name, done)
    const forget = (): void => {
      if (last.get(name) === done) last.delete(name)
    }
    done.then(forget, forget)
    return done
  }
}
