import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { projectRoot } from '../adapters/folder/root.ts'
import { resultFile } from '../desk/file-names.ts'
import { emptyShopFloor } from '../desk/floor.ts'
import { type Made, makeJob, refusedJob } from '../desk/make-job.ts'
import type { Workshop } from '../desk/work-out.ts'
import { ok, type Result, refuse } from '../domain/result/result.ts'
import { openPress } from '../wiring/open-press.ts'
import { openWorkshop } from '../wiring/open-workshop.ts'
import { plainProblems, problemLines, recordLines } from '../wiring/say-problems.ts'
import { type Command, exitCodes, isOn, runCommand, text, UsageError, type Words } from './command.ts'
import { shopNow } from './shop-clock.ts'
import { ticketNumber, writeJob } from './write-job.ts'

const usage = `make: the whole job for one order, without database or chat

  npm run -s make -- order.json --out <folder> [--shop <folder>] [--now YYYY-MM-DDTHH:MM] [--json]

Writes ticket.pdf, price.pdf, care.pdf, preview.png, cut/*.svg, cut/*.dxf, templates.pdf (new stone templates one to one),
cut.zip (all for the cutter in one archive) and result.json into the folder; a refused order writes result.json only.
Exit code 0: made. 1: refused, every problem is said with its place. 2: the command was not understood.`

const readOrder = async (file: string | undefined): Promise<Result<unknown>> => {
  if (file === undefined) throw new UsageError('which order? Name a JSON file.')
  const content = await readFile(file, 'utf8').catch(() => null)
  if (content === null) throw new UsageError(`the file "${file}" cannot be read: check the name and that you may read it`)
  try {
    return ok(JSON.parse(content))
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    return refuse({ code: 'order-not-json', at: '', severity: 'stop', facts: { reason } })
  }
}

const makeFrom = async (document: Result<unknown>, workshop: Workshop, given: string | undefined): Promise<Made> => {
  if (!document.ok) return refusedJob({ order: null, problems: document.problems, work: null }, workshop.shop)
  const now = shopNow(given, workshop.shop.profile.zone)
  const ticket = ticketNumber(document.value)
  const identity = { ticket, order: ticket, revision: 1, replaces: null, link: null, changes: [], throwAway: [] }
  return makeJob(
    { document: document.value, now, job: ticket, floor: emptyShopFloor, identity },
    workshop,
    await openPress(projectRoot()),
  )
}

const report = (made: Made, out: string, asJson: boolean): string => {
  if (asJson) return `${JSON.stringify(made.result)}\n`
  const files = made.result.files.map((name) => `${join(out, name)}\n`)
  return `${problemLines(made.result.problems)}${files.join('')}${join(out, resultFile)}\n`
}

const run = async (words: Words): Promise<number> => {
  const document = await readOrder(words.positionals[0])
  const out = text(words, 'out')
  if (out === undefined) throw new UsageError('where to? Name a folder with --out.')
  const workshop = await openWorkshop(projectRoot(), text(words, 'shop'))
  if (!workshop.ok) {
    process.stderr.write(problemLines(plainProblems(workshop.problems)))
    return exitCodes.refused
  }
  process.stderr.write(recordLines(workshop.value.shop))
  const made = await makeFrom(document, workshop.value, text(words, 'now'))
  await writeJob(out, made)
  process.stdout.write(report(made, out, isOn(words, 'json')))
  return made.refused ? exitCodes.refused : exitCodes.done
}

const make: Command = {
  usage,
  options: { out: { type: 'string' }, shop: { type: 'string' }, now: { type: 'string' }, json: { type: 'boolean' } },
  run,
}

await runCommand(make)
