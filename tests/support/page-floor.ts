import type { CounterDesk } from '../../src/ports/counter-desk.ts'
import type { PressView, ShelfView } from '../../src/ports/floor-view.ts'

const tiles = ['#7 Núñez M', '#12 Okafor L', '#20 Lee S'].map((label, index) => ({
  line: index + 1,
  label,
  state: index === 0 ? ('done' as const) : ('waiting' as const),
  by: index === 0 ? 'Tomás' : null,
  isChosen: index !== 0,
}))

export const pressAt17: PressView = {
  ticketId: '17',
  title: 'Ticket T0017 r2 · Riverside Volleyball',
  needed: 'Wanted Thursday, March 19, 5 pm',
  holder: 'Tomás',
  gates: [
    { text: 'count-in: passed', isOpen: true },
    { text: 'first piece signed: wants a second person’s signature', isOpen: false },
  ],
  warnings: ['press 1 today: +10 °F on every set point'],
  steps: [
    {
      no: 1001,
      title: 'Cut',
      figures: [],
      cautions: [],
      seconds: null,
      tiles: tiles.map((one) => ({ ...one, state: 'done', isChosen: false })),
      isDone: true,
      isNext: false,
    },
    {
      no: 4,
      title: '4 PRESS, back',
      figures: ['295 °F', '12 s', 'medium 5', 'press 1'],
      cautions: ['hands out before closing'],
      seconds: 12,
      tiles,
      isDone: false,
      isNext: true,
    },
  ],
  bags: [
    { player: 'Lee #20', garments: [{ text: 'Home jersey S', isBagged: false }] },
    { player: 'Núñez #7', garments: [{ text: 'Home jersey M', isBagged: true }] },
  ],
  tick: 't:17:tick:2',
  acts: [{ id: 't:17:pause:2', label: 'Pause', weight: 'plain' }],
  forms: [
    {
      id: 't:17:second-look:2',
      title: 'Second signature',
      fields: [
        { name: 'garment', label: 'Garment', kind: 'select', options: [{ value: 'home', label: 'Home jersey' }], required: true },
        { name: 'photo', label: 'Photo', kind: 'file', options: [], required: false },
      ],
      submit: 'Write it down',
    },
  ],
}

const crystal = {
  item: 'SS10 crystal',
  lot: 'L7',
  bin: 'S6',
  certificate: 'C-1',
  free: '0 pieces',
  reserved: '960 pieces',
} as const

export const shelfOfPages: ShelfView = {
  head: ['Item', 'Short', 'Free', 'Reserved', 'Lot', 'Bin', 'Certificate'],
  groups: [
    { kind: 'short', title: 'Short', rows: [{ ...crystal, short: '40 pieces' }] },
    { kind: 'stones', title: 'Stones', rows: [{ ...crystal, item: 'SS16 crystal', short: '' }] },
  ],
  shopping: { title: 'Shopping list', lines: ['SS10 crystal: 144 pieces; order by Monday, March 16, noon'] },
  coming: { title: 'On its way', lines: [] },
  templates: { title: 'Templates on the shelf', lines: ['box T1, cut 2026-03-01, brushed 24 times'] },
  forms: [
    {
      id: 's:counted',
      title: 'Counted',
      fields: [
        { name: 'item', label: 'What', kind: 'select', options: [{ value: 'stone', label: 'SS10 crystal' }], required: true },
      ],
      submit: 'Write it down',
    },
  ],
}

const listedAs = {
  hours: 'Promised Thursday, March 19, 5 pm',
  setting: '295 °F, press 1',
  stage: 'held',
  by: 'Tomás',
  waits: ['first piece'],
} as const

type Floor = Pick<
  CounterDesk,
  'atPress' | 'openTickets' | 'shelf' | 'needsForm' | 'newCalendar' | 'revokeCalendar' | 'calendar' | 'table'
>

/** The press and the shelf of the desk in memory: one ticket, one short stone. */
export const floorOfPages = (atPress: () => PressView, shelf: () => ShelfView): Floor => {
  const secrets = new Set<string>()
  return {
    atPress: async (ticketId) => (ticketId === '17' ? atPress() : null),
    openTickets: async () => [{ ticketId: '17', label: 'T0017 Riverside Volleyball', ...listedAs }],
    shelf: async () => shelf(),
    needsForm: (action) => action.split(':')[2] === 'spoiled',
    newCalendar: async () => {
      secrets.clear()
      secrets.add('calendar-secret-0001')
      return 'calendar-secret-0001'
    },
    revokeCalendar: async () => secrets.clear(),
    calendar: async (secret) => (secrets.has(secret) ? 'BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n' : null),
    table: async (name) => (name === 'orders' ? 'order,state\r\n' : null),
  }
}
