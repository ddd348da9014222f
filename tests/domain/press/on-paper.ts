import type { PressJob } from '../../../src/domain/press/job.ts'
import type { Machine } from '../../../src/domain/press/machine.ts'
import type { PressStep } from '../../../src/domain/press/press-plan.ts'
import type { LayerFacts, TicketFacts } from '../../../src/domain/ticket/facts.ts'
import { footballFacts, homeGarment, rosterRow, white } from '../ticket/facts.builder.ts'

const layerFacts = (job: PressJob): readonly LayerFacts[] =>
  job.garments.flatMap((garment) =>
    garment.places.flatMap((place) =>
      place.layers.map(
        ({ id, material }): LayerFacts =>
          material.kind === 'vinyl'
            ? {
                id,
                decoration: place.decoration,
                kind: 'vinyl',
                class: material.class,
                colour: white,
                material: material.id,
                shape: 'face',
              }
            : {
                id,
                decoration: place.decoration,
                kind: 'stones',
                size: material.size,
                colour: white,
                material: material.id,
                style: { style: 'outline', rows: 1, contours: 'outer' },
              },
      ),
    ),
  )

/** What a ticket about a job at the press is made from, everything that is not about the press left as it is anywhere. */
export const pressFacts = (
  job: PressJob,
  pressed: { readonly machines: readonly Machine[]; readonly steps: readonly PressStep[] },
  show: TicketFacts['show'],
): TicketFacts => {
  const roster = job.garments.flatMap((garment) => garment.lines.map(({ line }) => rosterRow(line, { garment: garment.id })))
  return footballFacts(1, {
    show,
    roster,
    garments: job.garments.map((garment) => ({ ...homeGarment(roster), id: garment.id })),
    layers: layerFacts(job),
    placements: [],
    machines: pressed.machines,
    press: pressed.steps,
    gates: [],
  })
}
