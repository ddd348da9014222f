/** Every table of the records, each after those it refers to. */
export const recordTables = [
  'simulated_clock',
  'shop',
  'member',
  'key',
  'conversation',
  'message',
  'posted',
  'server',
  'talk',
  'heard',
  'posting',
  'delivery',
  'order',
  'order_revision',
  'row_state',
  'quote',
  'piece',
  'piece_use',
  'ticket',
  'ticket_step',
  'finding',
  'event',
  'stock_move',
  'stock_need',
  'stock_lot',
  'stock_coming',
  'shelf_template',
  'press_check',
  'remake',
  'plan',
  'step',
  'outbox',
  'file',
  'file_use',
] as const
/** The one table that belongs to no shop: all shops of a place share its clock. */
export const placeTables: ReadonlySet<string> = new Set(['simulated_clock'])
/** What other tables come to, made anew by them whenever rows are put back: no backup holds it. */
export const derivedTables = ['stock_sum'] as const
/** What a place is by itself, made with it: no backup holds it either. */
export const ownTables = ['place'] as const
export type RecordTable = (typeof recordTables)[number]

/** Counters that go on from the highest number given. */
export const counters = [
  { sequence: 'message_change', table: 'message', column: 'changed' },
  { sequence: 'finding_finding_id_seq', table: 'finding', column: 'finding_id' },
  { sequence: 'event_event_id_seq', table: 'event', column: 'event_id' },
  { sequence: 'stock_move_move_id_seq', table: 'stock_move', column: 'move_id' },
  { sequence: 'outbox_outbox_id_seq', table: 'outbox', column: 'outbox_id' },
] as const
