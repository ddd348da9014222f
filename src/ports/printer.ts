import type { Ticket } from '../domain/ticket/ticket.ts'

/** A printed document: PDF bytes, how many pages, and the characters that had to be printed as code points. */
export type Printed = { readonly bytes: Uint8Array; readonly pages: number; readonly lacking: readonly string[] }

/** Prints a document as it stands: the same document gives the same bytes. */
export type Printer = { readonly print: (ticket: Ticket) => Promise<Printed> }
