import type { Fit, Size } from '../garment/garment.ts'

/** A garment on the shelf as a stock item: what it is, its colour and its size cut. */
export type GarmentItem = { readonly garment: string; readonly colour: string; readonly fit: Fit; readonly size: Size }

const mark = 'garment'

/** Ids hold no colon, so the parts of the name stay apart. Materials and sheets are named by their record's id alone. */
export const garmentItem = ({ garment, colour, fit, size }: GarmentItem): string => [mark, garment, colour, fit, size].join(':')

/** The parts of a garment's name; null for anything else. */
export const readGarmentItem = (item: string): { readonly [part in keyof GarmentItem]: string } | null => {
  const [kind, garment = '', colour = '', fit = '', size = ''] = item.split(':')
  return kind === mark && size !== '' ? { garment, colour, fit, size } : null
}
