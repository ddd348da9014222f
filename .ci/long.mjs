import { spawnSync } from 'node:child_process'

/** The long forms of tests that run short and seeded elsewhere, by the folder or file they stand in. */
const forms = {
  layout: ['tests/domain/layout', 'tests/domain/cutting'],
  press: ['tests/domain/press', 'tests/domain/rules'],
  schedule: ['tests/domain/schedule', 'tests/domain/calendar'],
  understanding: ['tests/domain/understanding'],
  ticket: ['tests/domain/ticket', 'tests/adapters/printer'],
  platform: ['tests/adapters/chat/platform'],
  service: ['tests/e2e/service'],
  faults: ['tests/e2e/served'],
  soak: ['tests/e2e/served-soak'],
  floor: ['tests/desk/stock', 'tests/desk/floor'],
  fuzz: ['tests/fuzz'],
  week: ['tests/e2e/week'],
  'week-desk': ['tests/desk/week'],
  pictures: ['tests/e2e/floor-pictures'],
}

const usage = `npm run long -- <name>: the long form of tests that run short by default (minutes to hours); there is ${Object.keys(forms).join(', ')}\n`
const [name = ''] = process.argv.slice(2)
if (name === '--help') {
  process.stdout.write(usage)
  process.exit(0)
}
const paths = forms[name]
if (paths === undefined) {
  process.stderr.write(usage)
  process.exit(2)
}
spawnSync('npm', ['run', '-s', 'build'], { stdio: 'inherit' })
const words = ['vitest', 'run', '--config', 'tests/vitest.config.ts', '--testTimeout=3600000', ...paths]
const { status } = spawnSync('env', [`LONG=${name}`, 'npx', ...words], { stdio: 'inherit' })
process.exit(status ?? 1)
