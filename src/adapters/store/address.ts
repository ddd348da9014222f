/** Where PostgreSQL is and who asks: a socket folder or host with its parts, or one connection string. */
export type Address =
  | { readonly host: string; readonly port: number; readonly user: string; readonly password: string; readonly database: string }
  | { readonly connectionString: string }

/** The address without its password, for people. */
export const shown = (address: Address): string => {
  if ('host' in address) return `${address.host}:${address.port}/${address.database}`
  if (!URL.canParse(address.connectionString)) return '(an address that cannot be read)'
  const { hostname, port, pathname } = new URL(address.connectionString)
  return `${hostname}${port === '' ? '' : `:${port}`}${pathname}`
}
