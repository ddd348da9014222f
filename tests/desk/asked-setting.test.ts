import { beforeAll, describe, expect, it } from 'vitest'
import { emptyShopFloor } from '../../src/desk/floor.ts'
import { type Made, makeJob } from '../../src/desk/make-job.ts'
import type { Workshop } from '../../src/desk/work-out.ts'
import type { Decoration } from '../../src/domain/order/order.ts'
import { fromFahrenheit } from '../../src/domain/units/units.ts'
import { openPress } from '../../src/wiring/open-press.ts'
import { openWorkshop } from '../../src/wiring/open-workshop.ts'
import { readPdf } from '../adapters/printer/read-pdf.ts'
import { decoration, order } from '../support/orders.ts'

const root = new URL('../..', import.meta.url).pathname

let workshop: Workshop
beforeAll(async () => {
  const opened = await openWorkshop(root, undefined)
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
  workshop = opened.value
})

/** Stone letters alone on a cotton shirt for fans, with what is asked of the press. */
const stonesAlone = (asked: Partial<Decoration>) => {
  const { rulebook: _rulebook, ...base } = order()
  return {
    ...base,
    sport: 'other',
    use: 'fan',
    garments: [
      {
        id: 'home',
        catalogue: 'cotton-tee',
        fibres: [{ fibre: 'cotton', percent: 100 }],
        knit: 'jersey',
        finish: 'plain',
        dye: 'plain',
        features: [],
        colour: 'black',
        from: 'shop',
      },
    ],
    decorations: [
      decoration({
        layers: [{ kind: 'stones', size: 'SS10', colour: 'crystal', layout: { style: 'single-line' } }],
        ...asked,
      }),
    ],
  }
}

const make = async (asked: Partial<Decoration>): Promise<Made> => {
  const identity = { ticket: 'T-1', order: 'O-1', revision: 1, replaces: null, link: null, changes: [], throwAway: [] }
  const asks = { document: stonesAlone(asked), now: '2026-11-02T09:00', job: 'T-1', floor: emptyShopFloor, identity }
  return makeJob(asks, workshop, await openPress(root))
}

const paperOf = async (made: Made): Promise<string> => {
  const ticket = made.files.find((file) => file.name === 'ticket.pdf')
  if (ticket === undefined) throw new Error(JSON.stringify(made.problems))
  return (await readPdf(ticket.bytes)).text
}

const settings = (made: Made): readonly (number | null)[] => [
  ...new Set(made.result.press.flatMap((step) => (step.action === 'press' ? [step.tenthsC] : []))),
]
const codes = (made: Made): readonly string[] => made.problems.map((problem) => problem.code)

describe('stones alone, a press with a swing of 5 °C and a cap of 170 °C (common practice)', () => {
  it('are set at 329 °F when nobody asks for more', async () => {
    const made = await make({})
    expect(settings(made)).toEqual([fromFahrenheit(329)])
    expect(await paperOf(made)).not.toContain('335 °F 15 s')
  })

  it('are set at 335 °F when the order asks for it, and the paper says that it lies over the margin', async () => {
    const made = await make({ askedTenthsC: fromFahrenheit(335) })
    expect(settings(made)).toEqual([fromFahrenheit(335)])
    expect(codes(made)).toContain('asked-over-margin')
    const paper = await paperOf(made)
    expect(paper).toContain('335 °F')
    expect(paper).toContain('335 °F lies within the press’s swing (9 °F) of the limit of SS10 crystal, 338 °F')
  })

  it('are refused at 339 °F, with the usual setting as the way out', async () => {
    const made = await make({ askedTenthsC: fromFahrenheit(339) })
    expect(made.refused).toBe(true)
    const [stop] = made.result.problems
    expect(stop?.code).toBe('asked-over-cap')
    expect(stop?.text).toContain('the usual setting')
  })
})
