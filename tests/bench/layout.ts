import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { loadFaces } from '../../src/adapters/folder/faces.ts'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import type { Face } from '../../src/domain/face/face.ts'
import { faceListingsSchema } from '../../src/domain/face/listing.ts'
import { offset, united } from '../../src/domain/geometry/region.ts'
import type { LayoutCache, StoneSetting, StoneStyle, TextShape } from '../../src/domain/layout/layout.ts'
import { placeStones } from '../../src/domain/layout/place-stones.ts'
import { roomForRows } from '../../src/domain/layout/room.ts'
import { setText } from '../../src/domain/layout/set-text.ts'
import { letterRegion } from '../../src/domain/layout/vinyl-shape.ts'
import { fromInches, micrometres } from '../../src/domain/units/units.ts'
import { type Bench, medianMs } from './bench.ts'

const NAMES =
  'ANDERSSON BALLESTER CARVALHOS DELACRUZE ESPINOSAS FERNANDES GONZALEZZ HERNANDEZ IBARRURIA JOHANNSON KOWALSKIS LINDQVIST MONTGOMER NIKOLAIDI OKONKWOOO PETERSSON QUINTEROS RODRIGUEZ SANTAMARI THOMASSON UNDERWOOD VILLANUEV WASHINGTO XIMENEZAS YAMAGUCHI ZIMMERMAN ABERNATHY BRANDENBU CALLAGHAN DRINKWATE EASTERLIN FITZGERAL GALLAGHER HARRINGTO ISHIKAWAS JEFFERSON KAMINSKIS LANCASTER MCALLISTE NAKAMURAS'.split(
    ' ',
  )

const setting = (size: string, hole: number): StoneSetting => ({
  size,
  hole: micrometres(hole),
  web: micrometres(500),
  edgeGap: micrometres(1_000),
})

const digits = { style: { style: 'outline', rows: 2, contours: 'both' } satisfies StoneStyle, setting: setting('SS10', 3_300) }
const letters = { style: { style: 'outline', rows: 1, contours: 'both' } satisfies StoneStyle, setting: setting('SS6', 2_500) }

const shapeOf = (face: Face, text: string, inches: number, plan: typeof digits | typeof letters): TextShape => {
  const shape = setText({ face, text, height: fromInches(inches), leastGap: roomForRows(plan.setting, plan.style) })
  if (!shape.ok) throw new Error(`${text} cannot be set`)
  return shape.value
}

const stonesOf = (shape: TextShape, plan: typeof digits | typeof letters, cache: LayoutCache): number => {
  const layout = placeStones(shape, { ...plan, cache })
  if (!layout.ok) throw new Error(`${shape.text} cannot be laid out`)
  return layout.value.count
}

/** A roster of 40: two 8-inch digits in two rows of SS10, a name of nine 2-inch letters in one row of SS6. */
const layRoster = (numbers: Face, names: Face, cache: LayoutCache): number =>
  NAMES.reduce((sum, name, index) => {
    const number = shapeOf(numbers, String(10 + ((index * 7) % 90)), 8, digits)
    return sum + stonesOf(number, digits, cache) + stonesOf(shapeOf(names, name, 2, letters), letters, cache)
  }, 0)

/** The floor: every letter's curves flattened, united and widened once, no stone placed. */
const flattenAndWiden = (shapes: readonly TextShape[]): void => {
  for (const shape of shapes) for (const letter of shape.letters) offset(united(letterRegion(letter, 20)), micrometres(2_650))
}

export const bench: Bench = async ({ quick }) => {
  const root = projectRoot()
  const listings = faceListingsSchema.parse(JSON.parse(await readFile(join(root, 'templates', 'shop', 'faces.json'), 'utf8')))
  const faces = await loadFaces(listings, { root, shop: join(root, 'templates', 'shop') })
  if (!faces.ok) throw new Error('the faces cannot be loaded')
  const [numbers, names] = [faces.value.get('quantico-700'), faces.value.get('anton')]
  if (numbers === undefined || names === undefined) throw new Error('the faces are not offered')
  const rounds = quick ? 3 : 11
  const warm = new Map()
  const stones = layRoster(numbers, names, warm)
  const shapes = NAMES.flatMap((name, index) => [
    shapeOf(numbers, String(10 + ((index * 7) % 90)), 8, digits),
    shapeOf(names, name, 2, letters),
  ])
  const floor = medianMs(rounds, () => flattenAndWiden(shapes))
  const cold = medianMs(rounds, () => layRoster(numbers, names, new Map()))
  const cached = medianMs(rounds, () => layRoster(numbers, names, warm))
  return [
    { name: 'stones of the roster of 40', value: stones, unit: 'stones' },
    { name: 'distinct pieces', value: warm.size, unit: 'pieces' },
    { name: 'floor: flatten and widen alone', value: floor, unit: 'ms' },
    { name: 'from cold', value: cold, unit: 'ms' },
    { name: 'from cold, stones per second', value: Math.round(stones / (cold / 1000)), unit: 'stones/s' },
    { name: 'warm', value: cached, unit: 'ms' },
    { name: 'cold against the floor', value: cold / floor, unit: 'times', most: 15 },
    { name: 'warm against the floor', value: cached / floor, unit: 'times', most: 3 },
  ]
}
