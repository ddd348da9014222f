import * as z from 'zod'

export const collectorSchema = z.looseObject({ collector: z.string().trim().max(60).default('') })

const plain = (name: string): string =>
  name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()

/** Whether who came is who the order names, accents and case aside. */
export const isNamedCollector = (named: string, came: string): boolean => plain(named) === plain(came)
