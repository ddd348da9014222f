import type { Fit, Garment } from '../../garment/garment.ts'
import type { Shop } from '../../shop/shop.ts'
import type { Draft, GarmentWish } from '../draft.ts'
import type { KnownGarment } from '../known.ts'

/** A garment of the draft with what the shop knows of it; `assumed` names the keys that nobody said. */
export type ComposedGarment = {
  readonly known: KnownGarment
  readonly record: Garment | null
  readonly assumed: readonly string[]
}

/** The cloth of the shop's record does not contradict what was said of the cloth. */
const agrees = (shop: Shop, wish: GarmentWish, record: Garment): boolean => {
  const fabric = shop.fabrics.find((known) => known.id === record.fabric)
  if (fabric === undefined) return false
  if (wish.knit !== undefined && wish.knit !== fabric.knit) return false
  if (wish.dye === 'sublimated' && fabric.dye !== 'sublimated') return false
  const wanted = wish.features ?? []
  if (!wanted.every((feature) => record.features.includes(feature))) return false
  const fibres = wish.fibres
  if (fibres === undefined || fibres === 'unknown' || fabric.fibres === 'unknown') return true
  const label = fabric.fibres
  return fibres.every(({ fibre }) => label.some((share) => share.fibre === fibre)) && fibres.length === label.length
}

const babySizes: readonly string[] = ['2T', '3T', '4T', '5T']

/** The cuts in which a garment is wanted, as far as they were said: of it, or of those who wear it. */
export const fitsWanted = ({ rows, tally, garments }: Draft, id: string): readonly Fit[] => {
  const only = Object.keys(garments).length === 1
  const worn = [...Object.values(rows), ...Object.values(tally)].filter(
    ({ garment }) => garment === id || (garment === undefined && only),
  )
  const said = [garments[id], ...worn].flatMap((one): readonly (Fit | undefined)[] =>
    one === undefined ? [] : [babySizes.includes(one.size ?? '') ? 'toddler' : one.fit],
  )
  return [...new Set(said)].filter((fit) => fit !== undefined)
}

/** The shop's record for a garment: named, else the first of its kind that agrees, those that come in the cuts that are wanted and the usual one first. */
export const recordFor = (shop: Shop, wish: GarmentWish, fits: readonly Fit[] = []): Garment | null => {
  if (wish.from === 'customer') return null
  if (wish.catalogue !== undefined) return shop.garments.find((record) => record.id === wish.catalogue) ?? null
  const usual = shop.garments.filter((record) => record.id === shop.profile.usual.garment)
  const ofKind = [...usual, ...shop.garments].filter((record) => record.kind === (wish.kind ?? 'jersey'))
  const agreeing = ofKind.filter((record) => agrees(shop, wish, record))
  const cut = agreeing.filter(({ cuts }) => fits.every((fit) => cuts.some((one) => one.fit === fit)))
  const fitting = cut.length > 0 ? cut : agreeing
  const inColour = fitting.find((record) => wish.colour === undefined || record.colours.includes(wish.colour))
  return inColour ?? fitting[0] ?? ofKind[0] ?? null
}

const composeGarment = (shop: Shop, id: string, draft: Draft): ComposedGarment => {
  const wish = draft.garments[id] ?? {}
  const record = recordFor(shop, wish, fitsWanted(draft, id))
  const fabric = shop.fabrics.find((known) => known.id === record?.fabric)
  const own = wish.from === 'customer'
  const said = { ...wish, features: wish.features ?? record?.features ?? [] }
  const known: KnownGarment = {
    id,
    ...(record === null || own ? {} : { catalogue: record.id }),
    fibres: wish.fibres ?? fabric?.fibres ?? 'unknown',
    knit: wish.knit ?? fabric?.knit ?? 'unknown',
    finish: wish.finish ?? fabric?.finish ?? 'unknown',
    dye: wish.dye ?? fabric?.dye ?? 'unknown',
    features: [...said.features],
    ...(wish.colour === undefined ? {} : { colour: wish.colour }),
    from: wish.from ?? 'shop',
  }
  const keys = ['fibres', 'knit', 'finish', 'dye', 'features', 'from', 'catalogue'] as const
  const assumed = keys.filter((key) => wish[key] === undefined && known[key] !== undefined)
  return { known, record, assumed }
}

/** The garments of the order in the order they were named, each with the shop's record where the shop sells it. */
export const composeGarments = (shop: Shop, draft: Draft): readonly ComposedGarment[] =>
  Object.keys(draft.garments).map((id) => composeGarment(shop, id, draft))

/** The garments that every player of the roster wears: home and away when there are such, else the first jersey, else the first. */
export const playersGarments = (draft: Draft): readonly string[] => {
  const ids = Object.keys(draft.garments)
  const too = ids.filter((id) => draft.garments[id]?.each === true)
  const roles = ids.filter((id) => id === 'home' || id === 'away')
  if (roles.length > 0) return [...new Set([...roles, ...too])]
  const jersey = ids.find((id) => draft.garments[id]?.kind === 'jersey')
  const first = jersey ?? ids[0]
  return first === undefined ? [] : [...new Set([first, ...too])]
}
