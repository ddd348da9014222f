import { execFileSync } from 'node:child_process'
import { chmodSync, chownSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { findAccount } from '../../src/adapters/store/embedded/account.ts'
import { temporaryFolder, unwrap } from './embedded.ts'

export type Certificates = {
  /** The authority's own certificate. */
  readonly authority: string
  readonly certificate: string
  readonly key: string
  readonly remove: () => void
}

/** An authority of the test's own and a certificate of 127.0.0.1 by it, made by openssl. */
export const makeCertificates = async (): Promise<Certificates> => {
  const folder = temporaryFolder()
  const at = (name: string): string => join(folder.path, name)
  const openssl = (...words: readonly string[]): void => {
    execFileSync('openssl', words, { cwd: folder.path, stdio: ['ignore', 'ignore', 'pipe'] })
  }
  const keyKind = ['-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256', '-noenc']
  openssl('req', '-x509', ...keyKind, '-keyout', 'authority.key', '-out', 'authority.pem', '-days', '2', '-subj', '/CN=tests')
  openssl('req', ...keyKind, '-keyout', 'server.key', '-out', 'server.csr', '-subj', '/CN=127.0.0.1')
  writeFileSync(at('names'), 'subjectAltName = IP:127.0.0.1, DNS:localhost\n')
  const by = ['-CA', 'authority.pem', '-CAkey', 'authority.key', '-CAcreateserial']
  openssl('x509', '-req', '-in', 'server.csr', ...by, '-out', 'server.pem', '-days', '2', '-extfile', 'names')
  // PostgreSQL takes a key that only its own user may read.
  const account = unwrap(await findAccount(at('none')))
  chmodSync(at('server.key'), 0o600)
  if (account !== null) chownSync(at('server.key'), account.uid, account.gid)
  return { authority: at('authority.pem'), certificate: at('server.pem'), key: at('server.key'), remove: folder.remove }
}
