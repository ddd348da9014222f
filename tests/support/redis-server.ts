import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { createServer } from 'node:net'
import { temporaryFolder } from './embedded.ts'

const freePort = async (): Promise<number> => {
  const server = createServer().listen(0, '127.0.0.1')
  await once(server, 'listening')
  const address = server.address()
  server.close()
  if (address === null || typeof address === 'string') throw new Error('no free port')
  return address.port
}

/** A redis-server of its own on a free port, with its own folder; more settings as `--name value`. */
export const startRedis = async (
  ...settings: readonly string[]
): Promise<{ readonly url: string; readonly stop: () => Promise<void> }> => {
  const folder = temporaryFolder()
  const port = await freePort()
  const asked = ['--port', String(port), '--bind', '127.0.0.1', '--dir', folder.path, '--save', '', ...settings]
  const server = spawn('redis-server', asked, { stdio: ['ignore', 'pipe', 'inherit'] })
  const said: string[] = []
  await new Promise<void>((resolve, reject) => {
    server.stdout.on('data', (part: Buffer) => {
      said.push(part.toString())
      if (said.join('').includes('Ready to accept connections')) resolve()
    })
    server.once('exit', () => reject(new Error(`redis-server did not start: ${said.join('')}`)))
  })
  return {
    url: `redis://127.0.0.1:${port}`,
    stop: async () => {
      server.removeAllListeners('exit')
      const ended = once(server, 'exit')
      server.kill('SIGTERM')
      await ended
      folder.remove()
    },
  }
}
