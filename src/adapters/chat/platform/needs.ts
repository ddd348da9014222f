import type { REST } from 'discord.js'
import type { PlatformDesk } from '../../../ports/platform-desk.ts'
import type { FetchRules } from './attachments.ts'
import type { Clock } from './patience.ts'

/** What receiving needs: two ways to speak, the desk, and where a fault is reported. */
export type Needs = {
  readonly desk: PlatformDesk
  readonly rest: REST
  readonly answers: REST
  readonly clock: Clock
  readonly files: FetchRules
  readonly serverName: (guild: string) => string | null
  /** A fault of ours in one event; the others go on. */
  readonly report: (error: unknown) => void
}
