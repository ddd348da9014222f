import { spoken } from '../../words/languages.ts'
import { fold } from './tokens.ts'

const said = spoken.rosters

const fields = {
  name: new RegExp(`^${said.labelName}$`),
  number: new RegExp(`^${said.labelNumber}$`),
  size: new RegExp(`^${said.labelSize}$`),
} as const

const labelled = /^\s*([^:=\n]{1,20}?)\s*[:=]\s*(\S[^\n]{0,60})$/u

const fieldOf = (line: string): { readonly field: keyof typeof fields; readonly value: string } | null => {
  const found = labelled.exec(line)
  const label = fold(found?.[1] ?? '').trim()
  const field = (['name', 'number', 'size'] as const).find((one) => fields[one].test(label))
  return field === undefined || found?.[2] === undefined ? null : { field, value: found[2].trim() }
}

/** "Name: Zoë Quist", "Number: 5", "Size: YM" on lines of their own are one line of the list; the lines' count stays. */
export const joinLabelled = (text: string): string => {
  const lines = text.split('\n')
  const out = [...lines]
  let from = 0
  while (from < lines.length) {
    const found: Partial<Record<keyof typeof fields, string>> = {}
    let to = from
    for (let one = fieldOf(lines[to] ?? ''); one !== null && found[one.field] === undefined; one = fieldOf(lines[to] ?? '')) {
      found[one.field] = one.value
      to += 1
    }
    if (found.name !== undefined && found.number !== undefined) {
      out[from] = [found.number, found.name, found.size].filter((part) => part !== undefined).join(', ')
      for (let index = from + 1; index < to; index += 1) out[index] = ''
    }
    from = Math.max(to, from + 1)
  }
  return out.join('\n')
}
