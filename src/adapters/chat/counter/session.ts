import { createHmac, timingSafeEqual } from 'node:crypto'
import * as z from 'zod'
import { languageCodes } from '../../../domain/units/language.ts'

const sessionSchema = z.strictObject({ member: z.string().min(1), language: z.enum(languageCodes), issued: z.number().int() })
export type Session = Readonly<z.infer<typeof sessionSchema>>

export type Sessions = {
  readonly seal: (session: Omit<Session, 'issued'>) => string
  /** null: not ours, altered or too old. */
  readonly open: (sealed: string) => Session | null
  readonly seconds: number
}

const day = 24 * 3_600_000
const lasts = 14 * day
const leastKeyBytes = 32

const parse = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

/** Sessions signed with the shop's key (HMAC-SHA256); they last 14 days and are renewed by use. */
export const makeSessions = (key: Uint8Array, now: () => number): Sessions => {
  if (key.byteLength < leastKeyBytes) throw new Error(`the session key has ${key.byteLength} bytes; it needs ${leastKeyBytes}`)
  const sign = (body: string): Buffer => createHmac('sha256', key).update(body).digest()
  return {
    seconds: lasts / 1000,
    seal: (session) => {
      const body = Buffer.from(JSON.stringify({ ...session, issued: now() })).toString('base64url')
      return `${body}.${sign(body).toString('base64url')}`
    },
    open: (sealed) => {
      const [body = '', signature = ''] = sealed.split('.')
      const given = Buffer.from(signature, 'base64url')
      const wanted = sign(body)
      if (given.byteLength !== wanted.byteLength || !timingSafeEqual(given, wanted)) return null
      const read = sessionSchema.safeParse(parse(Buffer.from(body, 'base64url').toString('utf8')))
      if (!read.success || now() - read.data.issued > lasts || read.data.issued > now() + day) return null
      return read.data
    },
  }
}
