import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import * as z from 'zod'
import { root } from './embedded.ts'

const serviceSchema = z.object({
  command: z.array(z.string()).optional(),
  environment: z.record(z.string(), z.union([z.string(), z.number(), z.null()])),
  healthcheck: z.object({ test: z.array(z.string()) }),
  build: z.object({ dockerfile_inline: z.string() }).optional(),
  volumes: z.array(z.union([z.string(), z.object({ source: z.string(), target: z.string() })])).optional(),
})
const composeSchema = z.object({ services: z.record(z.enum(['postgres', 'redis', 'chat', 'worker']), serviceSchema) })

const text = readFileSync(join(root, 'docker-compose.yml'), 'utf8')
const { services } = composeSchema.parse(parse(text, { merge: true }))
export type ComposeName = keyof typeof services

type Values = { readonly [name: string]: string }

/** As compose fills in what is set: `${NAME:?why}` and `${NAME:-usual}`, and `$$` for a dollar sign of the command's own. */
export const filledIn = (written: string, values: Values): string =>
  written
    .replaceAll(
      /(?<!\$)\$\{(\w+)(?::[?-]([^}]*))?\}/g,
      (_all, name: string, otherwise: string | undefined) => values[name] ?? otherwise ?? '',
    )
    .replaceAll('$$', '$')

/** What runs in a service's container: its command, or that of its image as the file builds it. */
export const commandOf = (name: ComposeName, values: Values): readonly string[] => {
  const { command, build } = services[name]
  const built = /^CMD (\[.*\])$/m.exec(build?.dockerfile_inline ?? '')?.[1]
  const words = command ?? (built === undefined ? [] : z.array(z.string()).parse(JSON.parse(built)))
  return words.map((word) => filledIn(word, values))
}

/** Its environment; what has no value is taken from who starts it, here from nobody. */
export const environmentOf = (name: ComposeName, values: Values): Values =>
  Object.fromEntries(
    Object.entries(services[name].environment).flatMap(([key, value]) =>
      value === null ? [] : [[key, filledIn(String(value), values)]],
    ),
  )

/** The command of its health check, to be run by a shell or as it is. */
export const healthOf = (name: ComposeName, values: Values): readonly string[] => {
  const [how, ...words] = services[name].healthcheck.test.map((word) => filledIn(word, values))
  return how === 'CMD-SHELL' ? ['sh', '-c', ...words] : words
}

/** The folder of this machine that stands in its container under a path. */
export const folderAt = (name: ComposeName, target: string, values: Values): string | undefined => {
  const mounts = (services[name].volumes ?? []).flatMap((mount) => (typeof mount === 'string' ? [] : [mount]))
  const found = mounts.find((mount) => mount.target === target)
  return found === undefined ? undefined : filledIn(found.source, values)
}

/** What the service and its workers take from who starts them, in a container as beside one. */
export const takenFrom = (name: ComposeName): readonly string[] =>
  Object.entries(services[name].environment).flatMap(([key, value]) => (value === null ? [key] : []))
