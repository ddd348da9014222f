import { makeApp } from '../../src/adapters/chat/counter/app.ts'
import { readAssets } from '../../src/adapters/chat/counter/assets.ts'
import { doorsOf } from '../../src/adapters/chat/counter/guard.ts'
import { makeLimits } from '../../src/adapters/chat/counter/limit.ts'
import { makeSessions } from '../../src/adapters/chat/counter/session.ts'
import { makePageDesk } from './page-desk.ts'

const now = (): number => 0

/** Every route of the counter that is read, as it is registered: `/press/:ticket`. */
export const readRoutes = (): readonly string[] => {
  const app = makeApp(
    {
      desk: makePageDesk(now),
      origin: 'http://127.0.0.1:1',
      sessions: makeSessions(new Uint8Array(32), now),
      limits: makeLimits(now),
      assets: readAssets(new URL('../..', import.meta.url).pathname),
      ready: async () => undefined,
      report: () => undefined,
      closing: new AbortController().signal,
    },
    doorsOf('http://127.0.0.1:1', 1),
  )
  return [...new Set(app.routes.filter(({ method }) => method === 'GET').map(({ path }) => path))].sort()
}

/** Answers that are no pages: live lines, files, tables, pictures, words for machines. */
export const noPages: readonly string[] = [
  '/assets/:name',
  '/bench/file/:file',
  '/bench/live',
  '/c/:token/file/:file',
  '/c/:token/live',
  '/calendar/:secret',
  '/load/live',
  '/load/narrow',
  '/load/picture',
  '/morning/file/:file',
  '/morning/live',
  '/press/:ticket/live',
  '/press/live',
  '/ready',
  '/robots.txt',
  '/shelf/live',
  '/tables/:table',
  '/up',
]

/** Every page that is looked at, by its route, with the addresses it is opened at. */
export const pageAddresses = (token: string): { readonly [route: string]: readonly string[] } => ({
  '/': ['/', '/?language=es'],
  '/bench': ['/bench'],
  '/c/:token': [`/c/${token}`],
  '/load': ['/load'],
  '/morning': ['/morning'],
  '/owner/:link': ['/owner/some-owner-link-here'],
  '/people': ['/people'],
  '/press': ['/press'],
  '/press/:ticket': ['/press/17', '/press/no-such-ticket'],
  '/shelf': ['/shelf'],
  '/sign-in': ['/sign-in', '/sign-in?language=es'],
})
