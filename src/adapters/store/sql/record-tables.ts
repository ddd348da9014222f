/** Every table of the records, each after those it refers to. */
export const recordTables = [
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
  'plan',
  'step',
  'outbox',
  'file',
  'file_use',
] as const
export type RecordTable = (typeof recordTables)[number]

/** Counters that go on from the highest number given. */
export const counters = [
  { sequence: 'message_change', table: 'message', column: 'changed' },
  { sequence: 'finding_finding_id_seq', table: 'finding', column: 'finding_id' },
  { sequence: 'event_event_id_seq', table: 'event', column: 'event_id' },
  { sequence: 'stock_move_move_id_seq', table: 'stock_move', column: 'move_id' },
  { sequence: 'outbox_outbox_id_seq', table: 'outbox', column: 'outbox_id' },
] as const
