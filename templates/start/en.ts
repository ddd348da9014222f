import type { StartCatalogue } from './catalogue.ts'

export const en = {
  'store-program-missing': ({ machine }) =>
    `There is no PostgreSQL in the installed packages for this kind of machine (${machine}). Set DATABASE_URL to a PostgreSQL of your own.`,
  'store-links-missing': ({ command }) =>
    `PostgreSQL's libraries are not linked, because install scripts were off. Run: ${command}`,
  'store-user-missing': ({ user, said }) =>
    `PostgreSQL does not run as root, and the system user "${user}" could not be made (${said}). Make that user, or start as another user.`,
  'store-folder-closed': ({ folder, user }) =>
    `The user "${user}", who runs PostgreSQL, cannot pass the folder ${folder}. Open it for passing (chmod o+x ${folder}), or move the project or DATA elsewhere.`,
  'store-folder-refused': ({ folder, said }) => `The data folder ${folder} cannot be used: ${said}`,
  'store-disk-full': ({ folder }) =>
    `The disk is full: nothing can be written to ${folder}. Make room and start again; nothing was lost.`,
  'store-keys-missing': ({ file, folder }) =>
    `The data in ${folder} are there, but the passwords in ${file} are missing or do not fit. Put that file back from where the data came from.`,
  'store-not-started': ({ log, said }) => `PostgreSQL did not start. The end of ${log}:\n${said}`,
  'store-in-use': ({ at }) =>
    `Another service works on these data (${at}). Stop it first, or start this one with another DATA folder.`,
  'store-unreachable': ({ at, said }) => `PostgreSQL at ${at} does not answer: ${said}`,
  'store-newer': ({ said }) => `The records were written by a newer version of this program. Install that version. (${said})`,
  'queue-unreachable': ({ at, said }) => `Redis at ${at} does not answer: ${said}`,
  'queue-forgets': ({ at, setting }) =>
    `Redis at ${at} keeps no append-only file and would lose orders when it stops. Set "${setting}" in its configuration.`,
  'queue-evicts': ({ at, policy }) =>
    `Redis at ${at} throws entries away when memory is short (maxmemory-policy ${policy}). Set "maxmemory-policy noeviction".`,
} satisfies StartCatalogue
