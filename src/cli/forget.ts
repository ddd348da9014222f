import { projectRoot } from '../adapters/folder/root.ts'
import { migrate } from '../adapters/store/sql/migrate.ts'
import { type Config, readConfig } from '../config.ts'
import type { Desk } from '../desk/service/desk.ts'
import { forgetDue, forgetOrder } from '../desk/service/talk/forget-order.ts'
import { ok, type Problem, type Result } from '../domain/result/result.ts'
import { type Borrowed, borrowBase, hasRecords } from '../wiring/borrow-base.ts'
import { openDesk } from '../wiring/open-place.ts'
import { openWorkshop } from '../wiring/open-workshop.ts'
import { answerDone, answerRefused } from './answer.ts'
import { isOn, runCommand, UsageError, type Words } from './command.ts'

const usage = `forget: deletes the names, contacts, pictures and words of an order's people

  npm run -s forget -- <order> [--json]
  npm run -s forget -- --due [--json]

--due takes every order that was handed over as long ago as the shop keeps such things (keepPersonalDays in shop.json); a
running service does that by itself. Events keep ids and facts. An order that is being made is refused. Backups that were made
before still hold what is deleted here.`

type Wanted = { readonly order: string | null }

const wantedOf = (words: Words): Wanted => {
  const [order, ...more] = words.positionals
  const due = isOn(words, 'due')
  if (more.length > 0 || due === (order !== undefined)) throw new UsageError('say one order, or --due')
  return { order: order ?? null }
}

const forgetIn = async (desk: Desk, { order }: Wanted): Promise<Result<readonly string[], Problem>> => {
  if (order === null) return ok(await forgetDue(desk))
  const forgotten = await forgetOrder(desk, order)
  return forgotten.ok ? ok([order]) : forgotten
}

const withDesk = async (
  config: Config,
  wanted: Wanted,
  { base, alone }: Borrowed,
): Promise<Result<readonly string[], Problem>> => {
  const root = projectRoot()
  const { owner, role } = base
  const migrated = alone ? await migrate({ owner, role, root }) : ok(undefined)
  if (!migrated.ok) return migrated
  const desk = await openDesk(config, openWorkshop(root, config.shop), base.service)
  if (!desk.ok) return desk
  try {
    return await forgetIn(desk.value, wanted)
  } finally {
    await desk.value.store.close()
  }
}

const run = async (words: Words): Promise<number> => {
  const wanted = wantedOf(words)
  const config = readConfig(projectRoot())
  if (!config.ok) return answerRefused(words, config.problems)
  if (!hasRecords(config.value)) {
    const facts = { folder: config.value.data }
    return answerRefused(words, [{ code: 'store-nothing-there', at: '', severity: 'stop', facts }])
  }
  const forgotten = await borrowBase(config.value, (borrowed) => withDesk(config.value, wanted, borrowed))
  if (!forgotten.ok) return answerRefused(words, forgotten.problems)
  const orders = forgotten.value
  const sentence = orders.length === 0 ? 'Nobody is due to be forgotten.' : `Forgotten: ${orders.join(', ')}`
  return answerDone(words, { forgotten: orders }, sentence)
}

await runCommand({ usage, options: { due: { type: 'boolean' }, json: { type: 'boolean' } }, run })
