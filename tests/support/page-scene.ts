import { deflateSync } from 'node:zlib'
import type { Channel, Message } from '../../src/ports/chat.ts'
import { bench, message, ownerChannel, type PageDesk } from './page-desk.ts'

const chunk = (type: string, data: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data])
  const length = Buffer.alloc(4)
  length.writeUInt32BE(data.length)
  const sum = Buffer.alloc(4)
  sum.writeUInt32BE(crc(body))
  return Buffer.concat([length, body, sum])
}

const crc = (bytes: Buffer): number => {
  let register = 0xffffffff
  for (const byte of bytes) {
    register ^= byte
    for (let bit = 0; bit < 8; bit += 1) register = register & 1 ? (register >>> 1) ^ 0xedb88320 : register >>> 1
  }
  return (register ^ 0xffffffff) >>> 0
}

/** A plain navy picture, made here (PNG, second edition: 8-bit RGB, no filter). */
export const navyPicture = (width: number, height: number): Uint8Array => {
  const row = Buffer.concat([Buffer.from([0]), Buffer.alloc(width * 3, Buffer.from([24, 40, 92]))])
  const size = Buffer.alloc(13)
  size.writeUInt32BE(width, 0)
  size.writeUInt32BE(height, 4)
  size.set([8, 2, 0, 0, 0], 8)
  const pixels = deflateSync(Buffer.concat(Array.from({ length: height }, () => row)))
  return new Uint8Array(
    Buffer.concat([
      Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
      chunk('IHDR', size),
      chunk('IDAT', pixels),
      chunk('IEND', Buffer.alloc(0)),
    ]),
  )
}

export const smallPdf = new TextEncoder().encode('%PDF-1.4\n1 0 obj<</Type/Catalog>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF\n')

const bot = { kind: 'bot', name: 'bot' } as const

/** A customer's message with every kind of part a message may have. */
export const everything: Message = message({
  blocks: [
    { kind: 'text', text: 'Here is your proof. Two pictures of one jersey, front and back.', tone: 'plain' },
    { kind: 'text', text: 'Numbers in varsity block, 8 inches on the back.', tone: 'assumed' },
    { kind: 'text', text: 'Line 4: no stones on a garment for a child under three.', tone: 'stop' },
    {
      kind: 'text',
      text: 'Red polyester can bleed into white vinyl: one piece is tested and looked at after 24 hours.',
      tone: 'caution',
    },
    {
      kind: 'text',
      text: 'Thursday 5 pm if you sign off by Tuesday noon and your jerseys are here Wednesday 10 am.',
      tone: 'good',
    },
    { kind: 'list', title: 'What we still need', items: ['Sizes of rows 3 and 9', 'When the bus leaves on Friday'] },
    {
      kind: 'fields',
      fields: [
        { name: 'Garment', value: 'Mesh jersey, navy', assumed: false },
        { name: 'Number', value: 'White vinyl, two rows of SS10 crystal', assumed: true },
      ],
    },
    {
      kind: 'table',
      head: ['Line', 'No.', 'Name', 'Size'],
      rows: [
        ['1', '07', 'Núñez', 'M'],
        ['2', '12', "O'Brien-McAllister", 'L'],
        ['3', '20', 'Okafor Jr.', 'later'],
      ],
    },
    { kind: 'progress', text: 'Laying out stones', done: 9, of: 14 },
  ],
  picture: { file: 'proof', alt: 'Navy jersey, back: name NÚÑEZ over number 07' },
  file: { file: 'list', name: 'roster as read.csv', mime: 'text/csv', bytes: 512 },
  actions: [
    { id: 'o:17:sign-off:2', label: 'Sign off', weight: 'main' },
    { id: 'o:17:change:2', label: 'Change something', weight: 'plain' },
    { id: 'o:17:cancel:2', label: 'Cancel the order', weight: 'grave' },
  ],
  choice: {
    id: 'age',
    label: 'Is anyone on this list 12 or younger?',
    options: [
      { value: 'no', label: 'No, all 13 or older' },
      { value: '3-12', label: 'Yes' },
    ],
  },
  form: {
    id: 'bus',
    title: 'When and where',
    fields: [
      { name: 'hour', label: 'Hour the bus leaves', kind: 'line', options: [], required: true },
      { name: 'note', label: 'Anything else', kind: 'lines', options: [], required: false },
      { name: 'over', label: 'Hand over', kind: 'select', options: [{ value: 'field', label: 'At the field' }], required: false },
      { name: 'logo', label: 'Your artwork', kind: 'file', options: [], required: false },
    ],
    submit: 'That is it',
  },
})

/** A conversation as a customer would see it halfway, with its files. */
export const layOutConversation = async (desk: PageDesk): Promise<{ readonly token: string; readonly channel: Channel }> => {
  const { token, id } = await desk.startConversation('en')
  const channel: Channel = { kind: 'conversation', id }
  const words = '14 volleyball jerseys, navy, numbers and names with stones.\nGame is Friday the 20th.'
  await desk.hear(id, { kind: 'said', id: 'first-words', text: words, files: [] })
  desk.putFile(channel, 'proof', { name: 'proof.png', mime: 'image/png', bytes: navyPicture(480, 560) })
  desk.putFile(channel, 'list', { name: 'roster as read.csv', mime: 'text/csv', bytes: new TextEncoder().encode('7,Nunez,M\n') })
  desk.post(channel, bot, everything)
  return { token, channel }
}

/** Two tickets on the bench, one with its paper, and what a member said of it. */
export const layOutBench = (desk: PageDesk): void => {
  desk.putFile(bench, 'ticket-17', { name: 'ticket-17-2.pdf', mime: 'application/pdf', bytes: smallPdf })
  desk.putFile(bench, 'proof-17', { name: 'proof-17.png', mime: 'image/png', bytes: navyPicture(360, 420) })
  desk.post(
    bench,
    bot,
    message({
      blocks: [
        { kind: 'text', text: 'Ticket 17, revision 2: Riverside Volleyball, 14 garments', tone: 'plain' },
        {
          kind: 'fields',
          fields: [
            { name: 'Wanted', value: 'Thursday, March 19, 5 pm', assumed: false },
            { name: 'Press', value: 'Press 1: 285 °F, 12 s, medium, pillow in', assumed: false },
          ],
        },
        { kind: 'text', text: 'Count-in before any vinyl is cut. Water drops on the mesh.', tone: 'caution' },
      ],
      picture: { file: 'proof-17', alt: 'Navy jersey, back' },
      file: { file: 'ticket-17', name: 'ticket-17-2.pdf', mime: 'application/pdf', bytes: 184_320 },
      actions: [
        { id: 't:17:take:2', label: 'Take', weight: 'main' },
        { id: 't:17:hand-on:2', label: 'Hand on', weight: 'plain' },
        { id: 't:17:spoiled:2', label: 'Spoiled', weight: 'grave' },
      ],
    }),
  )
  desk.post(
    bench,
    { kind: 'staff', name: 'Tomás' },
    message({ blocks: [{ kind: 'text', text: 'Counted in: 14 of 14.', tone: 'plain' }] }),
  )
}

const sections: readonly (readonly [string, string])[] = [
  ['leaves', 'Leaves today or tomorrow, not bagged'],
  ['not-in', 'Game in 3 days, garments not counted in'],
  ['waiting', 'Waiting for the customer'],
  ['press', 'Press list by temperature'],
  ['shorts', 'Shorts, with order-by hour'],
  ['remakes', 'Remakes and cost'],
  ['off', 'Who is off'],
  ['uncollected', 'Bagged, not collected, unpaid'],
]

/** A morning with two busy sections and the rest quiet. */
export const layOutMorning = (desk: PageDesk): void => {
  desk.setMorning({
    date: '2026-03-16',
    sections: sections.map(([code, title], index) => ({
      code,
      title,
      lines:
        index < 2
          ? [
              {
                text: 'Riverside Volleyball, 14 jerseys, 9 pressed',
                todo: 'Press the last 5 on press 1 by noon',
                order: '17',
                ticket: '17',
              },
            ]
          : [],
    })),
  })
  desk.post(
    ownerChannel,
    bot,
    message({ blocks: [{ kind: 'text', text: 'Order 21 asks for a deposit to be waived.', tone: 'plain' }] }),
  )
}
