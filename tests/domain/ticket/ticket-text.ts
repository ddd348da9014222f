import type { Block, Ticket } from '../../../src/domain/ticket/ticket.ts'

const texts = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value]
  if (Array.isArray(value)) return value.flatMap(texts)
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(texts)
  return []
}

/** All text of a document in the order of its blocks. */
export const textOf = (ticket: Ticket): string => ticket.sheets.flatMap((sheet) => sheet.blocks.flatMap(texts)).join('\n')

export const blocksOf = <Kind extends Block['kind']>(ticket: Ticket, kind: Kind): readonly Extract<Block, { kind: Kind }>[] => {
  const isKind = (block: Block): block is Extract<Block, { kind: Kind }> => block.kind === kind
  const all = (blocks: readonly Block[]): readonly Block[] =>
    blocks.flatMap((block) => (block.kind === 'together' ? all(block.blocks) : [block]))
  return ticket.sheets.flatMap((sheet) => all(sheet.blocks).filter(isKind))
}
