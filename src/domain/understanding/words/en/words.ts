import type { Words } from '../word-list.ts'
import { enAgain } from './again.ts'
import { enAges } from './ages.ts'
import { enAnew } from './anew.ts'
import { enAnswers, enSides, enSigning } from './answers.ts'
import { enBasics } from './basics.ts'
import { enBrought } from './brought.ts'
import { enClock, enDays, enHours } from './calendar.ts'
import { enCancelling } from './cancelling.ts'
import { enChanges } from './changes.ts'
import { enClauses } from './clauses.ts'
import { enComplaints, enWashCounts } from './complaints.ts'
import { enDictation } from './dictation.ts'
import { enElsewhere } from './elsewhere.ts'
import { enGarments } from './garments.ts'
import { enIntents } from './intents.ts'
import { enLeftOff } from './left-off.ts'
import { enLikeOthers } from './like-others.ts'
import { enMarks } from './marks.ts'
import { enLater, enOccasions } from './occasions.ts'
import { enParts } from './parts.ts'
import { enMoney, enPeople } from './people.ts'
import { enPlayers } from './players.ts'
import { enRosters, enRowMarks } from './rosters.ts'
import { enRulebooks } from './rulebooks.ts'
import { enShades } from './shades.ts'
import { enSports } from './sports.ts'
import { enTakenBack } from './taken-back.ts'
import { enTeam } from './team.ts'
import { enThings } from './things.ts'
import { enTold } from './told.ts'
import { enUndecided } from './undecided.ts'
import { enValues } from './values.ts'
import { enWritten } from './written.ts'

const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']

/** The words of an English-speaking customer. */
export const enWords: Words = {
  notBorrowed: ['son', 'once', 'red', 'pies', 'come', 'sin', 'rosa', 'once', 'a', 'me', 'no', 'solo', 'el', 'mama'],
  basics: enBasics,
  shades: enShades,
  intents: enIntents,
  again: enAgain,
  dictation: enDictation,
  likeOthers: enLikeOthers,
  undecided: enUndecided,
  brought: enBrought,
  elsewhere: enElsewhere,
  parts: enParts,
  told: enTold,
  takenBack: enTakenBack,
  rulebooks: enRulebooks,
  cancelling: enCancelling,
  clauses: enClauses,
  anew: enAnew,
  changes: enChanges,
  players: enPlayers,
  things: enThings,
  leftOff: enLeftOff,
  written: enWritten,
  team: enTeam,
  rowMarks: enRowMarks,
  rosters: enRosters,
  sides: enSides,
  ages: enAges,
  answers: enAnswers,
  signing: enSigning,
  occasions: enOccasions,
  later: enLater,
  days: enDays,
  clock: enClock,
  values: enValues,
  sameAs: {},
  hours: enHours,
  money: enMoney,
  people: enPeople,
  complaints: enComplaints,
  washCounts: enWashCounts,
  artwork: {
    words: ['logo', 'logos', 'artwork', 'emblem', 'crest', 'mascot', 'clipart', 'drawing', 'graphic', 'graphics'],
    lettered: ['text', 'says', 'saying', 'reads', 'word', 'words'],
    refused: ['no', 'without', 'not', 'skip', 'nothing'],
  },
  faces: {
    lettering: ['font', 'fonts', 'face', 'typeface', 'lettering'],
    typeface: ['font', 'fonts', 'typeface'],
    called: ['called', 'named', 'is', ':'],
    plain: [
      'block',
      'bold',
      'script',
      'the',
      'a',
      'same',
      'this',
      'that',
      'any',
      'what',
      'which',
      'your',
      'our',
      'it',
      'i',
      'is',
      'use',
      'and',
      'names',
      'numbers',
      'for',
      'we',
    ],
    numbers: ['number', 'numbers', 'numerals', 'digits'],
    names: ['name', 'names', 'surnames'],
    links: ['in'],
    joins: ['and', '&', 'the', 'both'],
  },
  list: [
    ...enGarments,
    ...numbers.map((word, index) => ({ means: { kind: 'count', id: index + 1 } as const, words: [word] })),
    { means: { kind: 'count', id: 12 }, words: ['a dozen', 'dozen', 'one dozen'] },
    { means: { kind: 'count', id: 6 }, words: ['half a dozen', 'half dozen', 'a half dozen'] },
    { means: { kind: 'count', id: 18 }, words: ['a dozen and a half'] },
    { means: { kind: 'count', id: 24 }, words: ['two dozen'] },
    {
      means: { kind: 'content', id: 'number' },
      words: ['number', 'numbers', 'nos', 'numerals', 'digits', 'jersey numbers', '#s', 'nums', 'tv numbers', 'tv number'],
    },
    {
      means: { kind: 'content', id: 'name' },
      words: [
        'name',
        'names',
        'last name',
        'last names',
        'surname',
        'surnames',
        'player name',
        'player names',
        'nameplate',
        'nameplates',
        'name plates',
        'name bars',
        'name bar',
        'nick names',
        'nickname',
        'first name',
        'first names',
        'lastname',
        'lastnames',
        'nicknames',
        'skate names',
        'player tags',
        'gamer tag',
        'gamer tags',
        'gamertags',
      ],
    },
    { means: { kind: 'word', make: true }, words: ['print', 'printing', 'writing', 'imprint'] },
    {
      means: { kind: 'word' },
      words: [
        'word',
        'words',
        'text',
        'lettering',
        'letters',
        'wording',
        'everything else',
        'say',
        'saying',
        'reads',
        'read',
        ...['team name', 'name of the club', 'name of the team', 'name of the school', 'club name', 'school name'],
        ...['company name', 'business name'],
        'logo text',
        'slogan',
        'saying',
        'says',
        'that says',
      ],
    },
    { means: { kind: 'knit', id: 'mesh' }, words: ['mesh'] },
    { means: { kind: 'knit', id: 'interlock' }, words: ['interlock'] },
    { means: { kind: 'knit', id: 'fleece' }, words: ['fleece'] },
    { means: { kind: 'knit', id: 'tricot' }, words: ['tricot'] },
    { means: { kind: 'fibre', id: 'cotton' }, words: ['cotton'] },
    { means: { kind: 'fibre', id: 'polyester' }, words: ['polyester', 'poly'] },
    { means: { kind: 'fibre', id: 'nylon' }, words: ['nylon'] },
    { means: { kind: 'fibre', id: 'elastane' }, words: ['spandex', 'elastane'] },
    { means: { kind: 'fibre', id: 'viscose' }, words: ['rayon', 'viscose'] },
    { means: { kind: 'fibre', id: 'wool' }, words: ['wool'] },
    { means: { kind: 'fibre', id: 'acrylic' }, words: ['acrylic'] },
    { means: { kind: 'fibre', id: 'modal' }, words: ['modal'] },
    { means: { kind: 'fibre', id: 'linen' }, words: ['linen'] },
    { means: { kind: 'fibre', id: 'polypropylene' }, words: ['polypropylene', 'polypro'] },
    { means: { kind: 'dye', id: 'sublimated' }, words: ['sublimated', 'sublimation', 'dye sublimated', 'sublimated print'] },
    {
      means: { kind: 'finish', id: 'repellent' },
      words: [
        'water repellent',
        'water-repellent',
        'waterproof',
        'water resistant',
        'water-resistant',
        'repellent',
        'stain resistant',
      ],
    },
    { means: { kind: 'feature', id: 'hood' }, words: ['with a hood', 'hooded'] },
    { means: { kind: 'feature', id: 'full-zip' }, words: ['full zip', 'full-zip'] },
    { means: { kind: 'feature', id: 'half-zip' }, words: ['half zip', 'quarter zip', 'half-zip', 'quarter-zip'] },
    { means: { kind: 'feature', id: 'collar' }, words: ['with collar', 'collared'] },
    ...enMarks,
    ...enSports,
    {
      means: { kind: 'use', id: 'game' },
      words: ['for games', 'game jerseys', 'game day jerseys', 'league games', 'for the games'],
    },
    { means: { kind: 'use', id: 'fan' }, words: ['fan', 'fans', 'fan shirts', 'fan gear', 'spirit wear', 'parents'] },
    { means: { kind: 'use', id: 'practice' }, words: ['for practice', 'practice jerseys', 'practice shirts', 'for training'] },
    {
      means: { kind: 'use', id: 'staff' },
      words: [
        ...['staff', 'for the staff', 'for our staff', 'employees', 'crew shirts', 'teachers', 'faculty', 'volunteers'],
        ...['field crew', 'office staff', 'work crew', 'ground crew', 'workwear', 'work uniforms', 'for work', 'office crew'],
      ],
    },
    {
      means: { kind: 'use', id: 'keepsake' },
      words: ['keepsake', 'birthday', 'wedding', 'memorial', 'reunion', 'bachelorette', 'quinceanera', 'sweet sixteen'],
    },
    { means: { kind: 'unit', id: 'in' }, words: ['inch', 'inches', 'in', '"', 'inch tall', 'in tall', "''"] },
    { means: { kind: 'unit', id: 'cm' }, words: ['cm', 'centimeter', 'centimeters', 'centimetre', 'centimetres'] },
    { means: { kind: 'unit', id: 'mm' }, words: ['mm'] },
    { means: { kind: 'with' }, words: ['with', 'w', 'w/', 'plus'] },
    { means: { kind: 'and' }, words: ['and', '&', '+', 'also', 'too', 'n'] },
  ],
}
