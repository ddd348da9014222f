export type FileKind = { readonly mime: string; readonly most: number }

const megabyte = 1024 * 1024
const listMost = megabyte
const pictureMost = 8 * megabyte
export const mostOfAnyKind = pictureMost

const latin = (bytes: Uint8Array, from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to))

type Sign = { readonly mime: string; readonly most: number; readonly fits: (head: string) => boolean }
const starts =
  (...beginnings: readonly string[]) =>
  (head: string): boolean =>
    beginnings.some((beginning) => head.startsWith(beginning))
const brand =
  (...brands: readonly string[]) =>
  (head: string): boolean =>
    head.slice(4, 8) === 'ftyp' && brands.includes(head.slice(8, 12))

/** First bytes of the kinds we take (from memory of the formats' own documents). */
const signs: readonly Sign[] = [
  { mime: 'image/png', most: pictureMost, fits: starts('\x89PNG\r\n\x1a\n') },
  { mime: 'image/jpeg', most: pictureMost, fits: starts('\xff\xd8\xff') },
  { mime: 'image/gif', most: pictureMost, fits: starts('GIF87a', 'GIF89a') },
  { mime: 'image/webp', most: pictureMost, fits: (head) => head.startsWith('RIFF') && head.slice(8, 12) === 'WEBP' },
  { mime: 'image/heic', most: pictureMost, fits: brand('heic', 'heix', 'mif1') },
  { mime: 'application/pdf', most: pictureMost, fits: starts('%PDF-') },
  { mime: 'audio/mp4', most: pictureMost, fits: brand('M4A ') },
  { mime: 'audio/ogg', most: pictureMost, fits: starts('OggS') },
  { mime: 'audio/mpeg', most: pictureMost, fits: starts('ID3', '\xff\xfb', '\xff\xf3') },
]

const xlsx = { mime: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet', most: listMost }
const isSheet = (head: string): boolean =>
  head.startsWith('PK\x03\x04') && ['[Content_Types].xml', '_rels/', 'xl/', 'docProps/'].some((entry) => head.includes(entry))

const isWide = (head: string): boolean => head.startsWith('\xff\xfe') || head.startsWith('\xfe\xff')
/** Text has no control signs but tab, line ends and form feed; any encoding of bytes above 127 is taken. */
const isControl = (byte: number): boolean => byte < 32 && byte !== 9 && byte !== 10 && byte !== 12 && byte !== 13

const textKind = (name: string): FileKind => ({
  mime: name.toLowerCase().endsWith('.csv') ? 'text/csv' : 'text/plain',
  most: listMost,
})

/** The kind a file's content shows, or null for a kind we do not take; the name only tells CSV from other text. */
export const kindOf = (bytes: Uint8Array, name: string): FileKind | null => {
  const head = latin(bytes, 0, 4096)
  const found = signs.find((sign) => sign.fits(head))
  if (found !== undefined) return { mime: found.mime, most: found.most }
  if (isSheet(head)) return xlsx
  if (isWide(head)) return textKind(name)
  return bytes.some(isControl) || bytes.includes(127) ? null : textKind(name)
}
