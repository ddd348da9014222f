import { offset, outerEdges, type Polygon, type Region, regionArea, united, without } from '../geometry/region.ts'
import type { StoneSetting, StoneStyle } from './layout.ts'

/** Rows keep this much more than the pitch from each other, so that rounding makes no false conflict. */
export const slackOf = (pitch: number): number => pitch / 165

export const pitchOf = ({ hole, web }: Pick<StoneSetting, 'hole' | 'web'>): number => hole + web

export const edgeRoom = ({ hole, edgeGap }: Pick<StoneSetting, 'hole' | 'edgeGap'>): number => edgeGap + hole / 2

/** One row of a piece: its rings, and the channels too narrow for two lines of it, where one line is shared. */
export type Row = { readonly rings: Region; readonly channels: Region; readonly lost: number }

/** A part of a region narrower than this share of p² is rounding, not a channel. */
const CRUMB = 1 / 12

/** The room around a row's area that is narrower than a pitch; empty where the row never meets itself. */
const narrowRoom = (area: Region, pitch: number): Region => {
  const closed = offset(offset(area, pitch / 2), -pitch / 2)
  return separate(without(closed, area))
    .filter((part) => regionArea(part) > pitch * pitch * CRUMB)
    .flat()
}

/** The parts of a region, each outer edge with the holes inside it. */
export const separate = (region: Region): readonly Region[] => {
  const outers: Polygon[][] = []
  for (const polygon of region) if (regionArea([polygon]) > 0) outers.push([polygon])
  const holes = region.filter((polygon) => regionArea([polygon]) < 0)
  for (const hole of holes) {
    const owners = outers.filter(([outer]) => outer !== undefined && hole.every((point) => within(outer, point)))
    const owner = owners.sort((a, b) => regionArea([a[0] ?? []]) - regionArea([b[0] ?? []]))[0]
    owner?.push(hole)
  }
  return outers
}

const within = (polygon: Polygon, { x, y }: { x: number; y: number }): boolean => {
  let inside = false
  let previous = polygon[polygon.length - 1]
  for (const point of polygon) {
    if (previous !== undefined && point.y > y !== previous.y > y) {
      const crossing = point.x + ((y - point.y) / (previous.y - point.y)) * (previous.x - point.x)
      if (x < crossing) inside = !inside
    }
    previous = point
  }
  return inside
}

const holesIn = (region: Region): number => region.filter((polygon) => regionArea([polygon]) < 0).length

/** Rows outside the letters: the first at the edge's room, each next a pitch farther out. */
export const outlineRows = (letters: Region, style: StoneStyle & { style: 'outline' }, setting: StoneSetting): readonly Row[] => {
  const pitch = pitchOf(setting)
  const base = style.contours === 'outer' ? outerEdges(letters) : letters
  const counters = holesIn(base)
  const rows: Row[] = []
  let area = offset(base, edgeRoom(setting))
  for (let row = 0; row < style.rows; row += 1) {
    const channels = narrowRoom(area, pitch)
    if (channels.length > 0) area = united([...area, ...offset(channels, 2)])
    rows.push({ rings: area, channels, lost: Math.max(0, counters - holesIn(area)) })
    area = offset(area, pitch + slackOf(pitch))
  }
  return rows
}

/** The parts of an area that are narrower than a pitch: there one line of stones stands for both sides. */
const narrowParts = (area: Region, pitch: number): Region => {
  const opened = offset(offset(area, -pitch / 2), pitch / 2)
  return separate(without(area, opened))
    .filter((part) => regionArea(part) > pitch * pitch * CRUMB)
    .flat()
}

/** Rows inside the letters, from the edge's room inwards, until so many are laid or nothing is left. */
export const innerRows = (centres: Region, pitch: number, most: number): readonly Row[] => {
  const rows: Row[] = []
  let area = centres
  for (let row = 0; row < most && area.length > 0; row += 1) {
    const channels = narrowParts(area, pitch)
    const rings = channels.length > 0 ? without(area, offset(channels, 2)) : area
    rows.push({ rings, channels, lost: 0 })
    area = offset(rings, -pitch - slackOf(pitch))
  }
  return rows
}

/** Where the centres of stones inside the letters may lie; on bare cloth the hole itself may reach the edge. */
export const innerCentres = (letters: Region, setting: StoneSetting, under: 'vinyl' | 'cloth'): Region =>
  offset(letters, -(under === 'vinyl' ? edgeRoom(setting) : setting.hole / 2))
