/** Settles when the process is asked to stop: Ctrl-C, a terminate signal, or the parent going away, now or before. */
export const whenStopped = (): Promise<string> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => resolve(signal))
    process.on('disconnect', () => resolve('disconnect'))
    // A parent that was killed while this program was still being loaded said so to nobody.
    if (process.connected === false) resolve('disconnect')
  })
