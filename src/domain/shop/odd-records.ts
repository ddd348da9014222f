import { oddEntries } from '../material/plausible.ts'
import { way } from '../press/way.ts'
import { type ProblemOf, pointer } from '../result/result.ts'
import type { RuleProblems } from '../rules/problems.ts'
import { type Shop, shopFiles } from './shop.ts'

type OddRecord = ProblemOf<Pick<RuleProblems, 'implausible-record'>>

const oddIn = (shop: Shop, part: 'vinyl' | 'stones'): readonly OddRecord[] =>
  shop[part].flatMap((material, index) =>
    oddEntries(material).map(({ field, value, least, most, source }) => ({
      code: 'implausible-record',
      at: `${shopFiles[part].file}#${pointer(index)}/${field}`,
      severity: 'caution',
      facts: { material: material.id, field, value, least, most, source, ways: [way('ask-owner')] },
    })),
  )

/**
 * Entries of the shop's material records that lie outside what makers of their class publish, each with `file#/path`. They are
 * cautions: the maker's own sheet decides, but a slip of the pen can burn a garment.
 */
export const oddRecords = (shop: Shop): readonly OddRecord[] => [...oddIn(shop, 'vinyl'), ...oddIn(shop, 'stones')]
