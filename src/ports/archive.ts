/** One file of an archive by its path inside. */
export type ArchiveEntry = { readonly name: string; readonly bytes: Uint8Array }

/** Packs files into one archive; the same files give the same bytes. */
export type Pack = (entries: readonly ArchiveEntry[]) => Uint8Array
