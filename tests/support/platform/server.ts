import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import { type Answer, answerCall, type Call, fault, isOpen, type Rules } from './rest.ts'
import type { Json, Upload, World } from './world.ts'

/**
 * What can go wrong with one call: `drop` cuts the line before anything happened, `stall` never answers and nothing happened,
 * the `apply-then-…` kinds do the work first, `hook` does the work, runs the given function and then answers.
 */
export type Fault =
  | { readonly kind: 'drop' | 'stall' | 'apply-then-drop' | 'apply-then-stall' | 'apply-then-500' | 'fail-500' }
  | { readonly kind: 'too-many'; readonly retryAfter: number; readonly global?: boolean }
  | { readonly kind: 'answer'; readonly status: number; readonly code: number }
  | { readonly kind: 'hook'; readonly run: () => void | Promise<void> }
export type Planned = { readonly matches: (call: Call) => boolean; readonly fault: Fault; left: number }

const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value)

const bodyOf = async (request: IncomingMessage): Promise<Buffer> => {
  const parts: Buffer[] = []
  for await (const part of request) parts.push(Buffer.from(part))
  return Buffer.concat(parts)
}

const multipart = async (bytes: Buffer, type: string): Promise<{ json: unknown; files: Upload[] }> => {
  const form = await new Response(new Uint8Array(bytes), { headers: { 'content-type': type } }).formData()
  const files: Upload[] = []
  let json: unknown = {}
  for (const [name, value] of form.entries()) {
    if (name === 'payload_json') json = JSON.parse(typeof value === 'string' ? value : await value.text())
    if (name.startsWith('files[') && typeof value !== 'string') {
      files.push({ name: value.name, type: value.type, bytes: new Uint8Array(await value.arrayBuffer()) })
    }
  }
  return { json, files }
}

const readCall = async (request: IncomingMessage, at: number): Promise<Call> => {
  const url = new URL(request.url ?? '/', 'http://platform')
  const bytes = await bodyOf(request)
  const type = request.headers['content-type'] ?? ''
  const read = type.startsWith('multipart/')
    ? await multipart(bytes, type)
    : { json: bytes.length === 0 ? {} : (JSON.parse(bytes.toString('utf8')) as unknown), files: [] }
  return {
    method: request.method ?? 'GET',
    path: decodeURIComponent(url.pathname.replace(/^\/api\/v10/, '')),
    query: url.searchParams,
    body: isJson(read.json) ? read.json : {},
    list: Array.isArray(read.json) ? read.json.filter(isJson) : null,
    files: read.files,
    at,
  }
}

const send = (response: ServerResponse, { status, body }: Answer, headers: Record<string, string> = {}): void => {
  if (status === 204) {
    response.writeHead(204, headers).end()
    return
  }
  response.writeHead(status, { 'content-type': 'application/json', ...headers }).end(JSON.stringify(body))
}

const tooMany = (response: ServerResponse, retryAfter: number, isGlobal: boolean): void =>
  send(
    response,
    { status: 429, body: { message: 'You are being rate limited.', retry_after: retryAfter, global: isGlobal } },
    { 'retry-after': String(retryAfter), ...(isGlobal ? { 'x-ratelimit-global': 'true' } : { 'x-ratelimit-scope': 'user' }) },
  )

const playFault = async (planned: Fault, response: ServerResponse, apply: () => Answer): Promise<void> => {
  switch (planned.kind) {
    case 'drop':
      response.socket?.resetAndDestroy()
      return
    case 'stall':
      return
    case 'fail-500':
      return send(response, fault(500, 0, 'Internal Server Error'))
    case 'too-many':
      return tooMany(response, planned.retryAfter, planned.global ?? false)
    case 'answer':
      return send(response, fault(planned.status, planned.code, `refused with ${planned.code}`))
    case 'hook': {
      const answer = apply()
      await planned.run()
      return send(response, answer)
    }
    case 'apply-then-drop':
      apply()
      response.socket?.resetAndDestroy()
      return
    case 'apply-then-stall':
      apply()
      return
    case 'apply-then-500':
      apply()
      return send(response, fault(500, 0, 'Internal Server Error'))
  }
}

export type Rest = { readonly server: Server; readonly calls: Call[]; readonly faults: Planned[] }

/** The platform's REST side on the loopback; every call is kept as it came. */
export const openRest = (world: World, rules: Rules, token: string): Rest => {
  const calls: Call[] = []
  const faults: Planned[] = []
  const handle = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const call = await readCall(request, world.now())
    if (!isOpen(call.path) && request.headers.authorization !== `Bot ${token}`) {
      send(response, fault(401, 0, '401: Unauthorized'))
      return
    }
    calls.push(call)
    const apply = (): Answer => answerCall({ world, call, rules })
    const planned = faults.find((one) => one.left > 0 && one.matches(call))
    if (planned === undefined) {
      send(response, apply())
      return
    }
    planned.left -= 1
    await playFault(planned.fault, response, apply)
  }
  const server = createServer((request, response) => {
    handle(request, response).catch((error: unknown) => {
      send(response, { status: 599, body: { message: String(error) } })
    })
  })
  return { server, calls, faults }
}
