import { setTimeout as pause } from 'node:timers/promises'
import { expect, it } from 'vitest'
import { inOrder } from '../../../../src/adapters/chat/platform/in-order.ts'

it('does the work of one name in its order, whatever became of the piece before, and lets other names go on meanwhile', async () => {
  const told = inOrder()
  const done: string[] = []
  const slow = told('room', async () => {
    await pause(30)
    done.push('slow')
  })
  const broken = told('room', async () => {
    done.push('broken')
    throw new Error('it broke')
  })
  const after = told('room', async () => {
    done.push('after')
  })
  await told('another room', async () => {
    done.push('elsewhere')
  })
  expect(done).toEqual(['elsewhere'])
  await slow
  await expect(broken).rejects.toThrow('it broke')
  await after
  expect(done).toEqual(['elsewhere', 'slow', 'broken', 'after'])
})
