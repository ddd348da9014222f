const most = 100
const fallback = 'file'
const unsafe = /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029<>:"/\\|?*%;]/gu
const reserved = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i

const shorten = (name: string): string => {
  if (name.length <= most) return name
  const ending = /\.[\p{L}\p{N}]{1,8}$/u.exec(name)?.[0] ?? ''
  return [...name].slice(0, most - ending.length).join('') + ending
}

/** A file name without folders, control or direction signs, or anything a disk or a header could trip over. */
export const safeName = (name: string): string => {
  const last = name.normalize('NFC').split(/[/\\]/).at(-1) ?? ''
  const plain = last
    .replace(unsafe, '_')
    .replace(/^[.\s]+|[.\s]+$/g, '')
    .trim()
  if (plain === '') return fallback
  return shorten(reserved.test(plain) ? `_${plain}` : plain)
}

/** Content-Disposition of an attachment (RFC 6266, RFC 8187). */
export const asAttachment = (name: string): string => {
  const safe = safeName(name)
  const ascii = safe.replace(/[^\x20-\x7e]/g, '_')
  const encoded = encodeURIComponent(safe).replace(/['()*!]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`)
  return `attachment; filename="${ascii}"; filename*=UTF-8''${encoded}`
}
