import { casual } from 'chrono-node/en'
import type { Clock, DayPhrases, HourPhrases } from '../matters/calendar.ts'

/** Words of English that are hours, parts of a day and days ahead. */
export const enClock: Clock = {
  hours: {
    ...{ one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 },
    ...{ seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11, twelve: 12 },
  },
  parts: { morning: 'morning', afternoon: 'afternoon', evening: 'evening', night: 'evening' },
  ahead: { 'day after tomorrow': 2, tomorrow: 1, today: 0, tonight: 0 },
  counted: casual,
}

/** How an hour is said in English. */
export const enHours: HourPhrases = {
  partLead: ['in', 'at'],
  partArticle: ['the'],
  noon: ['noon', 'midday'],
  opens: ['at', 'by', 'before', 'around', 'about', 'until', 'till', 'after', 'past'],
  lead: [],
  article: [],
  half: ['half'],
  quarter: ['quarter'],
  past: ['past'],
  to: ['to'],
  andHalf: [],
  andQuarter: [],
  sharp: ["o'clock", 'oclock', 'hrs', 'h', 'sharp'],
  notHours: [
    ...['inch', 'inches', 'in', 'cm', 'xl', 'x', 't', 'players', 'jerseys', 'of', 'tees', 'small', 'medium', 'large', 'days'],
    ...['weeks', 'washes'],
  ],
}

/** How a day is said in English. */
export const enDays: DayPhrases = {
  dateArticle: ['the'],
  monthArticle: ['the'],
  weekdayArticle: ['the'],
  bareArticle: [],
  numberArticle: [],
  ofMonth: ['of'],
  ofYear: [],
  ordinals: ['st', 'nd', 'rd', 'th'],
  first: [],
  notSlash: ['inch', 'in', 'cotton', 'poly', 'cm', 'inches'],
  next: ['next'],
  beforeWeekday: ['this', 'next', 'coming'],
  nextBehind: [],
  weekFrom: ['a week from', 'week from'],
  notDays: [
    ...['grade', 'grades', 'grader', 'graders', 'place', 'period', 'quarter', 'inning', 'half', 'street', 'avenue', 'ave'],
    ...['annual', 'birthday', 'anniversary', 'base', 'row', 'line', 'string', 'team', 'division', 'edition', 'time', 'year'],
  ],
  giving: [],
  givesBy: [],
  alsoGives: [],
  becomes: [],
  happening: [],
  with: ['with'],
  one: ['a', 'an'],
  goesOn: [],
  partBefore: [],
  monthEnd: ['end'],
  monthEndOf: ['of', 'the', 'this'],
  month: ['month'],
  or: ['or'],
  before: ['before'],
  eves: ['the day before', 'a day before', 'one day before', 'the night before'],
  inMorning: ['in the morning', 'morning'],
  onThe: ['on', 'the'],
  not: ['not', 'no'],
  insteadOf: ['of', 'than'],
  instead: ['instead', 'rather'],
  game: [
    ...['game', 'games', 'match', 'matches', 'tournament', 'competition', 'meet', 'opener', 'regatta', 'bonspiel', 'bout'],
    ...['scrimmage', 'playoff', 'playoffs', 'championship', 'play', 'plays', 'final', 'party', 'wedding'],
  ],
  need: [...['need', 'needs', 'want', 'have', 'ready', 'by', 'before', 'pick', 'pickup', 'deadline', 'due']],
  joins: ['and', 'so', 'but', 'because', 'since', 'cause', 'cuz'],
  needs: ['need', 'needs', 'want'],
  aside: [
    ...[
      'practice',
      'practices',
      'bus',
      'leaves',
      'leave',
      'yesterday',
      'picked',
      'last',
      'ordered',
      'washed',
      'born',
      'birthday',
    ],
    ...['tryouts'],
  ],
  within: ['in', 'within'],
  about: ['about'],
  span: ['days?', 'weeks?', 'months?'],
  counted: ['(?:weeks?|days?|months?) from (?:now|today)', 'next (?:week|month)'],
}
