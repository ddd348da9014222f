import { execFileSync, spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../..')
const made: string[] = []

afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true })
})

type Files = Readonly<Record<string, string>>

/** A small repository with the real rules, the real check and only the given files. */
const checkOf = (files: Files): { readonly status: number | null; readonly said: string } => {
  const folder = mkdtempSync(join(tmpdir(), 'directions-'))
  made.push(folder)
  for (const name of ['.ci', '.dependency-cruiser.mjs', 'tsconfig.json', 'package.json']) {
    cpSync(join(root, name), join(folder, name), { recursive: true })
  }
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'))
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(join(folder, dirname(file)), { recursive: true })
    writeFileSync(join(folder, file), text)
  }
  execFileSync('git', ['init', '--quiet'], { cwd: folder })
  execFileSync('git', ['add', 'src', 'workers'], { cwd: folder })
  const { status, stdout, stderr } = spawnSync(process.execPath, ['.ci/directions.mjs'], { cwd: folder, encoding: 'utf8' })
  return { status, said: stdout + stderr }
}

const a = (name: string): string => `export const ${name} = 1\n`
const sound: Files = {
  'src/domain/units/units.ts': a('units'),
  'src/domain/order/order.ts': `import { units } from '../units/units.ts'\nexport const order = units\n`,
  'src/domain/ticket/ticket.ts': `export type Ticket = { readonly at: number }\n${a('ticket')}`,
  'src/ports/store.ts': `import type { Ticket } from '../domain/ticket/ticket.ts'\nexport type Store = { readonly ticket: Ticket }\n`,
  'src/adapters/store/open.ts': `import pg from 'pg'\nimport type { Store } from '../../ports/store.ts'\nexport const open = (store: Store): unknown => [store, pg]\n`,
  'src/config.ts': a('config'),
  'src/main.ts': `import { open } from './adapters/store/open.ts'\nimport { config } from './config.ts'\nconsole.log(open, config)\n`,
  'templates/ticket/head.ts': a('head'),
  'workers/quote.ts': `import type { Store } from '../src/ports/store.ts'\nexport const quote = (store: Store): Store => store\n`,
}

const breaches: readonly (readonly [rule: string, file: string, line: string])[] = [
  ['domain-units-looks-left', 'src/domain/units/more.ts', `export { order } from '../order/order.ts'`],
  [
    'domain-order-looks-left',
    'src/domain/order/more.ts',
    `import type { Ticket } from '../ticket/ticket.ts'\nexport type Other = Ticket`,
  ],
  [
    'domain-is-ours-alone',
    'src/domain/press/more.ts',
    `import type { Store } from '../../ports/store.ts'\nexport type Other = Store`,
  ],
  [
    'domain-without-machine',
    'src/domain/rules/more.ts',
    `import { readFileSync } from 'node:fs'\nexport const more = readFileSync`,
  ],
  [
    'schedule-timeline-looks-left',
    'src/domain/schedule/timeline/more.ts',
    `import { promise } from '../promise/promise.ts'\nexport const more = promise`,
  ],
  ['service-say-looks-left', 'src/desk/service/say/more.ts', `import { hear } from '../talk/hear.ts'\nexport const more = hear`],
  ['service-rooms-see-rooms', 'src/desk/service/quote/more.ts', `import { press } from '../press.ts'\nexport const more = press`],
  ['home-of-pg', 'src/desk/more.ts', `import pg from 'pg'\nexport const more = pg`],
  ['home-of-fontkit', 'src/domain/layout/more.ts', `import { create } from 'fontkit'\nexport const more = create`],
  ['home-of-discord-js', 'src/adapters/chat/counter/more.ts', `import { Client } from 'discord.js'\nexport const more = Client`],
  ['ports-see-domain', 'src/ports/more.ts', `import { open } from '../adapters/store/open.ts'\nexport const more = open`],
  [
    'adapters-chosen-at-the-top',
    'src/desk/other.ts',
    `import { open } from '../adapters/store/open.ts'\nexport const other = open`,
  ],
  ['desk-without-machine', 'src/desk/clock.ts', `import { hostname } from 'node:os'\nexport const clock = hostname`],
  ['steps-are-thin', 'workers/more.ts', `import { open } from '../src/adapters/store/open.ts'\nexport const more = open`],
  ['adapters-apart', 'src/adapters/queue/more.ts', `import { open } from '../store/open.ts'\nexport const more = open`],
  [
    'nothing-computed-on-paper',
    'src/adapters/printer/more.ts',
    `import { order } from '../../domain/order/order.ts'\nexport const more = order`,
  ],
  [
    'paper-takes-types-of-templates',
    'src/adapters/printer/head.ts',
    `import { head } from '../../../templates/ticket/head.ts'\nexport const more = head`,
  ],
  ['settings-read-at-the-top', 'src/desk/settings.ts', `import { config } from '../config.ts'\nexport const settings = config`],
  ['commands-are-last', 'src/desk/command.ts', `import { make } from '../cli/make.ts'\nexport const command = make`],
  [
    'workers-are-last',
    'src/adapters/queue/steps.ts',
    `import { quote } from '../../../workers/quote.ts'\nexport const steps = quote`,
  ],
  [
    'templates-take-only-types',
    'templates/replies/en.ts',
    `import { order } from '../../src/domain/order/order.ts'\nexport const en = order`,
  ],
  ['no-cycles', 'src/domain/stock/one.ts', `import { two } from './two.ts'\nexport const one = (): unknown => two`],
  ['resolves', 'src/domain/price/more.ts', `export { nothing } from './nowhere.ts'`],
  [
    'runs-without-developers-packages',
    'src/domain/schedule/search/more.ts',
    `import highs from 'highs'\nexport const more = highs`,
  ],
]

const companions: Files = {
  'src/domain/schedule/promise/promise.ts': a('promise'),
  'src/desk/service/talk/hear.ts': a('hear'),
  'src/desk/service/press.ts': a('press'),
  'src/cli/make.ts': a('make'),
  'src/domain/stock/two.ts': `import { one } from './one.ts'\nexport const two = (): unknown => one\n`,
}

describe('the check of directions', () => {
  it('accepts a program that keeps them', () => {
    expect(checkOf(sound)).toEqual({ status: 0, said: expect.stringContaining('8 files tracked, 0 breaches') })
  })

  it('refuses each planted breach by its name', () => {
    const planted = Object.fromEntries(breaches.map(([, file, line]) => [file, `${line}\n`]))
    const { status, said } = checkOf({ ...sound, ...companions, ...planted })
    expect(status).toBe(1)
    const unseen = breaches.filter(([rule, file]) => !said.includes(`${rule}: ${file} → `))
    expect(unseen).toEqual([])
  })

  it('refuses a folder of the domain that has no place in the order', () => {
    const { status, said } = checkOf({ ...sound, 'src/domain/extras/extras.ts': a('extras') })
    expect(status).toBe(1)
    expect(said).toContain('without a place in the order: src/domain/extras/extras.ts')
  })

  it('refuses a room of the service that has no place in the order', () => {
    const { status, said } = checkOf({ ...sound, 'src/desk/service/extras/extras.ts': a('extras') })
    expect(status).toBe(1)
    expect(said).toContain('without a place in the order: src/desk/service/extras/extras.ts')
  })

  it('refuses a room of planning that has no place in the order', () => {
    const { status, said } = checkOf({ ...sound, 'src/domain/schedule/extras/extras.ts': a('extras') })
    expect(status).toBe(1)
    expect(said).toContain('without a place in the order: src/domain/schedule/extras/extras.ts')
  })

  it('refuses a file that the cruiser did not see', () => {
    const { status, said } = checkOf({ ...sound, 'src/domain/.hidden.ts': a('hidden') })
    expect(status).toBe(1)
    expect(said).toContain('src/domain/.hidden.ts')
  })
})
