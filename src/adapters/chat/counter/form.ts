import { once } from 'node:events'
import { pipeline } from 'node:stream/promises'
import { Busboy, type BusboyFileStream, type BusboyInstance } from '@fastify/busboy'
import { kindOf, mostOfAnyKind } from './file-kind.ts'
import { safeName } from './file-name.ts'
import type { Trouble } from './trouble.ts'

export type SentFile = {
  readonly field: string
  readonly name: string
  readonly mime: string
  readonly bytes: Uint8Array
}
export type SentForm = { readonly fields: ReadonlyMap<string, string>; readonly files: readonly SentFile[] }
type Reading = { readonly ok: true; readonly form: SentForm } | { readonly ok: false; readonly trouble: Trouble }

const megabyte = 1024 * 1024
const mostFiles = 3
const mostFields = 60
const mostFieldBytes = 256 * 1024
/** Bytes of a body that is read whole. */
const mostWhole = 64 * 1024
const mostBody = mostFiles * mostOfAnyKind + megabyte

class BodyTooLarge extends Error {}

const inMegabytes = (bytes: number): string => `${Math.floor(bytes / megabyte)} MB`
const failed = (trouble: Trouble): Reading => ({ ok: false, trouble })

type Part = { readonly field: string; readonly name: string; readonly chunks: Buffer[]; readonly stream: BusboyFileStream }

const count = (most: number) =>
  async function* (source: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
    let bytes = 0
    for await (const chunk of source) {
      bytes += chunk.byteLength
      if (bytes > most) throw new BodyTooLarge()
      yield chunk
    }
  }

const checkFile = (part: Part): SentFile | Trouble => {
  const bytes = new Uint8Array(Buffer.concat(part.chunks))
  const kind = kindOf(bytes, part.name)
  if (part.stream.truncated) return { code: 'file-too-large', name: part.name, most: inMegabytes(kind?.most ?? mostOfAnyKind) }
  if (kind === null) return { code: 'file-kind', name: part.name }
  if (bytes.byteLength > kind.most) return { code: 'file-too-large', name: part.name, most: inMegabytes(kind.most) }
  return { field: part.field, name: part.name, mime: kind.mime, bytes }
}

const isTrouble = (checked: SentFile | Trouble): checked is Trouble => 'code' in checked

/** How much of a body is at hand: all of it, or as it comes. */
type Body = Uint8Array | ReadableStream<Uint8Array>

/** A small body goes in whole: most are a few words, and streams cost more than what they bring. */
const feed = async (parser: BusboyInstance, body: Body): Promise<void> => {
  if (body instanceof Uint8Array) {
    const read = once(parser, 'finish')
    parser.end(body)
    await read
  } else await pipeline(body, count(mostBody), parser)
}

const collectForm = async (body: Body, contentType: string): Promise<Reading> => {
  const fields = new Map<string, string>()
  const parts: Part[] = []
  const over: Trouble[] = []
  const parser = new Busboy({
    headers: { 'content-type': contentType },
    limits: { fieldSize: mostFieldBytes, fields: mostFields, files: mostFiles, fileSize: mostOfAnyKind },
  })
  parser.on('field', (name, value) => {
    if (Buffer.byteLength(value) >= mostFieldBytes) over.push({ code: 'too-long', most: String(mostFieldBytes) })
    fields.set(name, value)
  })
  parser.on('file', (field, stream, name) => {
    const chunks: Buffer[] = []
    stream.on('data', (chunk: Buffer) => chunks.push(chunk))
    stream.on('error', () => stream.resume())
    parts.push({ field, name: safeName(name ?? ''), chunks, stream })
  })
  parser.on('filesLimit', () => over.push({ code: 'too-many-files', most: String(mostFiles) }))
  parser.on('fieldsLimit', () => over.push({ code: 'broken-form' }))
  await feed(parser, body)
  // A file box left empty still sends a part without name and bytes.
  const checked = parts.filter((part) => part.chunks.length > 0).map(checkFile)
  const trouble = [...over, ...checked.filter(isTrouble)][0]
  if (trouble !== undefined) return failed(trouble)
  return { ok: true, form: { fields, files: checked.filter((file): file is SentFile => !isTrouble(file)) } }
}

/** Nobody sends more than they announced: the server cuts them off. */
const bodyOf = async (request: Request, announced: number): Promise<Body | null> =>
  announced > 0 && announced <= mostWhole ? new Uint8Array(await request.arrayBuffer()) : request.body

/** Reads a form, never holding more than its caps: 3 files of 8 MB (lists 1 MB), fields of 256 kB; what is not small as it streams in. */
export const readForm = async (request: Request): Promise<Reading> => {
  const contentType = request.headers.get('content-type') ?? ''
  const known = /^(multipart\/form-data|application\/x-www-form-urlencoded)\b/i.test(contentType)
  const announced = Number(request.headers.get('content-length') ?? 0)
  if (!known) return failed({ code: 'broken-form' })
  if (announced > mostBody) return failed({ code: 'upload-too-large', most: inMegabytes(mostBody) })
  try {
    const body = await bodyOf(request, announced)
    return body === null ? failed({ code: 'broken-form' }) : await collectForm(body, contentType)
  } catch (error) {
    if (error instanceof BodyTooLarge) return failed({ code: 'upload-too-large', most: inMegabytes(mostBody) })
    return failed({ code: 'broken-form' })
  }
}
