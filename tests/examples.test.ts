import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { projectRoot } from '../src/adapters/folder/root.ts'
import { orderSchema } from '../src/domain/order/order.ts'
import { readBook } from '../src/domain/schedule/book/book-record.ts'

const example = (name: string): unknown => JSON.parse(readFileSync(join(projectRoot(), 'templates/examples', name), 'utf8'))

test('the order and the book that a newcomer tries first can be read', () => {
  expect(orderSchema.parse(example('order.json')).roster).toHaveLength(3)
  expect(readBook(example('book.json'))).toMatchObject({ ok: true })
})
