import { readFile, writeFile } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import * as z from 'zod'
import { loadFaces } from '../adapters/folder/faces.ts'
import { projectRoot } from '../adapters/folder/root.ts'
import { rasterise } from '../adapters/picture/rasterise.ts'
import { layoutSvg } from '../domain/cutting/layout-svg.ts'
import { faceListingsSchema } from '../domain/face/listing.ts'
import type { StoneLayout, StoneSetting, StoneStyle } from '../domain/layout/layout.ts'
import { placeStones } from '../domain/layout/place-stones.ts'
import { roomForRows } from '../domain/layout/room.ts'
import { setText } from '../domain/layout/set-text.ts'
import { type StoneSettingRecord, stoneSettingSchema } from '../domain/material/material.ts'
import { ok, type Problem, type Result } from '../domain/result/result.ts'
import { fromInches, fromMillimetres, type Micrometres, micrometres, toMillimetres } from '../domain/units/units.ts'
import { type Command, exitCodes, isOn, runCommand, text, UsageError, type Words } from './command.ts'
import { problemText } from './problem-text.ts'

const USAGE = `stones: counts and places hot-fix stones for a number or name

  npm run -s stones -- --text TEXT [--face ID] [--height 6.8in|172mm|17.2cm] [--stone SS10] [--style outline|rows|solid|single-line]
       [--rows N] [--contours both|outer] [--hole MM] [--web MM] [--edge MM] [--shop DIR] [--png FILE] [--json]

Lengths without a unit are millimetres.
Stones are given from the piece's own place (atMm), x to the right, y up from the baseline.`

const LENGTH = /^(\d+(?:\.\d+)?)\s*(in|"|mm|cm)?$/

const lengthOf = (words: Words, name: string): Micrometres | undefined => {
  const given = text(words, name)
  if (given === undefined) return undefined
  const [, figure, unit] = LENGTH.exec(given.trim()) ?? []
  if (figure === undefined) throw new UsageError(`--${name} ${given} is not a length; write for example 6.8in, 172mm or 17.2cm`)
  if (unit === 'in' || unit === '"') return fromInches(Number(figure))
  return fromMillimetres(Number(figure) * (unit === 'cm' ? 10 : 1))
}

const wholeOf = (words: Words, name: string, otherwise: number): number => {
  const given = text(words, name) ?? String(otherwise)
  if (!/^\d+$/.test(given)) throw new UsageError(`--${name} ${given} is not a whole number`)
  return Number(given)
}

const styleOf = (words: Words): StoneStyle => {
  const style = text(words, 'style') ?? 'outline'
  const contours = text(words, 'contours') ?? 'both'
  if (contours !== 'both' && contours !== 'outer') throw new UsageError(`--contours is both or outer, not ${contours}`)
  const rows = wholeOf(words, 'rows', 1)
  if (style === 'outline') return { style, rows, contours }
  if (style === 'rows') return { style, rows }
  if (style === 'solid' || style === 'single-line') return { style }
  throw new UsageError(`--style is outline, rows, solid or single-line, not ${style}`)
}

const readJson = async <T>(file: string, schema: z.ZodType<T>): Promise<T> => {
  const source = await readFile(file, 'utf8').catch(() => undefined)
  if (source === undefined) throw new UsageError(`${file} cannot be read; give the shop's folder with --shop`)
  try {
    return schema.parse(JSON.parse(source))
  } catch (cause) {
    throw new UsageError(`${file} is not as it must be: ${cause instanceof Error ? cause.message : String(cause)}`, { cause })
  }
}

const settingOf = (words: Words, records: readonly StoneSettingRecord[]): StoneSetting => {
  const size = (text(words, 'stone') ?? 'SS10').toUpperCase()
  const record = records.find((one) => one.size === size)
  const hole = lengthOf(words, 'hole') ?? record?.holeMicrometres
  const sizes = records.map((one) => one.size).join(', ')
  if (hole === undefined) throw new UsageError(`the shop has no setting for ${size}; it has ${sizes}, or give --hole and --web`)
  return {
    size,
    hole: micrometres(hole),
    web: lengthOf(words, 'web') ?? micrometres(record?.webMicrometres ?? 500),
    edgeGap: lengthOf(words, 'edge') ?? micrometres(record?.edgeGapMicrometres ?? 1000),
  }
}

const lay = async (words: Words): Promise<Result<{ layout: StoneLayout; svg: string; text: string }>> => {
  const given = text(words, 'text') ?? ''
  const shop = resolve(text(words, 'shop') ?? join(projectRoot(), 'templates', 'shop'))
  const setting = settingOf(words, await readJson(join(shop, 'stone-settings.json'), z.array(stoneSettingSchema)))
  const height = lengthOf(words, 'height') ?? fromInches(6.8)
  const style = styleOf(words)
  const faces = await loadFaces(await readJson(join(shop, 'faces.json'), faceListingsSchema), { root: projectRoot(), shop })
  if (!faces.ok) return faces
  const id = text(words, 'face') ?? 'quantico-700'
  const face = faces.value.get(id)
  if (face === undefined) throw new UsageError(`there is no face ${id}; there are ${[...faces.value.keys()].join(', ')}`)
  const shape = setText({
    face,
    text: given,
    height,
    offered: [...faces.value.values()],
    ...(/^\d+$/.test(given) ? { leastGap: roomForRows(setting, style) } : {}),
  })
  if (!shape.ok) return shape
  const layout = placeStones(shape.value, { setting, style })
  if (!layout.ok) return layout
  return ok({ layout: layout.value, svg: layoutSvg(shape.value, layout.value), text: shape.value.text })
}

const mm = (length: number): number => toMillimetres(micrometres(length))

const toJson = (given: string, { count, setting, pieces }: StoneLayout) => ({
  text: given,
  count,
  pieces: pieces.map((piece) => ({
    text: piece.text,
    atMm: piece.at.map(mm),
    count: piece.count,
    stones: piece.stones.map((stone) => stone.map(mm)),
    holeMm: mm(setting.hole),
    pitchMm: mm(setting.hole + setting.web),
    coverage: piece.evidence.coverage,
    flags: piece.evidence.flags.map(({ code, facts }) => ({ code, ...facts })),
  })),
})

const refused = (words: Words, problems: readonly Problem[]): number => {
  const told = problems.map((problem) => ({ code: problem.code, ...problem.facts, text: problemText(problem) }))
  if (isOn(words, 'json')) process.stdout.write(`${JSON.stringify({ problems: told })}\n`)
  for (const { text: sentence } of told) process.stderr.write(`${sentence}\n`)
  return exitCodes.refused
}

const report = ({ pieces, count, setting, flags }: StoneLayout): string => {
  const lines = pieces.map(
    ({ text: piece, count: stones, evidence }) =>
      `${piece}: ${stones} stones, corners ${evidence.cornersHit} of ${evidence.corners}, worst gap ${evidence.coverage} pitches`,
  )
  return [...lines, `${count} stones ${setting.size}`, ...flags.map((flag) => `- ${problemText(flag)}`)].join('\n')
}

const stones: Command = {
  usage: USAGE,
  options: {
    text: { type: 'string' },
    face: { type: 'string' },
    height: { type: 'string' },
    stone: { type: 'string' },
    style: { type: 'string' },
    rows: { type: 'string' },
    contours: { type: 'string' },
    hole: { type: 'string' },
    web: { type: 'string' },
    edge: { type: 'string' },
    shop: { type: 'string' },
    png: { type: 'string' },
    json: { type: 'boolean' },
  },
  run: async (words) => {
    if (text(words, 'text') === undefined) throw new UsageError('say what to lay out with --text')
    const laid = await lay(words)
    if (!laid.ok) return refused(words, laid.problems)
    const { layout, svg } = laid.value
    const png = text(words, 'png')
    if (png !== undefined) await writeFile(png, rasterise(svg, 1200))
    process.stdout.write(isOn(words, 'json') ? `${JSON.stringify(toJson(laid.value.text, layout))}\n` : `${report(layout)}\n`)
    return exitCodes.done
  },
}

await runCommand(stones)
