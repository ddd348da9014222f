import { readFileSync } from 'node:fs'
import type { Catalogue } from '../../../src/domain/order/catalogue.ts'
import { parseOrder } from '../../../src/domain/order/parse-order.ts'
import { type ResolvedOrder, resolveOrder } from '../../../src/domain/order/resolve.ts'
import { type Bench, type Extent, type PressJob, usualBenchSettings } from '../../../src/domain/press/job.ts'
import { jobFromOrder } from '../../../src/domain/press/job-from-order.ts'
import { planPress } from '../../../src/domain/press/plan-press.ts'
import type { Problem } from '../../../src/domain/result/result.ts'
import { checkOrder } from '../../../src/domain/rules/check-order.ts'
import type { RuleFacts } from '../../../src/domain/rules/facts.ts'
import { shopFiles } from '../../../src/domain/shop/shop.ts'

const root = new URL('../../../', import.meta.url)

export const readJson = (path: string): unknown => JSON.parse(readFileSync(new URL(path, root), 'utf8'))

const shopFile = (file: string): unknown => readJson(`templates/shop/${file}`)

/** The records of the starter shop that the press and the rules work with. */
export const starter = {
  garments: shopFiles.garments.schema.parse(shopFile('garments.json')),
  fabrics: shopFiles.fabrics.schema.parse(shopFile('fabrics.json')),
  places: shopFiles.places.schema.parse(shopFile('places.json')),
  colours: shopFiles.colours.schema.parse(shopFile('colours.json')),
  vinyls: shopFiles.vinyl.schema.parse(shopFile('vinyl.json')),
  stones: shopFiles.stones.schema.parse(shopFile('stones.json')),
  auxiliaries: shopFiles.auxiliaries.schema.parse(shopFile('auxiliaries.json')),
  presses: shopFiles.presses.schema.parse(shopFile('presses.json')),
  rulebooks: shopFiles.rulebooks.schema.parse(shopFile('rulebooks.json')),
  stock: shopFiles.stock.schema.parse(shopFile('stock.json')),
}

export const faces: readonly string[] = ['saira-condensed-800', 'anton', 'quantico-700', 'graduate']

export const catalogue: Catalogue = { ...starter, faces }

export const bench: Bench = {
  machines: starter.presses,
  auxiliaries: starter.auxiliaries,
  shelf: {
    materials: [...starter.vinyls, ...starter.stones],
    stock: Object.fromEntries([
      ...starter.stock.vinyl.map((entry) => [entry.material, entry.lengthMicrometres] as const),
      ...starter.stock.stones.map((entry) => [entry.material, entry.pieces] as const),
    ]),
  },
  settings: usualBenchSettings,
}

/** A stand-in for the layout: a condensed letter 0.45 of its height wide, with a stroke of a fifth. */
export const roughExtents = (resolved: ResolvedOrder): readonly Extent[] =>
  resolved.applications.map((application) => ({
    decoration: application.decoration.id,
    line: application.line,
    text: application.text,
    widthMicrometres: Math.min(application.freeWidth, Math.round(application.height * 0.45 * application.text.length)),
    heightMicrometres: application.height,
    aboveMicrometres: 0,
    strokeMicrometres: Math.round(application.height / 5),
    freeWidthMicrometres: application.freeWidth,
  }))

export type WorkedOut = { readonly job: PressJob; readonly facts: RuleFacts; readonly problems: readonly Problem[] }

/** From an order document to its press plan and all problems, on the starter shop; parts of the facts can be overridden. */
export const workOut = (document: unknown, overrides: Partial<RuleFacts> & { readonly bench?: Bench } = {}): WorkedOut => {
  const order = parseOrder(document)
  if (!order.ok) throw new Error(JSON.stringify(order.problems))
  const resolved = resolveOrder(order.value, catalogue)
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems))
  const extents = overrides.extents ?? roughExtents(resolved.value)
  const job = jobFromOrder({ resolved: resolved.value, colours: starter.colours, extents })
  const { bench: ownBench = bench, ...own } = overrides
  const facts: RuleFacts = {
    order: order.value,
    job,
    press: planPress(job, ownBench),
    extents,
    rulebook: starter.rulebooks.find((book) => book.id === order.value.rulebook) ?? null,
    colours: starter.colours,
    findings: [],
    shelf: ownBench.shelf,
    today: '2026-11-25',
    ...own,
  }
  return { job, facts, problems: checkOrder(facts) }
}

export const codes = (problems: readonly Problem[], severity: Problem['severity']): readonly string[] => [
  ...new Set(problems.filter((problem) => problem.severity === severity).map((problem) => problem.code)),
]
