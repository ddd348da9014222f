type Said = { readonly name: string; readonly description: string }
type About = (about: string) => string

/** Words that only the chat platform needs; everything about the trade comes finished in a message. */
export type PlatformWords = {
  readonly aMessage: string
  /** Stands after what nobody has said yet. */
  readonly assumed: string
  /** Names of files. */
  readonly tooLarge: About
  readonly trouble: {
    readonly [code in
      | 'channel-not-chosen'
      | 'channel-gone'
      | 'no-access'
      | 'direct-closed'
      | 'message-gone'
      | 'refused-by-platform']: About
  }
  readonly refused: string
  readonly gone: string
  readonly later: string
  readonly done: string
  readonly notSetUp: string
  readonly onlyInServer: string
  readonly whichShop: string
  readonly shop: string
  readonly noShop: string
  readonly writeHere: About
  readonly wentThere: string
  readonly goThere: string
  readonly noRoom: string
  readonly noTalk: string
  readonly threadName: About
  readonly fileNotTaken: {
    readonly 'too-large': (name: string, most: string) => string
    readonly 'not-trusted': About
    readonly failed: About
  }
  readonly commands: { readonly [word in 'order' | 'status' | 'tickets' | 'morning' | 'load' | 'setup']: Said }
  readonly options: { readonly [name in 'text' | 'file' | 'station' | 'day']: Said }
  readonly setUp: {
    readonly [name in
      | 'title'
      | 'intro'
      | 'may'
      | 'bench'
      | 'owner'
      | 'orders'
      | 'staffRoles'
      | 'ownerRoles'
      | 'talks'
      | 'direct'
      | 'thread'
      | 'language'
      | 'complete'
      | 'start'
      | 'welcome'
      | 'finish'
      | 'tried']: string
  } & {
    readonly languages: { readonly en: string; readonly es: string }
    readonly missing: About
    readonly hello: About
    readonly notTried: About
  }
}
