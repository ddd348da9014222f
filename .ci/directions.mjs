// Runs dependency-cruiser over the program and makes sure that it saw every file: a cruiser that cannot read TypeScript
// sees none and finds nothing wrong.
import { execFileSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { domainFolders, readingRooms, scheduleRooms, serviceRooms } from '../.dependency-cruiser.mjs'

const root = join(import.meta.dirname, '..')
const cruiser = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs')
const run = (program, args) => execFileSync(program, args, { cwd: root, encoding: 'utf8', maxBuffer: 1 << 28 })

const folders = ['src', 'workers', 'templates'].filter((folder) => existsSync(join(root, folder)))
const report = JSON.parse(
  run(process.execPath, [cruiser, '--config', '.dependency-cruiser.mjs', '--output-type', 'json', ...folders]),
)

const seen = new Set(report.modules.map(({ source }) => source))
const tracked = run('git', ['ls-files', '-z', '--', 'src', 'workers'])
  .split('\0')
  .filter((file) => file.endsWith('.ts') && existsSync(join(root, file)))

const troubles = [
  ...report.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`),
  ...tracked.filter((file) => !seen.has(file)).map((file) => `not seen by dependency-cruiser: ${file}`),
  ...tracked
    .filter((file) => file.startsWith('src/domain/') && !domainFolders.includes(file.split('/')[2]))
    .map((file) => `a folder of the domain without a place in the order: ${file}`),
  ...tracked
    .filter((file) => file.startsWith('src/domain/schedule/') && !scheduleRooms.includes(file.split('/')[3]))
    .map((file) => `a room of planning without a place in the order: ${file}`),
  ...tracked
    .filter((file) => /^src\/domain\/understanding\/read\/.+\//.test(file) && !readingRooms.includes(file.split('/')[4]))
    .map((file) => `a room of reading without a place in the order: ${file}`),
  ...tracked
    .filter((file) => /^src\/desk\/service\/.+\//.test(file) && !serviceRooms.includes(file.split('/')[3]))
    .map((file) => `a room of the service without a place in the order: ${file}`),
]

for (const trouble of troubles) console.error(trouble)
console.log(`directions: ${seen.size} modules seen, ${tracked.length} files tracked, ${troubles.length} breaches`)
process.exitCode = troubles.length > 0 || tracked.length === 0 ? 1 : 0
