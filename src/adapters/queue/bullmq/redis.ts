import { Redis, type RedisOptions } from 'ioredis'

export type Endpoint = { readonly host: string; readonly port: number }

/** A Redis by its address, or through sentinels that know the one that leads by the host name of that address. */
export type RedisPlace = {
  readonly url: string
  readonly sentinels: readonly Endpoint[]
  readonly sentinelPassword: string | null
}

/** What a URL says, in the words of a connection that asks sentinels first. */
const throughSentinels = ({ url, sentinels, sentinelPassword }: RedisPlace): RedisOptions => {
  const { protocol, hostname, username, password, pathname } = new URL(url)
  return {
    sentinels: sentinels.map(({ host, port }) => ({ host, port })),
    name: hostname,
    db: Number(pathname.slice(1)) || 0,
    ...(username === '' ? {} : { username: decodeURIComponent(username) }),
    ...(password === '' ? {} : { password: decodeURIComponent(password) }),
    ...(sentinelPassword === null ? {} : { sentinelPassword }),
    ...(protocol === 'rediss:' ? { tls: {}, sentinelTLS: {}, enableTLSForSentinelMode: true } : {}),
  }
}

/** `rediss:` is Redis over TLS; an authority of one's own is named to Node by NODE_EXTRA_CA_CERTS. */
export const connectRedis = (place: RedisPlace, options: RedisOptions): Redis =>
  place.sentinels.length === 0 ? new Redis(place.url, options) : new Redis({ ...throughSentinels(place), ...options })

/** The address without its password, for people. */
export const shownRedis = ({ url, sentinels }: RedisPlace): string => {
  if (!URL.canParse(url)) return '(an address that cannot be read)'
  const through = sentinels.map(({ host, port }) => `${host}:${port}`).join(', ')
  return through === '' ? new URL(url).host : `${new URL(url).host} (through ${through})`
}
