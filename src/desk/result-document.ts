import { sayProblem } from '../../templates/replies/say.ts'
import { writeLocal } from '../domain/calendar/local-time.ts'
import type { Problem } from '../domain/result/result.ts'
import type { Shop } from '../domain/shop/shop.ts'
import { showFor } from '../domain/shop/show.ts'
import { micrometres, toMillimetres } from '../domain/units/units.ts'
import { sayForOrder } from './say-for-order.ts'
import { garmentsOf } from './ticket/garments.ts'
import type { Work, WorkedOut } from './work-out.ts'

/** A file of the job by its name inside the output folder. */
export type JobFile = { readonly name: string; readonly bytes: Uint8Array }

const problemEntry = (problem: Problem, text: string) => ({
  ...problem.facts,
  code: problem.code,
  at: problem.at,
  severity: problem.severity,
  text,
})

const stonesOf = ({ counted }: Work) =>
  counted.stones.map(({ material, line }) => ({
    size: line.size,
    colour: line.colour,
    material: material.id,
    pieces: line.pieces,
    spare: line.spare,
    gross: line.gross,
    milligrams: line.milligrams,
  }))

const vinylOf = ({ cuts }: Work) =>
  cuts.vinyl.map(({ material, sheet }) => ({
    class: material.class,
    colour: material.colour,
    material: material.id,
    lengthMm: toMillimetres(sheet.usedLength),
    widthMm: toMillimetres(micrometres(material.rollWidthMicrometres)),
    pieces: sheet.parts.length,
    reads: sheet.reads,
  }))

const templatesOf = ({ counted }: Work) =>
  counted.templates.map(({ key, no, text, on, size, colour, holes, brushed, places, face, heightMicrometres }) => ({
    key,
    no,
    text,
    on,
    size,
    colour,
    holes,
    brushed,
    places,
    face,
    heightMm: toMillimetres(micrometres(heightMicrometres)),
  }))

const planOf = ({ promised, time: { zone } }: Work) => ({
  promised: writeLocal(zone, promised.promised),
  feasible: promised.feasible,
  slackMinutes: promised.slackMinutes,
  hangsOn: promised.hangsOn.map(({ code, by }) => ({ code, by: writeLocal(zone, by) })),
  freezesAt: promised.freezesAt === null ? null : writeLocal(zone, promised.freezesAt),
  slots: promised.slots.map(({ operation, stations, start, end, setupMinutes }) => ({
    operation,
    stations,
    start: writeLocal(zone, start),
    end: writeLocal(zone, end),
    setupMinutes,
  })),
})

const partsOf = (work: Work) => ({
  garments: garmentsOf(work.resolved),
  stones: stonesOf(work),
  templates: templatesOf(work),
  vinyl: vinylOf(work),
  press: work.press.steps,
  heats: work.press.heats,
  gates: work.press.gates,
  plan: planOf(work),
  price: work.price,
})

const nothing = {
  garments: [],
  stones: [],
  templates: [],
  vinyl: [],
  press: [],
  heats: [],
  gates: [],
  plan: null,
  price: null,
}

/**
 * The result as machines read it: problems with their sentence, then what was worked out (empty when the order is refused).
 * Lengths end in Mm, temperatures are tenths of °C, money is minor units.
 */
export const resultDocument = (worked: WorkedOut, shop: Shop, files: readonly string[]) => {
  const language = worked.order?.language ?? shop.profile.languages[0] ?? 'en'
  const show = showFor(shop, language)
  const said = (problem: Problem): string =>
    worked.order === null ? sayProblem(problem, language, show) : sayForOrder(problem, worked.order, shop)
  return {
    problems: worked.problems.map((problem) => problemEntry(problem, said(problem))),
    ...(worked.work === null ? nothing : partsOf(worked.work)),
    files,
  }
}
