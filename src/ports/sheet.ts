/** The cells of a table that a customer sent, or why it was not read. */
export type SheetRead =
  | { readonly table: readonly (readonly string[])[] }
  | { readonly unread: 'too-large' | 'broken' | 'not-a-table' }

/** Reads a file under limits on size, memory and time; never throws. */
export type ReadSheet = (file: { readonly name: string; readonly bytes: Uint8Array }) => Promise<SheetRead>
