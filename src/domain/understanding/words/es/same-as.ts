/** Verbs as they are told to several people in Spain, up to their ending: "quit(ad)", with what the phrases know: "quit(en)". */
const ofAr = [
  ...['agreg>agregu', 'anot', 'apunt', 'arregl', 'avis', 'baj', 'bord', 'borr', 'busc>busqu', 'cambi', 'cancel', 'cerr>cierr'],
  ...[
    'coloc>coloqu',
    'cont>cuent',
    'control',
    'cort',
    'cruz>cruc',
    'cuid',
    'dej',
    'deletre',
    'descart',
    'elimin',
    'entreg>entregu',
  ],
  ...['envi', 'estamp', 'esper', 'factur', 'fij', 'grab', 'guard', 'ignor', 'imprent', 'intercambi', 'invert', 'junt', 'llam'],
  ...['llev', 'mand', 'marc>marqu', 'mir', 'modific>modifiqu', 'mostr>muestr', 'olvid', 'pas', 'peg>pegu', 'plant', 'prepar'],
  ...['prob>prueb', 'quit', 'rectific>rectifiqu', 'reemplaz>reemplac', 'repas', 'reserv', 'respet', 'revis', 'sac>saqu', 'sum'],
  ...['tach', 'us', 'verific>verifiqu', 'confirm', 'retir', 'recort', 'reduc>reduzc', 'aument', 'separ', 'rellen', 'pint', 'gir'],
  ...['necesit', 'acept', 'trabaj', 'recomend>recomiend', 'cobr', 'encarg>encargu', 'habl', 'dat'],
].map((one) => one.split('>'))

/** The same of verbs in -er and -ir: what is told to do, and what is done ("ponéis", "ponen"). */
const others = [
  ...['pon ed pong pon', 'met ed met met', 'hac ed hag hac', 'deshac ed deshag deshac', 'ten ed teng tien', 'tra ed traig tra'],
  ...['recog ed recoj recog', 'pod ed pued pued', 'quer ed quier quier', 'vend ed vend vend', 'sab ed sep sab', 'v ed ve v'],
  ...['añad id añad añad', 'sub id sub sub', 'escrib id escrib escrib', 'imprim id imprim imprim', 'correg id corrij corrig'],
  ...['sustitu id sustituy sustituy', 'inclu id incluy incluy', 'ped id pid pid', 'dec id dig dic', 'ven id veng vien'],
  ...['reduc id reduzc reduc', 'invert id inviert inviert', 'repet id repit repit', 'defin id defin defin', 'un id un un'],
].map((one) => one.split(' '))

const objects = ['', 'me', 'nos', 'le', 'les', 'lo', 'la', 'los', 'las', 'melo', 'mela', 'melos', 'melas', 'noslo', 'nosla']

type Form = readonly [spoken: string, known: string]

const told = (spoken: string, known: string): readonly Form[] => [
  ...objects.map((object): Form => [`${spoken}${object}`, `${known}${object}`]),
  [`${spoken.slice(0, -1)}os`, `${known}se`],
]

const formsOfAr = ([stem = '', changed = stem]: readonly string[]): readonly Form[] => [
  ...told(`${stem}ad`, `${changed}en`),
  [`${stem}ais`, `${stem}an`],
  [`${stem}eis`, `${changed}en`],
  [`${changed}eis`, `${changed}en`],
  [`${stem}aros`, `${stem}arles`],
]

const formsOfOthers = ([stem = '', ending = '', changed = '', does = '']: readonly string[]): readonly Form[] => [
  ...told(`${stem}${ending}`, `${changed}an`),
  [`${stem}${ending === 'ed' ? 'eis' : 'is'}`, `${does}en`],
  [`${changed}ais`, `${changed}an`],
  [`${stem}${ending === 'ed' ? 'eros' : 'iros'}`, `${stem}${ending === 'ed' ? 'erles' : 'irles'}`],
]

const pair = (both: string): Form => {
  const [spoken = '', known = ''] = both.split(' ')
  return [spoken, known]
}

const single: readonly Form[] = [
  ...objects.slice(1).map((object): Form => [`dad${object}`, `den${object}`]),
  ...['podriais podrian', 'querriais querrian', 'seriais serian', 'hariais harian', 'tendriais tendrian'].map(pair),
  ...['habeis han', 'sois son', 'estais estan', 'vais van', 'dais dan', 'deis den', 'veis ven', 'hagais hagan'].map(pair),
  ...['pondreis pondran', 'hareis haran', 'tendreis tendran', 'podreis podran', 'enviareis enviaran'].map(pair),
  ...[
    'vosotros ustedes',
    'vosotras ustedes',
    'os les',
    'talle talla',
    'talles tallas',
    'dorsal número',
    'dorsales números',
    'jerséis jerseys',
    'añitos años',
    'añito año',
  ].map(pair),
]

/** How people in Spain speak to several, and words of theirs, with what the phrases know in their place. */
export const esSameAs: Readonly<Record<string, string>> = Object.fromEntries(
  [...ofAr.flatMap(formsOfAr), ...others.flatMap(formsOfOthers), ...single].map(([spoken, known]) => [
    spoken.replaceAll('ñ', 'n').replaceAll('é', 'e'),
    known,
  ]),
)
