import * as z from 'zod'
import type { Attachment, Incoming } from '../../../ports/chat.ts'
import type { StoredFile } from '../../../ports/counter-desk.ts'
import type { SentFile, SentForm } from './form.ts'
import type { Trouble } from './trouble.ts'

export type Deed = 'say' | 'press' | 'choose' | 'fill'
export const deeds: readonly Deed[] = ['say', 'press', 'choose', 'fill']

/** Keeps a sent file and names it; null where files are not taken. */
export type Keep = ((file: StoredFile) => Promise<{ readonly id: string }>) | null
type Read = { readonly ok: true; readonly incoming: Incoming } | { readonly ok: false; readonly trouble: Trouble }

const mostText = 20_000
const delivery = z.string().regex(/^[\w-]{8,64}$/)
const word = z.string().min(1).max(200)
const pressSchema = z.strictObject({ id: delivery, action: word })
const chooseSchema = z.strictObject({ id: delivery, choice: word, value: word })
const fillSchema = z.object({ id: delivery, form: word })
const prefix = 'field.'

const broken: Read = { ok: false, trouble: { code: 'broken-form' } }
const read = (incoming: Incoming): Read => ({ ok: true, incoming })

const keepAll = async (files: readonly SentFile[], keep: Keep): Promise<readonly (Attachment & { readonly field: string })[]> => {
  const kept: (Attachment & { readonly field: string })[] = []
  if (keep === null) return kept
  for (const { field, name, mime, bytes } of files) {
    const { id } = await keep({ name, mime, bytes })
    kept.push({ field, file: id, name, mime, bytes: bytes.byteLength })
  }
  return kept
}

const tooLong = (text: string): boolean => text.length > mostText

/** A browser sends line ends as CR LF; the desk sees LF. */
const plainLines = (text: string): string => text.replaceAll(/\r\n?/g, '\n')

const readSaid = async (form: SentForm, keep: Keep): Promise<Read> => {
  const id = delivery.safeParse(form.fields.get('id'))
  if (!id.success) return broken
  const text = plainLines(form.fields.get('text') ?? '').trim()
  if (tooLong(text)) return { ok: false, trouble: { code: 'too-long', most: '20,000' } }
  if (text === '' && form.files.length === 0) return { ok: false, trouble: { code: 'empty' } }
  const files = (await keepAll(form.files, keep)).map(({ field: _field, ...file }) => file)
  return read({ kind: 'said', id: id.data, text, files })
}

const readFilled = async (form: SentForm, keep: Keep): Promise<Read> => {
  const filled = fillSchema.safeParse(Object.fromEntries(form.fields))
  if (!filled.success) return broken
  const said = [...form.fields]
    .filter(([name]) => name.startsWith(prefix))
    .map(([name, value]) => [name, plainLines(value)] as const)
  if (said.some(([, value]) => tooLong(value))) return { ok: false, trouble: { code: 'too-long', most: '20,000' } }
  const files = (await keepAll(form.files, keep)).map(({ field, file }) => [field, file] as const)
  const values = Object.fromEntries([...said, ...files].map(([name, value]) => [name.slice(prefix.length), value]))
  return read({ kind: 'filled', id: filled.data.id, form: filled.data.form, values })
}

/** What a sent form says, in the words of the chat port. */
export const readIncoming = async (deed: Deed, form: SentForm, keep: Keep): Promise<Read> => {
  const fields = Object.fromEntries(form.fields)
  switch (deed) {
    case 'say':
      return readSaid(form, keep)
    case 'press': {
      const pressed = pressSchema.safeParse(fields)
      return pressed.success ? read({ kind: 'pressed', ...pressed.data }) : broken
    }
    case 'choose': {
      const chose = chooseSchema.safeParse(fields)
      return chose.success ? read({ kind: 'chose', ...chose.data }) : broken
    }
    case 'fill':
      return readFilled(form, keep)
    default:
      return deed satisfies never
  }
}
