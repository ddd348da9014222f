import { type IncomingHttpHeaders, request } from 'node:http'

export type Asked = {
  readonly status: number
  readonly headers: IncomingHttpHeaders
  readonly text: string
  readonly bytes: Buffer
}
export type Ask = {
  readonly method?: string
  readonly headers?: { readonly [name: string]: string }
  readonly body?: Uint8Array | string
  /** Who asks, as the other side sees it: any of this machine's own addresses. */
  readonly from?: string
}

/** One request as it is written, with any Host and Origin; redirects are not followed. */
export const ask = (address: string, path: string, how: Ask = {}): Promise<Asked> =>
  new Promise((resolve, reject) => {
    const { hostname, port } = new URL(address)
    const sent = request(
      {
        hostname,
        port,
        path,
        method: how.method ?? 'GET',
        headers: how.headers ?? {},
        agent: false,
        ...(how.from === undefined ? {} : { localAddress: how.from }),
      },
      (answer) => {
        const chunks: Buffer[] = []
        answer.on('data', (chunk: Buffer) => chunks.push(chunk))
        answer.on('error', reject)
        answer.on('end', () => {
          const bytes = Buffer.concat(chunks)
          resolve({ status: answer.statusCode ?? 0, headers: answer.headers, text: bytes.toString('utf8'), bytes })
        })
      },
    )
    sent.on('error', reject)
    sent.end(how.body)
  })

type Fields = { readonly [name: string]: string }

/** A form as a browser on the counter's own page sends it. */
export const post = (
  address: string,
  path: string,
  form: { readonly fields: Fields; readonly headers?: Fields; readonly from?: string },
): Promise<Asked> =>
  ask(address, path, {
    method: 'POST',
    ...(form.from === undefined ? {} : { from: form.from }),
    headers: { origin: address, 'content-type': 'application/x-www-form-urlencoded', ...form.headers },
    body: new URLSearchParams(form.fields).toString(),
  })

export type UploadFile = { readonly field: string; readonly name: string; readonly bytes: Uint8Array }

/** A multipart form (RFC 7578) with files. */
export const upload = (
  address: string,
  path: string,
  form: { readonly fields: Fields; readonly files: readonly UploadFile[] },
): Promise<Asked> => {
  const boundary = 'counter-test-boundary'
  const parts = [
    ...Object.entries(form.fields).map(([name, value]) =>
      Buffer.from(`--${boundary}\r\ncontent-disposition: form-data; name="${name}"\r\n\r\n${value}\r\n`),
    ),
    ...form.files.flatMap((file) => [
      Buffer.from(
        `--${boundary}\r\ncontent-disposition: form-data; name="${file.field}"; filename="${file.name}"\r\ncontent-type: application/octet-stream\r\n\r\n`,
      ),
      Buffer.from(file.bytes),
      Buffer.from('\r\n'),
    ]),
    Buffer.from(`--${boundary}--\r\n`),
  ]
  return ask(address, path, {
    method: 'POST',
    headers: { origin: address, accept: 'application/json', 'content-type': `multipart/form-data; boundary=${boundary}` },
    body: Buffer.concat(parts),
  })
}

/** The cookies an answer sets, as the next request carries them. */
export const cookieOf = (answer: Asked): string =>
  (answer.headers['set-cookie'] ?? []).map((cookie) => cookie.split(';')[0]).join('; ')
