import type { Words } from '../word-list.ts'
import { esAgain } from './again.ts'
import { esAges } from './ages.ts'
import { esAnew } from './anew.ts'
import { esAnswers, esSides, esSigning } from './answers.ts'
import { esBasics } from './basics.ts'
import { esBrought } from './brought.ts'
import { esClock, esDays, esHours } from './calendar.ts'
import { esCancelling } from './cancelling.ts'
import { esChanges } from './changes.ts'
import { esClauses } from './clauses.ts'
import { esComplaints, esWashCounts } from './complaints.ts'
import { esDictation } from './dictation.ts'
import { esElsewhere } from './elsewhere.ts'
import { esGarments } from './garments.ts'
import { esIntents } from './intents.ts'
import { esLeftOff } from './left-off.ts'
import { esLikeOthers } from './like-others.ts'
import { esMarks } from './marks.ts'
import { esLater, esOccasions } from './occasions.ts'
import { esParts } from './parts.ts'
import { esMoney, esPeople } from './people.ts'
import { esPlayers } from './players.ts'
import { esRosters, esRowMarks } from './rosters.ts'
import { esRulebooks } from './rulebooks.ts'
import { esSameAs } from './same-as.ts'
import { esShades } from './shades.ts'
import { esSports } from './sports.ts'
import { esTakenBack } from './taken-back.ts'
import { esTeam } from './team.ts'
import { esThings } from './things.ts'
import { esTold } from './told.ts'
import { esUndecided } from './undecided.ts'
import { esValues } from './values.ts'
import { esWritten } from './written.ts'

const numbers = ['uno', 'dos', 'tres', 'cuatro', 'cinco', 'seis', 'siete', 'ocho', 'nueve', 'diez', 'once', 'doce']

/** The words of a Spanish-speaking customer, as they are said on the border and farther south. */
export const esWords: Words = {
  notBorrowed: [
    'in',
    'fan',
    'each',
    'n',
    'w',
    'no',
    'a',
    'come',
    'son',
    'plus',
    'also',
    'once',
    'pie',
    'fine',
    'normal',
    'no more',
    'nos',
    'track',
  ],
  basics: esBasics,
  shades: esShades,
  intents: esIntents,
  again: esAgain,
  dictation: esDictation,
  likeOthers: esLikeOthers,
  undecided: esUndecided,
  brought: esBrought,
  elsewhere: esElsewhere,
  parts: esParts,
  told: esTold,
  takenBack: esTakenBack,
  rulebooks: esRulebooks,
  cancelling: esCancelling,
  clauses: esClauses,
  anew: esAnew,
  changes: esChanges,
  players: esPlayers,
  things: esThings,
  leftOff: esLeftOff,
  written: esWritten,
  team: esTeam,
  rowMarks: esRowMarks,
  rosters: esRosters,
  sides: esSides,
  ages: esAges,
  answers: esAnswers,
  signing: esSigning,
  occasions: esOccasions,
  later: esLater,
  days: esDays,
  clock: esClock,
  values: esValues,
  sameAs: esSameAs,
  hours: esHours,
  money: esMoney,
  people: esPeople,
  complaints: esComplaints,
  washCounts: esWashCounts,
  artwork: {
    words: ['logo', 'logos', 'logotipo', 'escudo', 'escudos', 'mascota', 'dibujo', 'emblema', 'imagen'],
    lettered: ['diga', 'dice', 'palabra', 'texto', 'leyenda'],
    refused: ['sin', 'no', 'ningun', 'nada'],
  },
  faces: {
    lettering: ['letra', 'letras', 'tipo', 'tipografia', 'fuente'],
    typeface: ['tipografia', 'fuente'],
    called: ['llamada', 'que', 'se', 'llama', ':'],
    plain: ['la', 'una', 'esa', 'esta', 'misma', 'cualquier', 'que', 'normal', 'el', 'los', 'y', 'para', 'con'],
    numbers: ['numero', 'numeros', 'dorsal', 'dorsales'],
    names: ['nombre', 'nombres', 'apellido', 'apellidos'],
    links: ['en'],
    joins: ['y', 'e', 'los', 'el'],
  },
  list: [
    ...esGarments,
    ...numbers.map((word, index) => ({ means: { kind: 'count', id: index + 1 } as const, words: [word] })),
    { means: { kind: 'count', id: 1 }, words: ['una', 'un'] },
    { means: { kind: 'count', id: 12 }, words: ['docena', 'una docena'] },
    { means: { kind: 'count', id: 6 }, words: ['media docena'] },
    { means: { kind: 'count', id: 15 }, words: ['quince'] },
    { means: { kind: 'count', id: 20 }, words: ['veinte'] },
    {
      means: { kind: 'content', id: 'number' },
      words: [
        'número',
        'números',
        'dorsal',
        'dorsales',
        'number',
        'num',
        'nums',
        'núm.',
        'numerito',
        'numeritos',
        'numeración',
        'nro',
      ],
    },
    {
      means: { kind: 'content', id: 'name' },
      words: ['nombre', 'nombres', 'apellido', 'apellidos', 'apodo', 'apodos', 'mote', 'motes', 'sobrenombre', 'sobrenombres'],
    },
    { means: { kind: 'word', make: true }, words: ['impresión', 'estampado'] },
    {
      means: { kind: 'word' },
      words: [
        'palabra',
        'texto',
        'letrero',
        'todo lo demás',
        'leyenda',
        'letras',
        'que diga',
        'que digan',
        'que dice',
        'dice',
        'dicen',
        ...['el nombre del equipo', 'nombre del equipo', 'el nombre del club', 'nombre del club', 'nombre de la escuela'],
        ...['el nombre de la escuela', 'nombre de la empresa', 'el nombre de la empresa'],
      ],
    },
    { means: { kind: 'knit', id: 'mesh' }, words: ['malla', 'de malla'] },
    { means: { kind: 'knit', id: 'interlock' }, words: ['interlock'] },
    { means: { kind: 'knit', id: 'fleece' }, words: ['felpa', 'polar'] },
    { means: { kind: 'fibre', id: 'cotton' }, words: ['algodón', 'de algodón'] },
    { means: { kind: 'fibre', id: 'polyester' }, words: ['poliéster', 'de poliéster', 'poly'] },
    { means: { kind: 'fibre', id: 'nylon' }, words: ['nailon', 'nylon', 'de nylon'] },
    { means: { kind: 'fibre', id: 'elastane' }, words: ['elastano', 'licra', 'lycra', 'spandex'] },
    { means: { kind: 'fibre', id: 'viscose' }, words: ['viscosa', 'rayón'] },
    { means: { kind: 'fibre', id: 'wool' }, words: ['lana'] },
    { means: { kind: 'fibre', id: 'polypropylene' }, words: ['polipropileno'] },
    { means: { kind: 'dye', id: 'sublimated' }, words: ['sublimado', 'sublimada', 'sublimados', 'sublimadas'] },
    {
      means: { kind: 'finish', id: 'repellent' },
      words: ['impermeable', 'impermeables', 'repelente', 'repelente al agua', 'repelentes'],
    },
    { means: { kind: 'feature', id: 'hood' }, words: ['con capucha', 'con gorro'] },
    { means: { kind: 'feature', id: 'full-zip' }, words: ['con cierre', 'con zipper'] },
    ...esMarks,
    ...esSports,
    { means: { kind: 'use', id: 'game' }, words: ['para los partidos', 'para partidos', 'de juego', 'para jugar'] },
    { means: { kind: 'use', id: 'fan' }, words: ['aficionados', 'afición', 'para los papás', 'para las mamás', 'para los fans'] },
    { means: { kind: 'use', id: 'practice' }, words: ['para entrenar', 'de entrenamiento', 'para entrenamiento'] },
    {
      means: { kind: 'use', id: 'staff' },
      words: [
        'personal',
        'para el personal',
        'empleados',
        'staff',
        'maestros',
        'maestras',
        'para los maestros',
        'docentes',
        'trabajadores',
        'uniforme de trabajo',
        'uniformes de trabajo',
        'cuadrilla',
      ],
    },
    {
      means: { kind: 'use', id: 'keepsake' },
      words: [
        'quinceañera',
        'quince años',
        'xv años',
        'boda',
        'cumpleaños',
        'recuerdo',
        'bautizo',
        'despedida',
        'graduación',
        'baby shower',
        'reunión familiar',
        'primera comunión',
      ],
    },
    { means: { kind: 'unit', id: 'in' }, words: ['pulgada', 'pulgadas', 'pulg', 'pulg.', '"'] },
    { means: { kind: 'unit', id: 'cm' }, words: ['cm', 'centímetros', 'centímetro', 'cms'] },
    { means: { kind: 'in' }, words: ['de', 'en', 'color', 'de color', 'en color'] },
    { means: { kind: 'with' }, words: ['con', 'más'] },
    { means: { kind: 'and' }, words: ['y', 'e', 'también'] },
  ],
}
