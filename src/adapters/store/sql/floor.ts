import type { FloorBook, PressCheck } from '../../../ports/floor-records.ts'
import { json, text } from './json.ts'
import type { Scope } from './tables.ts'

const checkColumns = ['press', 'day', 'setTenths', 'readings', 'correctionTenths', 'verdict', 'by', 'at'] as const
const remakeColumns = [
  'remakeId',
  'orderId',
  'ticketId',
  'line',
  'quantity',
  'reason',
  'whose',
  'photo',
  'cost',
  'by',
  'at',
  'doneAt',
] as const

const checkPress = async ({ db, shopId }: Scope, check: PressCheck): Promise<void> => {
  const row = { ...check, by: text(check.by), readings: json(check.readings) }
  await db
    .insertInto('pressCheck')
    .values({ shopId, ...row })
    .onConflict((on) => on.columns(['shopId', 'press', 'day']).doUpdateSet(row))
    .execute()
}

const remakes = ({ db, shopId }: Scope) =>
  db.selectFrom('remake').select(remakeColumns).where('shopId', '=', shopId).orderBy('at').orderBy('remakeId')

export const floorIn = (scope: Scope): FloorBook => {
  const { db, shopId } = scope
  return {
    checkPress: (check) => checkPress(scope, check),
    pressChecks: (day) =>
      db
        .selectFrom('pressCheck')
        .select(checkColumns)
        .where('shopId', '=', shopId)
        .where('day', '=', day)
        .orderBy('press')
        .execute(),
    addRemake: async (remake) => {
      await db
        .insertInto('remake')
        .values({ shopId, ...remake, by: text(remake.by) })
        .onConflict((on) => on.doNothing())
        .execute()
    },
    remakes: (since) => remakes(scope).where('at', '>=', since).execute(),
    remakesOf: (orderId) => remakes(scope).where('orderId', '=', orderId).execute(),
    finishRemake: async (remakeId, at) => {
      const of = db.updateTable('remake').set({ doneAt: at }).where('shopId', '=', shopId)
      await of.where('remakeId', '=', remakeId).where('doneAt', 'is', null).execute()
    },
  }
}
