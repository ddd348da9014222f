/** The one way to listen: a listener that throws, now or later, is reported and never ends the process. */
export const listen = <Data>(
  subscribe: (listener: (data: Data) => void) => unknown,
  listening: { readonly hear: (data: Data) => Promise<void>; readonly report: (error: unknown) => void },
): void => {
  subscribe((data) => {
    Promise.resolve()
      .then(() => listening.hear(data))
      .catch(listening.report)
  })
}
