import { readFileSync } from 'node:fs'
import type { LoadHook, ResolveHook } from 'node:module'
import { fileURLToPath } from 'node:url'

/** The domain, what the desk asks of it without the records, and the paper, picture and archive that are made of it. */
const domain =
  /\/\.build\/(?:src\/domain|src\/desk\/(?!service\/|platform\/)|src\/adapters\/(?:printer|picture|archive)|templates\/ticket)\b/
const program = '/.build/'
const mark = '?metered'

/** The names that a built module of ours gives away; any other way of exporting than a constant is refused, so that nothing is missed. */
export const namesIn = (source: string): readonly string[] => {
  const others = source.match(/^export (?!const \w|\{\};?$).*/m)
  if (others !== null) throw new Error(`not a constant: ${others[0]}`)
  return [...source.matchAll(/^export const (\w+)/gm)].flatMap(([, name]) => (name === undefined ? [] : [name]))
}

/** Whoever is outside of the domain gets its modules metered (node:module, customization hooks). */
export const resolve: ResolveHook = async (what, context, next) => {
  const found = await next(what, context)
  const from = context.parentURL ?? ''
  const isCrossed = domain.test(found.url) && from.includes(program) && !domain.test(from)
  return isCrossed ? { ...found, url: `${found.url}${mark}` } : found
}

export const load: LoadHook = async (url, context, next) => {
  if (!url.endsWith(mark)) return next(url, context)
  const inside = url.slice(0, -mark.length)
  const names = namesIn(readFileSync(fileURLToPath(inside), 'utf8'))
  const lines = names.map((name) => `export const ${name} = globalThis.platenpostMeter(all.${name})`)
  return { format: 'module', shortCircuit: true, source: [`import * as all from ${JSON.stringify(inside)}`, ...lines].join('\n') }
}
