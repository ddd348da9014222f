import type { Language } from '../domain/units/language.ts'
import type { Action, Channel, Incoming, Message } from './chat.ts'
import type { PressView, ShelfView, TicketAtPress } from './floor-view.ts'

/**
 * One line of a channel as it is shown: who spoke, when (epoch ms), what; `edited` counts edits in place. `seq` is its place
 * for good; `change` is the channel's own running number of its last change, raised by posting and by every edit.
 */
export type Line = {
  readonly id: string
  readonly seq: number
  readonly change: number
  readonly by: { readonly kind: 'customer' | 'bot' | 'staff' | 'owner'; readonly name: string }
  readonly at: number
  readonly edited: number
  readonly message: Message
  /** Its choice was made already, or the talk went on to another question: nobody is asked by it any more. */
  readonly isAnswered?: boolean
}

export type Role = 'owner' | 'staff'
export type Member = { readonly id: string; readonly name: string; readonly role: Role }

/** What somebody is told who pressed a button or filled in a form, and whether what they wanted was done. */
export type Told = { readonly said: string | null; readonly isDone: boolean }

/** A line of the owner's morning sheet; every line ends in a thing to do. */
export type MorningLine = {
  readonly text: string
  readonly todo: string
  readonly order: string | null
  readonly ticket: string | null
}
export type MorningSection = { readonly code: string; readonly title: string; readonly lines: readonly MorningLine[] }
export type Morning = { readonly date: string; readonly sections: readonly MorningSection[] }

/** Busy or due shares in percent; null where a station is neither open nor busy. `head` begins with the name of the first column. */
export type LoadTable = {
  readonly head: readonly string[]
  readonly rows: readonly { readonly name: string; readonly percents: readonly (number | null)[] }[]
}
export type LoadRate = { readonly name: string; readonly text: string; readonly action: Action }
export type LoadFix = { readonly text: string; readonly action: Action | null }
/** The owner's load page: everything is said already; `picture` is an SVG of the same figures as the tables. */
export type LoadSheet = {
  readonly title: string
  readonly lead: string
  readonly picture: string
  /** The same for a phone: a few days a band. */
  readonly narrowPicture: string
  readonly pictureAlt: string
  readonly stations: LoadTable & { readonly title: string }
  readonly due: LoadTable & { readonly title: string }
  readonly late: {
    readonly title: string
    readonly none: string
    readonly because: string
    readonly fixesTitle: string
    readonly jobs: readonly { readonly text: string; readonly causes: readonly string[]; readonly fixes: readonly LoadFix[] }[]
  }
  readonly rates: { readonly title: string; readonly lead: string; readonly rates: readonly LoadRate[] }
  readonly changesTitle: string
  readonly changes: readonly string[]
}

export type StoredFile = { readonly name: string; readonly mime: string; readonly bytes: Uint8Array }

/** What a page asks of the desk. Every call is of one shop; a conversation is named by its own unguessable token. */
export type CounterDesk = {
  readonly shopName: string
  /** IANA name of the shop's zone, in which times are shown. */
  readonly zone: string
  readonly languages: readonly Language[]
  /** Starts a conversation; the token is the customer's only key to it, the id is for nobody but the page's own calls. */
  startConversation(language: Language): Promise<{ readonly token: string; readonly id: string }>
  /** null: no such token. */
  conversation(token: string): Promise<{ readonly id: string; readonly language: Language; readonly title: string } | null>
  /** Lines posted or edited after that `change`, by `seq`; after 0 the newest lines of the channel (at most 200). */
  lines(channel: Channel, after: number): Promise<readonly Line[]>
  /** Something the customer did whom `conversation` has let in; replies arrive as lines. `unknown`: it was forgotten meanwhile. */
  hear(conversationId: string, incoming: Incoming): Promise<'heard' | 'unknown'>
  /** Something staff or owner did in the shop's channels: a word for whoever did it, and whether it was done. */
  act(member: Member, incoming: Incoming): Promise<Told>
  morning(language: Language): Promise<Morning>
  load(language: Language): Promise<LoadSheet>
  /** Another one as soon as the load shows something else; cheaper than the load itself. */
  loadMark(): Promise<string>
  /** A ticket as it is worked at the press; null when there is no such ticket. */
  atPress(ticketId: string): Promise<PressView | null>
  /** Open tickets of the bench, the one promised first on top; after them the last ones handed over. */
  openTickets(): Promise<readonly TicketAtPress[]>
  shelf(): Promise<ShelfView>
  /** Whether an action asks for something to be filled in on its ticket's page. */
  needsForm(action: string): boolean
  /** A photo of the bench. */
  keepShopFile(file: StoredFile): Promise<{ readonly id: string }>
  /** The secret part of a calendar's address, made anew: an older one leads nowhere from then on. */
  newCalendar(member: Member): Promise<string>
  revokeCalendar(member: Member): Promise<void>
  /** null: no such address. */
  calendar(secret: string): Promise<string | null>
  /** A table as comma-separated values; null when there is no such table. */
  table(name: string): Promise<string | null>
  /** Files a channel shows; null when that channel shows no such file. */
  file(channel: Channel, id: string): Promise<StoredFile | null>
  keepFile(token: string, file: StoredFile): Promise<{ readonly id: string }>
  /** One-time owner link → member; null when it was used or is not known. */
  ownerByLink(link: string): Promise<Member | null>
  newOwnerLink(): Promise<string>
  /** Staff sign in with a name and a pairing code made by the owner; a code works once. */
  newPairingCode(name: string): Promise<{ readonly code: string }>
  staffByCode(name: string, code: string): Promise<Member | null>
  member(id: string): Promise<Member | null>
  /** Everybody who works here, by name; whoever was given a code and has not used it yet among them. */
  members(): Promise<readonly Member[]>
  /** Takes somebody of the staff off the list: codes and sessions of theirs let nobody in any more. The owner stays. */
  removeMember(id: string): Promise<void>
  /** Live news: called with the channel that changed; returns a function that stops it. */
  onNews(listener: (channel: Channel) => void): () => void
}
