import * as z from 'zod'
import { type Hours, hoursSchema } from '../calendar/hours.ts'
import { type FaceListing, faceListingsSchema } from '../face/listing.ts'
import { type Fabric, fabricSchema, type Garment, garmentSchema, idSchema } from '../garment/garment.ts'
import { type Place, placeSchema } from '../garment/place.ts'
import {
  type Auxiliary,
  auxiliarySchema,
  type Colour,
  colourSchema,
  type Stone,
  type StoneSettingRecord,
  stoneSchema,
  stoneSettingSchema,
  stoneSizes,
  type Vinyl,
  vinylClasses,
  vinylSchema,
} from '../material/material.ts'
import { type Machine, machineSchema } from '../press/machine.ts'
import { type PriceList, priceListSchema } from '../price/price-list.ts'
import { type Rulebook, rulebookSchema } from '../rules/rulebook.ts'
import { type StationRecord, stationsSchema } from '../schedule/book/station-records.ts'
import { type Rates, ratesSchema } from '../schedule/work/rates.ts'
import { type Stock, stockSchema } from '../stock/stock.ts'
import { languageCodes } from '../units/language.ts'

/** What the shop is called, where it stands, how it writes things, and its own house figures. */
const profileSchema = z.strictObject({
  id: idSchema,
  name: z.string().min(1),
  zone: z.string().min(1),
  languages: z.array(z.enum(languageCodes)).min(1),
  units: z.strictObject({
    temperature: z.enum(['F', 'C']),
    length: z.enum(['in', 'cm']),
    pressure: z.enum(['gauge', 'psi', 'bar']),
    paper: z.enum(['letter', 'a4']),
  }),
  dateOrder: z.enum(['month-first', 'day-first']),
  /** The cutter's unusable edge, and what its blade takes away and trails by: printed on every sheet. */
  cutter: z.strictObject({
    marginMicrometres: z.int().min(0),
    kerfMicrometres: z.int().min(0),
    bladeOffsetMicrometres: z.int().min(0),
  }),
  holdHours: z.int().positive(),
  sparePercent: z.int().min(0).max(50),
  restBeforeWashHours: z.int().min(0),
  keepPersonalDays: z.int().min(1),
  /** What the shop takes when the customer has not chosen. */
  usual: z.strictObject({
    numberFace: idSchema,
    nameFace: idSchema,
    scriptFace: idSchema,
    vinylClass: z.enum(vinylClasses),
    garment: idSchema,
    stoneSize: z.enum(stoneSizes),
    stoneColour: idSchema,
    overlapMicrometres: z.int().positive(),
    leastNameMicrometres: z.int().positive(),
  }),
  ask: z.string().min(1),
})
export type Profile = z.infer<typeof profileSchema>

/** All records of one shop, each read from its own file of the shop folder. */
export type Shop = {
  readonly profile: Profile
  readonly garments: readonly Garment[]
  readonly fabrics: readonly Fabric[]
  readonly places: readonly Place[]
  readonly colours: readonly Colour[]
  readonly vinyl: readonly Vinyl[]
  readonly stones: readonly Stone[]
  readonly auxiliaries: readonly Auxiliary[]
  readonly stoneSettings: readonly StoneSettingRecord[]
  readonly presses: readonly Machine[]
  readonly rulebooks: readonly Rulebook[]
  readonly prices: PriceList
  readonly stock: Stock
  readonly hours: Hours
  readonly stations: readonly StationRecord[]
  readonly rates: Rates
  readonly faces: readonly FaceListing[]
}

/** Which file of the shop folder holds which records, and its schema. */
export const shopFiles = {
  profile: { file: 'shop.json', schema: profileSchema },
  garments: { file: 'garments.json', schema: z.array(garmentSchema).min(1) },
  fabrics: { file: 'fabrics.json', schema: z.array(fabricSchema).min(1) },
  places: { file: 'places.json', schema: z.array(placeSchema).min(1) },
  colours: { file: 'colours.json', schema: z.array(colourSchema).min(1) },
  vinyl: { file: 'vinyl.json', schema: z.array(vinylSchema).min(1) },
  stones: { file: 'stones.json', schema: z.array(stoneSchema) },
  auxiliaries: { file: 'auxiliaries.json', schema: z.array(auxiliarySchema) },
  stoneSettings: { file: 'stone-settings.json', schema: z.array(stoneSettingSchema) },
  presses: { file: 'presses.json', schema: z.array(machineSchema).min(1) },
  rulebooks: { file: 'rulebooks.json', schema: z.array(rulebookSchema) },
  prices: { file: 'prices.json', schema: priceListSchema },
  stock: { file: 'stock.json', schema: stockSchema },
  hours: { file: 'hours.json', schema: hoursSchema },
  stations: { file: 'stations.json', schema: stationsSchema },
  rates: { file: 'rates.json', schema: ratesSchema },
  faces: { file: 'faces.json', schema: faceListingsSchema },
} satisfies { readonly [K in keyof Shop]: { readonly file: string; readonly schema: z.ZodType<Shop[K]> } }
