import type { Stone, Vinyl } from '../material/material.ts'
import { ok, type Result, refuse } from '../result/result.ts'
import type { Catalogue } from './catalogue.ts'
import type { Layer, StoneLayer, VinylLayer } from './order.ts'
import type { OrderProblem } from './problems.ts'

type Choice = Result<Vinyl | Stone, OrderProblem>

const vinylLength = (catalogue: Catalogue, id: string): number =>
  catalogue.stock.vinyl.find((entry) => entry.material === id)?.lengthMicrometres ?? 0

const stonePieces = (catalogue: Catalogue, id: string): number =>
  catalogue.stock.stones.find((entry) => entry.material === id)?.pieces ?? 0

const byId = (catalogue: Catalogue, layer: Layer, at: string): Choice => {
  const id = layer.material ?? ''
  const records: readonly (Vinyl | Stone)[] = [...catalogue.vinyls, ...catalogue.stones]
  const record = records.find((known) => known.id === id)
  if (record === undefined) return refuse({ code: 'material-unknown', at: `${at}/material`, severity: 'stop', facts: { id } })
  if ((record.kind === 'vinyl') !== (layer.kind === 'vinyl')) {
    return refuse({ code: 'material-kind', at: `${at}/material`, severity: 'stop', facts: { id, wanted: layer.kind } })
  }
  return ok(record)
}

/** Of several records that fit, the one of which most lies on the shelf; equal shelves keep the shop's own order. */
const fullest = <T extends { readonly id: string }>(records: readonly T[], shelf: (id: string) => number): T | undefined =>
  records.reduce<T | undefined>((best, one) => (best === undefined || shelf(one.id) > shelf(best.id) ? one : best), undefined)

const vinylFor = (catalogue: Catalogue, layer: VinylLayer, at: string): Choice => {
  const ofClass = catalogue.vinyls.filter((vinyl) => vinyl.class === layer.class)
  const found = fullest(
    ofClass.filter((vinyl) => vinyl.colour === layer.colour),
    (id) => vinylLength(catalogue, id),
  )
  if (found !== undefined) return ok(found)
  const colours = [...new Set(ofClass.map((vinyl) => vinyl.colour))]
  const facts = { kind: 'vinyl', what: layer.class, colour: layer.colour, colours } as const
  return refuse({ code: 'material-not-stocked', at: `${at}/colour`, severity: 'stop', facts })
}

const stoneFor = (catalogue: Catalogue, layer: StoneLayer, at: string): Choice => {
  const ofSize = catalogue.stones.filter((stone) => stone.size === layer.size)
  const found = fullest(
    ofSize.filter((stone) => stone.colour === layer.colour),
    (id) => stonePieces(catalogue, id),
  )
  if (found !== undefined) return ok(found)
  const colours = [...new Set(ofSize.map((stone) => stone.colour))]
  const facts = { kind: 'stones', what: layer.size, colour: layer.colour, colours } as const
  return refuse({ code: 'material-not-stocked', at: `${at}/colour`, severity: 'stop', facts })
}

/** The material record a layer is made from: the one it names, else the shop's by class or size and colour. */
export const chooseMaterial = (catalogue: Catalogue, layer: Layer, at: string): Choice => {
  if (layer.material !== undefined) return byId(catalogue, layer, at)
  return layer.kind === 'vinyl' ? vinylFor(catalogue, layer, at) : stoneFor(catalogue, layer, at)
}
