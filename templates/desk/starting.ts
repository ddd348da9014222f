import type { OpenProblems } from '../../src/ports/opening.ts'

type OwnProblems = {
  'secret-too-short': { readonly least: number }
  'clock-unreadable': { readonly set: string }
  /** The chat platform's server that is this shop. */
  'guild-unreadable': Readonly<Record<string, never>>
  /** The counter's door: its port, its host or its address. */
  'counter-closed': { readonly host: string; readonly said: string }
  /** The port for figures and readiness. */
  'watch-closed': { readonly host: string; readonly said: string }
  /** The chat platform refuses the bot for good. */
  'bot-not-opened': { readonly said: string }
  /** The shop has no orders where shops of other ids have some. */
  'shop-other-id': { readonly id: string; readonly others: readonly string[]; readonly embedded: boolean }
  /** A command for records that were never made. */
  'store-nothing-there': { readonly folder: string }
  'backup-not-written': { readonly file: string; readonly said: string }
  /** Nothing is written over a backup. */
  'backup-there': { readonly file: string }
  'order-unknown': { readonly order: string }
  /** People are forgotten when their order is over, not while it is made. */
  'order-in-work': { readonly order: string; readonly state: string }
}
type Problems = OpenProblems & OwnProblems
type StartingWords = { readonly [Code in keyof Problems]: (facts: Problems[Code]) => string }

/** `npm start -- --help`. */
export const startUsage = `npm start: opens the shop on this computer, until Ctrl-C

Prints the counter's address and a link that lets the owner in once. It takes no options: settings come from the environment
(DATA, SHOP, COUNTER_PORT, DATABASE_URL and more); the README lists them.
`

export const workerUsage = `node .build/workers/main.js: a worker beside the service, on this machine or another, until Ctrl-C

Takes steps from the queue of the service that runs on the same store, and says “worker ready”. It takes no options: settings
come from the environment (DATABASE_URL, REDIS_URL and SHOP as the service has them, and more); the README lists them.
`

/** The shop's own store is asked by a socket in a folder that changes with every start: that path tells people nothing. */
const isOwnStore = (at: string): boolean => /^\/.*:\d+\//.test(at)
const placeOf = (at: string, article = 'the'): string => (isOwnStore(at) ? `${article} shop’s own store on this computer` : at)
const withoutSocket = (said: string): string => said.replace(/\/\S*\.s\.PGSQL\.\d+/g, 'its socket')
/** What another program said, as the end of a clause: its own full stop is taken off. */
const clause = (said: string): string => said.replace(/[.\s]+$/, '')
const quotedIds = (ids: readonly string[]): string => ids.map((id) => `“${id}”`).join(' and ')
/** As tickets are numbered on the paper, however somebody types it. */
const isTicketNumber = (word: string): boolean => /^(?:t[-\s]?|#)?\d{1,6}$/i.test(word)
const whereIds = 'The order’s id stands beside the ticket’s number in orders.csv, which the owner takes at the end of the shelf.'

/** What the person at the terminal is told when the service, a backup or a restore cannot go on: what happened, what to do. */
export const startingWords: StartingWords = {
  'store-program-missing': ({ machine }) =>
    `npm brings no PostgreSQL for this kind of machine (${machine}). Set DATABASE_URL to a PostgreSQL server.`,
  'store-links-missing': ({ command }) =>
    `PostgreSQL’s libraries are not linked, because install scripts were off. Run: ${command}`,
  'store-user-missing': ({ user, said }) =>
    `PostgreSQL does not run as root, and the user “${user}” could not be made (${said}). Make it, or start as another user.`,
  'store-folder-closed': ({ folder, user }) =>
    `The user “${user}”, as whom PostgreSQL runs, may not pass the folder ${folder}. Allow it (chmod o+x ${folder}), or set DATA to a folder elsewhere.`,
  'store-folder-refused': ({ folder, said }) =>
    `The data folder ${folder} cannot be used: ${clause(said)}. Set DATA to a folder that may be written.`,
  'store-disk-full': ({ folder }) => `The disk is full (${placeOf(folder)}). Make room and start again; nothing is lost.`,
  'store-keys-missing': ({ file, folder }) =>
    `The data in ${folder} are there, but their passwords (${file}) are not. Bring that file back, or restore a backup into an empty data folder.`,
  'store-not-started': ({ log, said }) => `PostgreSQL did not start; its log is ${log}. It said: ${said}`,
  'store-in-use': ({ at }) =>
    `Another service runs on these data (${placeOf(at)}). Stop it first, or set DATA to another folder.`,
  'store-unreachable': ({ at, said }) =>
    isOwnStore(at)
      ? `${placeOf(at, 'The')} cannot be reached: ${clause(withoutSocket(said))}. Start again; if that does not help, look whether the disk of the data folder has room.`
      : `The store at ${at} cannot be reached: ${clause(said)}. Look at DATABASE_URL, and whether the server runs.`,
  'store-refused': ({ at, said }) =>
    isOwnStore(at)
      ? `${placeOf(at, 'The')} answers, but refuses: ${clause(withoutSocket(said))}. Start again; if that does not help, restore a backup into an empty data folder.`
      : `The store at ${at} answers, but refuses: ${clause(said)}. Where the database or the role of DATABASE_URL is new, set DATABASE_OWNER_URL for the service’s start, too: as an owner who may make roles it makes that role and gives it its rights. Else look at the names and passwords in both.`,
  'store-not-made': ({ at }) =>
    isOwnStore(at)
      ? `${placeOf(at, 'The')} has no records yet, or not in the shape of this version. Start the service once.`
      : `The store at ${at} has no records yet, or not in the shape of this version. Start the service first, with DATABASE_OWNER_URL where the database is new; then its workers and the commands.`,
  'store-role-mighty': ({ role }) =>
    `The role “${role}” of DATABASE_URL may do everything. Give DATABASE_URL a role of its own, which is made when it is new; DATABASE_OWNER_URL alone names the owner.`,
  'secret-too-short': ({ least }) => `It must have ${least} signs or more.`,
  'clock-unreadable': ({ set }) =>
    `CLOCK=${set} is no clock. Write the minute it begins and how many times faster it runs, like 2031-06-02T06:30x60.`,
  'guild-unreadable': () =>
    'PLATFORM_GUILD names no server of the chat. Write the server’s id, a number of 17 to 20 digits and nothing else (the README says how to copy it), or leave PLATFORM_GUILD out.',
  'clock-not-theirs': ({ set, theirs }) =>
    theirs === null
      ? `CLOCK=${set} is for records that are made with it; these live on real time and stay there. Leave CLOCK out, or set DATA (or DATABASE_URL) to a place that is not made yet.`
      : `These records live on the simulated clock they were made with. Set CLOCK=${theirs} for the service, every worker and every command.`,
  'store-newer': ({ said }) => `The records were written by a newer version of this program; use that version. (${said})`,
  'store-not-empty': ({ at }) =>
    `There are records in ${isOwnStore(at) ? placeOf(at) : `the store at ${at}`} already. A backup is only put back where there are none: set DATA to a new folder, or DATABASE_URL to an empty database.`,
  'backup-missing': ({ file }) => `There is no file ${file}. Nothing was written; look at its name and where it lies.`,
  'backup-damaged': ({ file, said }) =>
    `The backup ${file} is damaged, cut short, or no backup (${said}). Nothing was written; take another one.`,
  'backup-differs': ({ file, table }) =>
    `The backup ${file} was put back for a trial and “${table}” was not the same. Keep the store as it is, and look for a damaged disk.`,
  'queue-unreachable': ({ at, said }) =>
    `Redis at ${at} cannot be reached: ${clause(said)}. Look at REDIS_URL, and whether the server runs.`,
  'queue-refused': ({ at, said }) =>
    `Redis at ${at} answers, but refuses: ${clause(said)}. Look at the user and the password in REDIS_URL.`,
  'queue-forgets': ({ at, setting }) => `Redis at ${at} would forget steps when it stops. Set “${setting}” in its configuration.`,
  'queue-evicts': ({ at, policy }) =>
    `Redis at ${at} throws steps away when memory is short (maxmemory-policy is ${policy}). Set “maxmemory-policy noeviction”.`,
  'store-nothing-there': ({ folder }) =>
    `There are no records in ${folder}. Start the service once, or set DATA to the folder it uses.`,
  'backup-there': ({ file }) => `There is a file ${file} already, and it stays as it is. Give this backup another name.`,
  'shop-other-id': ({ id, others, embedded }) =>
    `There are orders of ${quotedIds(others)} here and none of “${id}”, the id in shop.json: the shop opens empty. If the id was changed, stop and set it back; records belong to the id they were made with. If this is a new shop, ${embedded ? 'give it a place of its own (DATA)' : 'all is well'}.`,
  'backup-not-written': ({ file, said }) => `The backup could not be written to ${file}: ${said}`,
  'order-unknown': ({ order }) =>
    isTicketNumber(order)
      ? `${order} is the number of a ticket, and an order is named by its id. ${whereIds}`
      : `There is no order ${order} in this shop. ${whereIds}`,
  'order-in-work': ({ order, state }) =>
    `The order ${order} is ${state}: its people are needed until it is handed over or cancelled. Nothing was forgotten.`,
  'watch-closed': ({ host, said }) => `Figures and readiness could not be opened at ${host}: ${said}`,
  'bot-not-opened': ({ said }) =>
    `The chat platform did not let the bot in: ${clause(said)}. Look at PLATFORM_TOKEN; without it the counter opens alone.`,
  'counter-closed': ({ host, said }) => `The counter could not be opened at ${host}: ${said}`,
}
