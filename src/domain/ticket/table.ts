import type { Cell, Column, TableBlock } from './ticket.ts'

export const cell = (text: string, more: Partial<Pick<Cell, 'boxes' | 'bold'>> = {}): Cell => ({
  text,
  boxes: 0,
  bold: false,
  ...more,
})

export const column = (title: string, share: number, align: Column['align'] = 'left'): Column => ({ title, share, align })

export const table = (columns: readonly Column[], groups: TableBlock['groups']): TableBlock => ({
  kind: 'table',
  columns,
  groups,
  style: 'body',
})
