/** What can go wrong at the counter; each sentence says what happened and what to do. */
export type TroubleCode =
  | 'wrong-address'
  | 'forged'
  | 'not-found'
  | 'no-conversation'
  | 'too-many'
  | 'too-many-open'
  | 'empty'
  | 'too-long'
  | 'broken-form'
  | 'upload-too-large'
  | 'file-too-large'
  | 'file-kind'
  | 'too-many-files'
  | 'sign-in-failed'
  | 'link-used'
  | 'owner-only'
  | 'signed-out'
  | 'broken'

export type TroubleFacts = { readonly name: string; readonly most: string }

/** Every word of the page that is not part of a message. */
export type PageWords = {
  readonly language: string
  readonly skip: string
  readonly pages: {
    readonly bench: string
    readonly press: string
    readonly shelf: string
    readonly morning: string
    readonly load: string
    readonly people: string
  }
  readonly signOut: string
  readonly speak: string
  readonly start: {
    readonly title: string
    readonly lead: string
    readonly label: string
    readonly hint: string
    readonly open: string
    readonly staff: string
  }
  readonly you: string
  readonly customer: string
  readonly slips: string
  readonly noSlips: string
  readonly edited: string
  readonly assumed: string
  readonly caution: string
  readonly stop: string
  readonly sure: (label: string) => string
  readonly choose: string
  readonly wideTable: string
  readonly openPicture: string
  readonly progress: (done: number, of: number) => string
  readonly write: { readonly title: string; readonly label: string; readonly send: string }
  readonly roster: {
    readonly open: string
    readonly label: string
    readonly hint: string
    readonly files: string
    readonly filesHint: string
    readonly send: string
  }
  readonly keep: string
  readonly bench: { readonly title: string; readonly lead: string; readonly label: string }
  readonly press: {
    readonly title: string
    readonly lead: string
    readonly none: string
    readonly atPress: string
    readonly done: string
    readonly back: string
    readonly take: string
    readonly chosen: string
    readonly timer: (seconds: number) => string
    readonly timerNote: string
    readonly timerOver: string
    readonly gates: string
    readonly passed: (gates: number) => string
    readonly forms: string
    readonly now: string
    readonly coming: string
    readonly over: string
    readonly bags: string
    readonly heldBy: (name: string) => string
    readonly waits: (gates: string) => string
    readonly groups: { readonly [group in 'mine' | 'free' | 'held' | 'checked' | 'bagged' | 'collected']: string }
    readonly states: { readonly [state in 'waiting' | 'taken' | 'started' | 'done' | 'spoiled']: string }
  }
  readonly shelf: {
    readonly title: string
    readonly lead: string
    readonly nothing: string
    readonly forms: string
    readonly tables: string
  }
  readonly calendar: {
    readonly title: string
    readonly lead: string
    readonly make: string
    readonly made: string
    readonly revoke: string
  }
  readonly morning: {
    readonly title: string
    readonly nothing: string
    readonly todo: string
    readonly more: (lines: number) => string
    readonly order: string
    readonly ticket: string
    readonly notes: string
    readonly label: string
  }
  readonly people: {
    readonly title: string
    readonly lead: string
    readonly name: string
    readonly make: string
    readonly made: (name: string) => string
    readonly tell: string
    readonly linkTitle: string
    readonly linkLead: string
    readonly linkMake: string
    readonly linkMade: string
    readonly here: string
    readonly owner: string
    readonly removeLead: string
    readonly remove: string
  }
  readonly signIn: {
    readonly title: string
    readonly lead: string
    readonly name: string
    readonly code: string
    readonly enter: string
  }
  readonly owner: { readonly title: string; readonly lead: string; readonly enter: string }
  readonly troubleTitle: string
  readonly back: string
  readonly live: { readonly on: string; readonly lost: string; readonly unsent: string }
  readonly trouble: { readonly [Code in TroubleCode]: (facts: TroubleFacts) => string }
}
