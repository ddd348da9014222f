import { afterAll, beforeAll, expect, test } from 'vitest'
import { conversationChannel, shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { messageFrom, ticketFrom } from '../../src/desk/service/records/records.ts'
import { startConversation } from '../../src/domain/understanding/conversation.ts'
import { localMinute, openTestDesk, says, work } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { sign, ticketOf } from '../support/floor.ts'
import { pdfPages } from '../support/pdf-text.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const words = `Hola, soy Carmen Ríos. Necesito 3 playeras negras de algodón con números blancos en la espalda y el nombre arriba. Equipo Halcones, futbol. Para el 17 de diciembre a las 5 de la tarde. Todos son mayores de 13.
1 Peña CH
4 Íñiguez M
7 Muñoz G`

const paperOf = async (desk: WorkerDesk, channel: string, hash: string): Promise<string> => {
  const file = await desk.store.shop(desk.shopId).files.read(channel, hash)
  if (file === null) throw new Error(`${channel} keeps no ${hash}`)
  return (await pdfPages(file.bytes)).join('\n')
}

test('a ticket is written in what is read at the press, the papers of its customer in theirs', {
  timeout: 60_000,
}, async () => {
  const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-30T09:00') })
  const shop = desk.store.shop(desk.shopId)
  const id = 'c-halcones'
  unwrap(await shop.conversations.add(id, startConversation({ id, person: { id, name: null }, language: 'es' })))
  await says(desk, id, words)
  await work(desk)
  await sign(desk, id)
  const ticket = await shop.tickets.read(await ticketOf(desk, id))
  const paper = await paperOf(desk, shopChannel('bench'), ticketFrom(ticket?.body).pdf)
  expect(paper).toContain('PRESS BOX')
  expect(paper).toContain('READS BACKWARDS')
  expect(paper).toContain('WARNING')
  expect(paper).toContain('black cotton tee')
  expect(paper).not.toContain('ADVERTENCIA')
  const said = (await shop.messages.after(conversationChannel(id), 0)).map(({ body }) => messageFrom(body))
  const care = said.flatMap(({ papers }) => papers ?? []).find(({ name }) => name.startsWith('care'))
  const own = await paperOf(desk, conversationChannel(id), care?.file ?? '')
  expect(own).toMatch(/lavar/i)
  expect(orderIdOf(id)).toBe(ticket?.orderId)
})
