import type { Show } from '../../src/domain/shop/show.ts'
import type { LateChange } from '../../src/domain/understanding/conversation.ts'
import type { Changed, Since, Tidy } from '../../src/domain/understanding/replies.ts'
import { priceWords } from '../desk/price.ts'
import { plural } from '../plural.ts'
import { sportNames } from '../sport-names.ts'
import type { Catalogue } from './catalogue.ts'
import { priceParts } from './price-parts.ts'
import { garmentText, newHeads, sizeText, type TidyWords, tidyList } from './tidy.ts'

const fits = { toddler: 'toddler', youth: 'youth', women: "women's", men: 'adult' }

const classes = {
  standard: 'plain',
  glitter: 'glitter',
  'low-temperature': 'low-temperature',
  stretch: 'stretch',
  flock: 'flock',
  puff: 'puff',
  foil: 'foil',
  reflective: 'reflective',
  printed: 'printed',
  blocker: 'blocker',
}

const places = {
  'front-number': 'front',
  'back-number': 'back',
  name: 'back, above the number',
  nape: 'nape',
  yoke: 'upper back',
  'left-chest': "left chest (wearer's left)",
  'right-chest': "right chest (wearer's right)",
  'full-front': 'across the front',
  'below-number': 'back, under the number',
  'left-sleeve': "left sleeve (wearer's left)",
  'right-sleeve': "right sleeve (wearer's right)",
  'left-shoulder': "left shoulder (wearer's left)",
  'right-shoulder': "right shoulder (wearer's right)",
  'left-leg': "left leg (wearer's left)",
  'right-leg': "right leg (wearer's right)",
  hood: 'hood',
  other: 'another place',
}

const garments = {
  jersey: 'jersey',
  tee: 't-shirt',
  hoodie: 'hoodie',
  polo: 'polo',
  shorts: 'shorts',
  jacket: 'jacket',
  bodysuit: 'bodysuit',
  home: 'home jersey',
  away: 'away jersey',
}

const words: TidyWords = {
  names: {
    team: 'Team',
    sport: 'Sport',
    use: 'For',
    needBy: 'Needed',
    needFor: 'Occasion',
    gameDay: 'Game day',
    handOver: 'Hand-over',
    garment: 'Garment:',
    people: 'People',
    money: 'Payment',
    notes: 'Notes',
  },
  head: ['Line', 'No.', 'Name', 'Size', 'Garment', 'Also'],
  garments,
  sports: sportNames.en,
  uses: { game: 'games', fan: 'fans', practice: 'practice', cheer: 'cheer', staff: 'staff', keepsake: 'a keepsake' },
  handOver: { collect: 'you pick it up', field: 'we bring it to the field', post: 'we mail it' },
  knits: { mesh: 'mesh', interlock: 'interlock', jersey: 'jersey knit', tricot: 'tricot', woven: 'woven', fleece: 'fleece' },
  fibres: {},
  dyes: { sublimated: 'sublimated' },
  finishes: { repellent: 'water repellent' },
  features: {},
  fits,
  classes,
  places,
  sizes: {},
  contents: { number: 'number', name: 'name', artwork: 'artwork' },
  money: { deposit: 'deposit', paid: 'paid', 'order-number': 'order number', 'on-account': 'on account' },
  people: { orders: 'orders', signsOff: 'signs off', pays: 'pays', collects: 'collects' },
  own: 'your own garments',
  without: 'without',
  hourOpen: 'hour still open',
  noColour: 'colour still open',
  asBefore: 'as last time',
  sizeAsBefore: 'size as last time',
  bySize: 'height by garment size',
  face: (name) => `letters ${name}`,
  vinyl: (colour, vinylClass) => `${colour} ${vinylClass} vinyl`,
  outline: (colour, width) => `${colour} outline out to ${width}`,
  shadow: (colour) => `${colour} shadow`,
  stones: ({ size, colour, style, rows, contours }) => {
    const stones = `${size} ${colour} stones`
    if (style === 'solid') return `${stones}, filled solid`
    if (style === 'single-line') return `a single line of ${stones}`
    if (style === 'rows') return `${plural(rows, 'row', 'rows')} of ${stones}`
    return `${plural(rows, 'row', 'rows')} of ${stones} around the ${contours === 'outer' ? 'outer edge only' : 'edges, inside and out'}`
  },
  with: (parts) => parts.join(' + '),
  later: { sizes: 'later', names: 'names later', numbers: 'numbers later' },
  assumedAges: { 'under-3': 'under 3', '3-12': 'age 3-12' },
  plural: () => 'Pieces',
}

const row: Catalogue['row'] = ({ number, name, fit, size }) => {
  const who = [number === null ? '' : `#${number}`, name ?? ''].filter((part) => part !== '').join(' ')
  return size === null ? who || 'a line without a name' : `${who === '' ? '' : `${who}, `}${sizeText(words, fit, size)}`
}

const fields: Readonly<Record<string, string>> = {
  size: 'size',
  fit: 'cut',
  number: 'number',
  name: 'name',
  colour: 'colour',
  class: 'vinyl',
  quantity: 'pieces',
  needBy: 'needed',
  gameDay: 'game day',
  team: 'team',
  sport: 'sport',
  use: 'use',
  handOver: 'hand-over',
  height: 'height',
  rows: 'rows of stones',
  micrometres: 'height',
  garment: 'garment',
  note: 'note',
  text: 'text',
  age: 'age',
  orders: 'orders',
  signsOff: 'signs off',
  pays: 'pays',
  collects: 'collects',
  percent: 'percent',
  fibre: 'fibre',
  place: 'place',
  contours: 'edges',
  style: 'stones',
}

const oneOf = (rows: readonly Parameters<Catalogue['row']>[0][]): string => rows.map(row).join(' · ')

const obstacleNames: Readonly<Record<string, string>> = {
  hood: 'the hood',
  'full-zip': 'the zip',
  'half-zip': 'the half zip',
  pocket: 'the pocket',
  collar: 'the collar',
  snaps: 'the snaps',
  piping: 'the piping',
  'centre-seam': 'the centre seam',
  strings: 'the strings',
}
const obstaclesOf = (ids: readonly string[]): string => ids.map((id) => obstacleNames[id] ?? id).join(', ')

const placesOf = (ids: readonly string[]): string => ids.map((id) => places[id as keyof typeof places] ?? id).join(', ')

const figure = (field: string, value: number, show: { temperature: (tenthsC: number) => string }): string =>
  field.includes('tenthsC') ? show.temperature(value) : `${value} s`

const late = (minute: string, show: { moment: (minute: string) => string }): string => show.moment(minute)

type Part = Pick<Changed, 'was' | 'now'> & { readonly at: string }

/** Parts of an order that came or went, by the path of their change. */
const cameOrWent: Readonly<Record<string, (part: Part, show: Show) => string>> = {
  '/garments/gone': ({ was }) => `dropped ${garmentText(garments, String(was))}`,
  '/decorations/gone': ({ was, at }) => `dropped ${words.contents[String(was)] ?? 'text'}${at}`,
  '/decorations/stones': ({ now, at }) => `${now === null ? 'stones off' : 'stones on'}${at}`,
  '/decorations/shadow': ({ now, at }, show) => `${now === null ? 'shadow off' : `shadow: ${show.colour(String(now))}`}${at}`,
  '/decorations/surround': ({ now, at }, show) => `${now === null ? 'outline off' : `outline: ${show.colour(String(now))}`}${at}`,
}
const wornText = (was: unknown, now: unknown): string =>
  now === null ? `${words.contents[String(was)] ?? ''} again` : `no ${words.contents[String(now)] ?? ''}`

const changeText = ({ path, was, now, row: whose, place }: Changed, show: Show): string => {
  const field = path.split('/').at(-1) ?? path
  const say = (value: unknown) => {
    if (value === null) return 'nothing'
    return field === 'colour' ? show.colour(String(value)) : field === 'micrometres' ? show.given(Number(value)) : String(value)
  }
  const gone = cameOrWent[path]
  if (gone !== undefined)
    return gone({ was, now, at: place === undefined || place === null ? '' : ` (${placesOf([place])})` }, show)
  if (field === 'row') return was === null ? `added ${say(now)}` : `dropped ${say(was)}`
  const who = whose === null ? '' : `${row({ ...whose, size: null })}: `
  if (path === '/roster/without') return `${who}${wornText(was, now)}`
  return `${who}${fields[field] ?? field} ${say(was)} → ${say(now)}`
}

const rosterCount = ({ order: { roster } }: Tidy): string => {
  const nameless = roster.filter((row) => row.name === undefined).length
  const without = nameless === 0 || nameless === roster.length ? '' : `, ${nameless} without a name`
  return `${plural(roster.length, 'line', 'lines')}${without}`
}

const lateText = ({ row, needs, amount }: LateChange, show: Show): string => {
  const who =
    [row.number === null ? null : `#${row.number}`, row.name].filter((part) => part !== null).join(' ') || `Line ${row.line}`
  if (needs === 'made') return `${who} is already made and stays on the bill.`
  const why = needs === 'piece' ? 'is already cut: a new piece of vinyl' : 'is already pressed: a new garment'
  return `${who} ${why} adds ${show.money(amount)}.`
}

const changesListed = (changes: readonly Changed[], show: Show): string => {
  const told = changes.slice(0, 12).map((change) => changeText(change, show))
  return `${told.join('; ')}${changes.length > 12 ? '; and more, see the list' : ''}`
}

/** What a proof has that the one before had not, said before its list. */
const changesText = (since: Since | null | undefined, show: Show): string =>
  since === null || since === undefined
    ? ''
    : `. Changed since revision ${since.revision}: ${changesListed(since.changes, show)}. The whole list`

/** English. */
export const en = {
  garments,
  replies: {
    greeting: (_, show) =>
      `Hello, this is ${show.shop}. Tell me what the team needs: which garments and colours, what goes on them, the roster, and when you need them. You can paste the roster as it is.`,
    understood: (facts, show) => ({
      before: 'This is what I have so far:',
      ...tidyList(words, show, facts),
      ...(facts.assumed.length > 0 ? { after: 'What is marked (assumed) nobody said yet: tell me if it is wrong.' } : {}),
    }),
    changed: ({ changes }, show) => {
      return `Changed: ${changesListed(changes, show)}.`
    },
    noted: (facts, show) => {
      const heads = newHeads(words, show, facts)
      return ['Noted.', ...heads].join(' ')
    },
    undone: () => 'Taken back. The order is as it was before your last change.',
    'nothing-to-undo': () => 'There is nothing to take back.',
    'ask-garment': () => 'Which garments shall we decorate: jerseys, t-shirts, hoodies, polos? Ours, or ones you bring?',
    'ask-decoration': () => 'What goes on them, and where: numbers on front and back, names, a word? In which colour?',
    'ask-text': ({ place }) => `What exactly shall it say (${placesOf([place])})?`,
    'ask-day': () => 'When do you need them, day and hour? And when is the game?',
    'ask-hour': ({ day }, show) => `By what hour on ${show.day(day)} do you need them in your hands? If a bus leaves, when?`,
    'ask-roster': () =>
      'Please paste the roster, one player a line: number, name, size. Sizes counted ("3 small, 4 medium") are fine too when there are no names.',
    'ask-garment-colour': ({ garment, colours }, show) =>
      `Which colour is the ${garment}?${colours.length > 0 ? ` We can get ${show.list(colours.map(show.colour))}.` : ''}`,
    'ask-vinyl-colour': ({ content, colours }, show) =>
      `In which colour shall the ${content === 'name' ? 'names' : content === 'number' ? 'numbers' : 'letters'} be?${colours.length > 0 ? ` On the shelf: ${show.list(colours.map(show.colour))}.` : ''}`,
    'ask-numbers': ({ rows }) =>
      `These have no number yet: ${oneOf(rows)}. Which numbers, or do they wear none, or will they follow?`,
    'ask-names': ({ rows }) => `These have no name yet: ${oneOf(rows)}. Which names, or no name, or will they follow?`,
    'ask-garment-sizes': ({ garment }) =>
      `Who gets the ${garment}, and in which sizes? Everyone on the list, or count the sizes ("3 M, 2 L").`,
    'ask-sizes': ({ rows }) => `Which sizes for ${oneOf(rows)}? "All adult M" or "later" is an answer too.`,
    'ask-fit': ({ rows }) => `Are these youth or adult sizes: ${oneOf(rows)}?`,
    'ask-cloth': ({ garment }) =>
      `What does the label inside your ${garment} say (for example "100% polyester")? "I don't know" is fine, then we look when they come in.`,
    'ask-team': () => 'What is the team called?',
    'ask-sport': () => 'Which sport is it for?',
    'ask-ages': () => 'Is anyone on this list 12 or younger? And anyone under 3? It decides what may go on a garment.',
    'ask-ages-rows': ({ rows }) => `Who of them is 12 or younger, and who is under 3? ${oneOf(rows)}`,
    'ask-who': () => 'And your name, please? Who is ordering?',
    'ask-reading': ({ quote }) => `“${quote}” can mean more than one thing. Which is it?`,
    'ask-face': ({ quote, known }) =>
      known
        ? `“${quote}” is a script: it is not made for numbers. Which of these shall it be?`
        : `We have no letters called “${quote}”. Which of ours shall it be?`,
    'ask-name-order': ({ quote }) =>
      `“${quote}”: how shall that name stand on the list? I write all lines of this kind the same way.`,
    'ask-drop': ({ quote }) => `“${quote}”: which one do you mean?`,
    'raise-duplicate-number': ({ number, rows }) =>
      `Number ${number} is on the list ${rows.length} times: ${oneOf(rows)}. Is that right?`,
    'raise-same-surname': ({ name, rows }) =>
      `Two players are called ${name}: ${oneOf(rows)}. Shall we add initials? Write them as they should appear, or keep both as they are.`,
    'raise-count': ({ said, rows }) => `You said ${said}, the list has ${plural(rows, 'line', 'lines')}. Which is right?`,
    'working-it-out': () => 'That is everything I need. I am working out the picture, the price and the date.',
    proof: ({ revision, price, promise, late: changed, since, ...tidy }, show) => {
      const hangs = promise?.hangsOn.map(({ code, by }) => {
        const what = { 'sign-off': 'you sign off', garments: 'your garments are here', materials: 'the materials are here' }[code]
        return `${what} by ${late(by, show)}`
      })
      const promised = promise?.promised ?? null
      const ready =
        promised === null
          ? 'I cannot promise the date you need; a person will call you.'
          : `${promise?.feasible === false ? 'That is later than you need it. The soonest is' : 'Ready'} ${show.moment(promised)}${hangs !== undefined && hangs.length > 0 ? ` if ${show.list(hangs)}` : ''}.${promise?.feasible === false ? ' Does that still help you?' : ''}`
      const freeze = promise?.freezesAt == null ? '' : ` Changes to the list are free until ${show.moment(promise.freezesAt)}.`
      return {
        before: `Revision ${revision}${changesText(since, show)}: ${rosterCount(tidy)}. Please read it line by line: spelling, numbers and sizes are made as you sign them.`,
        ...tidyList(words, show, tidy),
        ...priceParts({ parts: priceWords.en, classes, total: 'Total' }, show, price),
        after: `${changed.map((one) => `${lateText(one, show)} `).join('')}${promise === null ? '' : ready}${freeze} Screen colours are not the vinyl's. To order exactly this, press the button or write "I approve revision ${revision}". If anything is different, just say what.`,
      }
    },
    'cannot-be-made': () => 'As it stands this cannot be made. Here is why and what could be done; tell me what to change:',
    'proof-outdated': () => 'The order has changed since that was worked out. I am working out the new one.',
    signed: ({ revision }) =>
      `Thank you. Revision ${revision} is signed and goes to the bench. I will write when it is ready; ask me any time how it stands, or how to wash them. Changes after this are priced before you sign again.`,
    'not-signed-change': () => 'I have made that change, so nothing is signed yet. You get the new proof to sign.',
    'not-signed-unclear': ({ revision }) =>
      `To be sure: is everything on revision ${revision} right, every name, number and size? Press the button or write "I approve revision ${revision}".`,
    'not-signed-nothing-shown': () => 'There is no proof to sign yet. First I need a few things:',
    'already-signed': ({ revision }) => `Revision ${revision} is already signed.`,
    'off-topic': () => 'That is outside my trade: I only know jerseys, vinyl and stones. Shall we go on with the order?',
    rude: () =>
      'I am sorry this is annoying. I will do my best, or I can call a person for you. Nothing on the order was changed.',
    'not-understood': () =>
      'I did not get that. Nothing was changed. Could you say it another way, or shall a person look at it?',
    thanks: () => 'You are welcome.',
    'file-kept': ({ file }) =>
      `I keep ${file} with the order for the shop to look at, but I cannot read names or numbers from it. Please paste the roster as text.`,
    'file-unread': ({ file, why }) =>
      `${file} ${{ 'too-large': 'is larger than I may read (1 MB, 500 lines)', broken: 'could not be opened', 'not-a-table': 'is not a table I can read' }[why]}. Please paste the roster as text.`,
    'not-read-photo': () =>
      'I cannot read names and numbers from photos or voice notes. Please paste the roster as text, or the shop will type it and you sign it.',
    'artwork-said': () =>
      'A logo or drawing is looked at by a person before it is promised. I noted your words for the shop; please send the file here (a PDF is best) and say that you may use it.',
    'roster-read': ({ rows, withoutName, withoutNumber, withoutSize }) => {
      const lacks = [
        withoutName > 0 ? `${withoutName} without a name` : '',
        withoutNumber > 0 ? `${withoutNumber} without a number` : '',
        withoutSize > 0 ? `${withoutSize} without a size` : '',
      ].filter((part) => part !== '')
      return `I read ${plural(rows, 'line', 'lines')}${lacks.length > 0 ? `, ${lacks.join(', ')}` : ''}.`
    },
    'not-decided': ({ words }) =>
      `Not on the list, as it is not decided yet: ${words.map((one) => `“${one}”`).join(', ')}. Write it again once it is.`,
    'words-unheard': ({ words }) =>
      `This part I did not understand, and nothing of it is changed: ${words.map((one) => `“${one}”`).join(', ')}. Please say it again in other words.`,
    'layers-alike': ({ words }) =>
      `Stones, outlines and shadows are the same on all pieces, so I cannot give or leave them off for some players here. Nothing is changed: ${words.map((one) => `“${one}”`).join(', ')}. Tell me whether it is for everybody, or ask for a person and the shop looks at those pieces.`,
    'which-of-them': ({ words }) =>
      `Which of them? ${words.map((one) => `“${one}”`).join(', ')} is of some only and does not say whose, so nothing is changed yet. Please name the players by number or name, for example “4 and 12 in white”.`,
    'lines-unread': ({ lines }) =>
      `These lines I could not read and nothing of them is on the list: ${lines.map((line) => `“${line}”`).join(', ')}. Please send them as number, name, size.`,
    'text-cut': ({ characters }) =>
      `That was long: I read the first ${characters} characters. Please send the rest in another message.`,
    'complaint-noted': () =>
      'I am sorry. I have written this down with everything you said and the owner is told now. Please keep the garment and, if you can, send a photo. The owner will answer you about what can be done.',
    'earlier-order-noted': ({ team }) =>
      `You want ${team === null ? 'the last order' : `what ${team} had`} again: I look for an order of yours. Meanwhile tell me what you need, and what changes.`,
    'earlier-order-elsewhere': () =>
      'This conversation belongs to an order that is signed. For the same again, or one piece of it, start a new order at our first page, say there what you want again, and paste the address of this page. The shop is told as well.',
    'earlier-order-taken': ({ team, lines, single }) =>
      single
        ? `Here is what ${team} had, for one piece. Price, lot of cloth or vinyl and sizes may have changed since; it is worked out anew.`
        : `Here is the last order of ${team}: ${plural(lines, 'line', 'lines')}. Everything marked “as last time” nobody said again yet: style, dye or vinyl lot, rules, price and sizes may have changed since.`,
    'ask-leaving': ({ lines, seniors }) =>
      `${seniors ? 'Who are the seniors' : `Who leaves`} of these ${lines}? Say numbers or names (“4, 9 and Lena”). New players you can add any time.`,
    'ask-sizes-again': () =>
      'Do the sizes of last time still fit everybody? If not, say who wears what now (“Lena is an adult M”).',
    'ask-whose': () => 'Whose piece shall we make again? Say the number or the name.',
    'status-asked': () => 'Let me see how your order stands.',
    'cancel-asked': ({ signed }) =>
      signed
        ? 'Do you want to cancel this order? It is signed: what is already cut or pressed, and garments bought for it, are charged; what is not begun is not. The shop tells you the sum before it asks for anything.'
        : 'Do you want to cancel this order? Nothing is signed, so it costs you nothing.',
    cancelled: () =>
      'I take it that you want to cancel this order. Where work on it has begun, a person at the shop answers you. You can start a new one any time.',
    'person-called': ({ ask }) => `I have asked ${ask} to look at this and write to you.`,
    'started-over': () => 'We start again with an empty order.',
    'language-chosen': () => 'We go on in English.',
    'price-now': ({ total }, show) =>
      total === null
        ? 'The price comes with the proof.'
        : `As it stands it is ${show.money(total)}, with the parts shown on the proof. Tell me another version and I price that beside it.`,
    'variant-asked': () => 'I work out what that would cost. Nothing on the order changes meanwhile.',
    'variant-price': ({ quote, total, present, promised }, show) => {
      const beside = present === null ? '' : ` As it is now: ${show.money(present)}.`
      const when = promised === null ? '' : ` It would be ready ${show.moment(promised)}.`
      return `“${quote}”: ${show.money(total)}.${beside}${when} Nothing is changed unless you choose it.`
    },
    'variant-refused': ({ quote }) => `“${quote}”: that cannot be made, and the order stays as it is. This is why:`,
    'earlier-mentioned': () =>
      'What about those? If something is wrong with them, tell me what, and the owner is told. If you want them again, say which and how many.',
    'no-hurry': () => 'No hurry. Nothing is made before you sign, and what you have told me is kept.',
    'rulebook-unknown': ({ name }) =>
      `I have no ${name} rule book for your sport as far as I know it, so nothing is checked against it: a person at the shop looks at that.`,
    'not-pressed-here': ({ words }) =>
      `${words.join(', ')}: not among what I can take an order for, because heat, hold and shape have to be tried first. Say “a person” and somebody at the shop looks at it; shirts, jerseys, hoodies and jackets of the shop’s list I take right here.`,
    'already-answered': () => 'That question is answered already, so this button changed nothing.',
    'already-so': () => 'The order says that already: nothing on it is different.',
    'kept-as-is': () => 'Good, the order stays as it was shown.',
    care: () =>
      'Turn them inside out, wash cold or warm without softener or bleach, hang them up or dry on low: a hot dryer lets vinyl and stones come off. Do not iron on the print. The shop writes on the care card in your bag when they were pressed and from when you may wash them. The label in the garment goes before all this.',
    'price-with-proof': () =>
      'I show the price together with the picture as soon as I have everything; if you want to compare, tell me the other version and I price that too.',
  },
  problems: {
    'shape-missing': ({ expected }) => `A value is missing (${expected}).`,
    'shape-unknown-key': ({ key }) => `“${key}” is not a known entry.`,
    'shape-kind': ({ expected, got }) => `Expected ${expected}, found ${got}.`,
    'shape-choice': ({ choices, got }) => `${got} is not one of: ${choices.join(', ')}.`,
    'shape-range': ({ least, most, got }) => `${got} is out of range (${least ?? '…'} to ${most ?? '…'}).`,
    'shape-form': ({ form, got }) => `${got} does not have the form ${form}.`,
    'shape-rule': ({ rule, got }) => `${got}: ${rule}.`,
    'id-twice': ({ id, kind }) => `The ${kind} id “${id}” is used twice.`,
    'garment-not-in-order': ({ id, known }) => `The garment “${id}” is not in the order (it has ${known.join(', ')}).`,
    'decoration-not-in-order': ({ id, known }) => `The decoration “${id}” is not in the order (it has ${known.join(', ')}).`,
    'line-twice': ({ line }) => `Line ${line} is on the roster twice.`,
    'row-without-number': ({ line }) => `Line ${line} has no number: that place stays empty.`,
    'row-without-name': ({ line }) => `Line ${line} has no name: that place stays empty.`,
    'decoration-on-nobody': ({ decoration }) => `“${decoration}” is on nobody’s garment.`,
    'garment-not-sold': ({ id, sold }, show) => `We do not sell “${id}”; we have ${show.list(sold.map(show.garment))}.`,
    'colour-unknown': ({ id }) => `“${id}” is not a colour we know.`,
    'colour-not-sold': ({ garment, colour, sold }, show) =>
      `The ${show.garment(garment)} does not come in ${show.colour(colour)}; it comes in ${show.list(sold.map(show.colour))}.`,
    'cut-not-sold': ({ garment, fit, size, line }, show) =>
      `The ${show.garment(garment)} does not come in ${sizeText(words, fit, size)} (line ${line}).`,
    'material-unknown': ({ id }) => `“${id}” is not a material of ours.`,
    'material-not-stocked': ({ kind, what, colour, colours }, show) =>
      `We have no ${kind === 'vinyl' ? `${classes[what as keyof typeof classes] ?? what} vinyl` : `${what} stones`} in ${show.colour(colour)}${colours.length > 0 ? `; there is ${show.list(colours.map(show.colour))}` : ''}.`,
    'material-kind': ({ id, wanted }) => `“${id}” is not ${wanted}.`,
    'place-without-figures': ({ place, fit, size }) =>
      `We have no measures for ${placesOf([place])} on ${sizeText(words, fit, size)}.`,
    'face-not-offered': ({ face, offered }) => `The letters “${face}” are not offered; there is ${offered.join(', ')}.`,
    'artwork-needs-a-person': ({ file }) => `The artwork ${file} must be looked at by a person before it can be promised.`,
    'size-later': ({ line }) => `Line ${line}: the size follows.`,
    'face-unknown': ({ face, offered }) => `The letters “${face}” are not known; there is ${offered.join(', ')}.`,
    'face-unreadable': ({ face, reason }) => `The letters “${face}” cannot be read: ${reason}.`,
    'face-lacks': ({ face, characters, faces }) =>
      `The letters “${face}” have no ${characters.join(' ')}${faces.length > 0 ? `; ${faces.join(', ')} have` : ', nor have our other letters'}.`,
    'face-without-digits': ({ face, missing }) => `The letters “${face}” lack the digits ${missing.join(' ')}.`,
    'face-contour-open': ({ face, character }) => `“${character}” of “${face}” has an open contour.`,
    'face-changed': ({ face, file }) => `The file ${file} of “${face}” is not the one that was checked.`,
    'face-listed-twice': ({ face }) => `Two kinds of letters in the shop’s list are called “${face}”; give one another id.`,
    'face-file-missing': ({ face, file }) => `The file ${file} of “${face}” is missing.`,
    'text-empty': () => 'There is no text to set.',
    'text-too-long': ({ characters, most }) => `The text has ${characters} characters; ${most} is the most.`,
    'text-right-to-left': ({ text }) => `“${text}” is written from right to left, which we cannot set.`,
    'height-impossible': ({ heightMicrometres, leastMicrometres, mostMicrometres }, show) =>
      `${show.length(heightMicrometres)} high cannot be made; it must be ${show.length(leastMicrometres, 'up')} to ${show.length(mostMicrometres)}.`,
    'text-too-wide': ({ text, widthMicrometres, mostMicrometres }, show) =>
      `“${text}” would be ${show.length(widthMicrometres, 'up')} wide; there is room for ${show.length(mostMicrometres)}.`,
    'line-too-bent': ({ text }) => `“${text}” cannot be bent that much.`,
    'too-many-rows': ({ rows, most }) => `${rows} rows of stones do not fit; ${most} is the most.`,
    'stone-setting-impossible': ({ size }) => `The shop’s setting for ${size} stones cannot be cut.`,
    'no-room-for-stones': ({ text, size, remedies }) =>
      `There is no room for ${size} stones on “${text}”. ${remedyText(remedies)}`,
    'stones-too-many': ({ text, about, most, remedies }) =>
      `“${text}” would take about ${plural(about, 'stone', 'stones')}; ${most} on one text is the most. ${remedyText(remedies)}`,
    'letters-condensed': ({ text, percent }) => `“${text}” is set narrower (${percent} %) to fit.`,
    'letters-smaller': ({ text, heightMicrometres, askedMicrometres }, show) =>
      `“${text}” is set ${show.length(heightMicrometres)} high instead of ${show.length(askedMicrometres)} to fit.`,
    'letters-joined': ({ text, remedies }) =>
      `The letters of “${text}” stand too close for stones between them. ${remedyText(remedies)}`,
    'letters-melt': ({ text, size, heightMicrometres, neededMicrometres, remedies }, show) =>
      `“${text}” at ${show.length(heightMicrometres)} is small for ${size} stones: the stones of its letters run together and it is hard to read. They stand apart from about ${show.length(neededMicrometres, 'up')} on. ${remedyText(remedies)}`,
    'row-dropped': ({ text, row: dropped, remedies }) =>
      `Row ${dropped} of stones does not fit on “${text}” and is left out. ${remedyText(remedies)}`,
    'row-shared': ({ text }) => `Where “${text}” is narrow, both sides share one line of stones.`,
    'row-gap': ({ text, remedies }) => `A row of stones on “${text}” has a gap. ${remedyText(remedies)}`,
    'corner-bald': ({ text, remedies }) => `A corner of “${text}” stays without a stone. ${remedyText(remedies)}`,
    'corner-blunt': ({ text }) => `Corners of “${text}” that lie close together share a stone.`,
    'part-wider-than-roll': ({ tag, widthMicrometres, mostMicrometres }, show) =>
      `${tag} is ${show.length(widthMicrometres, 'up')} wide; the roll is ${show.length(mostMicrometres)}.`,
    'template-larger-than-sheet': ({ text, widthMicrometres, heightMicrometres }, show) =>
      `The template of “${text}” (${show.length(widthMicrometres, 'up')} × ${show.length(heightMicrometres, 'up')}) is larger than a sheet.`,
    'fibre-melts': ({ garment, fibre, percent }) =>
      `The ${garment} has ${percent} % ${fibre}, which melts or stiffens for good under any press.`,
    'no-common-heat': ({ garment, places: where, leastTenthsC, leastBy, mostTenthsC, mostBy }, show) =>
      `${garment}, ${placesOf(where)}: ${leastBy} needs at least ${show.temperature(leastTenthsC)}, but ${mostBy} allows at most ${show.temperature(mostTenthsC)}.`,
    'no-common-time': ({ garment, places: where, leastSeconds, leastBy, mostSeconds, mostBy }) =>
      `${garment}, ${placesOf(where)}: ${leastBy} needs ${leastSeconds} s, ${mostBy} allows ${mostSeconds} s.`,
    're-press-not-allowed': ({ garment, material, times, allowedTimes }) =>
      `${garment}: ${material} would meet the press ${times} more times; its sheet allows ${allowedTimes}.`,
    'no-setting': ({ machine, leastTenthsC, mostTenthsC }, show) =>
      `${machine} has no setting between ${show.temperature(leastTenthsC)} and ${show.temperature(mostTenthsC)}.`,
    'platen-too-small': ({ garment, places: where, widthMicrometres, heightMicrometres }, show) =>
      `${garment}, ${placesOf(where)}: ${show.length(widthMicrometres, 'up')} × ${show.length(heightMicrometres, 'up')} fits on no platen in one press.`,
    'auxiliary-missing': ({ garment, kind }) => `${garment}: a ${kind} is needed and the shop has none that stands the heat.`,
    'asked-over-cap': ({ askedTenthsC, capTenthsC, capBy }, show) =>
      `${show.temperature(askedTenthsC)} was asked for; ${capBy} allows ${show.temperature(capTenthsC)} at most.`,
    'asked-over-margin': ({ askedTenthsC, capTenthsC, capBy, swingTenthsC }, show) =>
      `${show.temperature(askedTenthsC)} lies within the press’s swing (${show.swing(swingTenthsC)}) of the limit of ${capBy}, ${show.temperature(capTenthsC)}.`,
    'asked-too-cool': ({ askedTenthsC, setTenthsC, leastTenthsC, leastBy }, show) =>
      `${show.temperature(askedTenthsC)} was asked for; ${leastBy} needs at least ${show.temperature(leastTenthsC)}, so the press is set to ${show.temperature(setTenthsC)}.`,
    'usual-over-margin': ({ material, usualTenthsC, setTenthsC, capTenthsC }, show) =>
      `${material}: the usual ${show.temperature(usualTenthsC)} lies too near the limit of ${show.temperature(capTenthsC)}; set ${show.temperature(setTenthsC)}.`,
    'fibre-may-suffer': ({ garment, fibre, percent, fromTenthsC }, show) =>
      `${garment}: ${percent} % ${fibre} may suffer from ${show.temperatureFrom(fromTenthsC)} up; test first.`,
    'thin-low-margin': ({ setTenthsC, leastTenthsC, leastBy }, show) =>
      `Set at ${show.temperature(setTenthsC)}, the press may fall below the ${show.temperature(leastTenthsC)} that ${leastBy} needs.`,
    'separate-presses': ({ garment, places: where, presses }) =>
      `${garment}, ${placesOf(where)}: finished in ${plural(presses, 'separate press', 'separate presses')}.`,
    'pressure-differs': ({ words: pressures, taken }) =>
      `The layers want different pressure (${pressures.join(', ')}); ${taken} is taken.`,
    'obstacle-near': ({ garment, places: where, obstacles }) =>
      `${garment}, ${placesOf(where)}: keep clear of ${obstaclesOf(obstacles)}.`,
    'zip-two-halves': ({ garment, places: where }) => `${garment}, ${placesOf(where)}: pressed in two halves beside the zip.`,
    'inside-press-left-out': ({ garment }) => `${garment}: the press from inside is left out.`,
    'fibre-unknown': ({ garment }) =>
      `Nobody knows yet what the ${garment} is made of: the label is read when it comes in, before anything is pressed.`,
    'fibre-not-on-sheet': ({ garment, material, fibre, percent }) =>
      `The maker’s sheet of ${material} does not name ${fibre} (${percent} % of the ${garment}): test first.`,
    'fibre-refused': ({ garment, material, fibre, percent }) =>
      `The maker’s sheet of ${material} says no to ${fibre} (${percent} % of the ${garment}).`,
    'care-label-unread': ({ garment }) => `The care label of the ${garment} is not read yet.`,
    'over-care-label': ({ garment, ironTenthsC, setTenthsC }, show) =>
      `The care label of the ${garment} allows an iron of ${show.temperature(ironTenthsC)}; the press is set to ${show.temperature(setTenthsC)}: test press first.`,
    'finish-unknown': ({ garment }) => `Nobody knows yet whether the ${garment} repels water: five water drops are tried first.`,
    'finish-repels': ({ garment, material }) => `The ${garment} repels water; ${material} does not hold on it.`,
    'finish-needs-test': ({ garment, material }) => `The finish of the ${garment} needs a test press with ${material}.`,
    'drops-beaded': ({ garment }) => `Water drops stayed on the ${garment}: ordinary vinyl and stones do not hold.`,
    'drops-doubtful': ({ garment, seconds }) => `Water drops sank into the ${garment} only after ${seconds} s: test press first.`,
    'repellence-suspected': ({ garment }) => `Cloth like that of the ${garment} often repels: water drops are tried first.`,
    'bleed-risk': ({ garment, colour, fromTenthsC, setTenthsC }, show) =>
      `The dye of the ${garment} (${show.colour(colour)}) may bleed into a light colour from ${show.temperatureFrom(fromTenthsC)}; the press is set to ${show.temperature(setTenthsC)}. We press one and look after 24 hours before the rest.`,
    'stretch-needs-stretch': ({ garment, material }) => `The ${garment} stretches; ${material} may crack.`,
    'solid-stones-on-stretch': ({ garment }) => `Filled stone fields do not last on stretch cloth (${garment}).`,
    'perforated-cloth': ({ garment, isKnown }) =>
      isKnown
        ? `The ${garment} has holes: glue could pass to the other side, so a pad goes inside.`
        : `Nobody has said how the cloth of the ${garment} is made: in case it has holes a pad goes inside.`,
    'press-marks': ({ garment }) => `The press may leave marks on the ${garment}.`,
    'not-on-top': ({ decoration, above, below }) => `${decoration}: ${above} does not hold on ${below}.`,
    'stones-under-three': ({ line }) => `Line ${line}: no stones or loose glitter for a child under three.`,
    'leaded-stones-child': ({ line, material }) => `Line ${line}: ${material} contains lead and may not go on children’s wear.`,
    'certificate-missing': ({ material, lot, lines }) =>
      `For children’s wear (lines ${lines.join(', ')}) the shop asks for the certificate of ${material}, lot ${lot}.`,
    'age-unknown': ({ lines }) => `The age is not known for lines ${lines.join(', ')}.`,
    'childrens-wear': ({ lines }) => `Lines ${lines.join(', ')} are for children: certificates are asked for by lot.`,
    'strings-on-child': ({ garment, lines }) =>
      `The ${garment} has or may have strings at hood or neck and is a child’s, or may be (lines ${lines.join(', ')}): the owner is asked before anything is pressed.`,
    'stones-on-game-wear': () => 'Stones on a jersey worn in games: ask your league in writing.',
    'reflective-banned': ({ body, clause }) => `${body} ${clause} does not allow anything reflective.`,
    'ornaments-clause': ({ body, clause, text }) => `${body} ${clause}: “${text}”. Ask your league.`,
    'body-not-solid': ({ body, clause }) => `${body} ${clause} wants the number in one solid colour.`,
    'own-colour-number': ({ decoration, colour }, show) =>
      `${decoration}: the number would have the jersey’s own colour (${show.colour(colour)}).`,
    'failing-pair': ({ body, jersey, number }, show) =>
      `${body} names ${show.colour(number)} on ${show.colour(jersey)} as hard to read.`,
    'low-contrast': ({ decoration }) => `${decoration} is hard to see on that colour.`,
    'illegal-number': ({ body, clause, line, number, nearest }) =>
      `Line ${line}: ${number} is not a legal number (${body} ${clause})${nearest.length > 0 ? `; the nearest are ${nearest.join(', ')}` : ''}.`,
    'number-twice': ({ body, number, lines, forbidden }) =>
      `Number ${number} is there twice (lines ${lines.join(', ')})${forbidden ? `; ${body} does not allow it.` : '. Is that right?'}`,
    'numbers-clash': ({ body, numbers, lines }) =>
      `${numbers.join(' and ')} may not both be on one roster (lines ${lines.join(', ')}, ${body}).`,
    'number-too-small': ({ body, clause, place, hasMicrometres, leastMicrometres }, show) =>
      `The number (${placesOf([place])}) is ${show.length(hasMicrometres)}; ${body} ${clause} wants at least ${show.length(leastMicrometres, 'up')}.`,
    'number-too-large': ({ body, clause, place, hasMicrometres, mostMicrometres }, show) =>
      `The number (${placesOf([place])}) is ${show.length(hasMicrometres, 'up')}; ${body} ${clause} allows ${show.length(mostMicrometres)}.`,
    'stroke-too-thin': ({ body, clause, hasMicrometres, leastMicrometres }, show) =>
      `The strokes are ${show.length(hasMicrometres)}; ${body} ${clause} wants at least ${show.length(leastMicrometres, 'up')}.`,
    'stroke-too-thick': ({ body, clause, hasMicrometres, mostMicrometres }, show) =>
      `The strokes are ${show.length(hasMicrometres, 'up')}; ${body} ${clause} allows ${show.length(mostMicrometres)}.`,
    'border-too-wide': ({ body, clause, hasMicrometres, mostMicrometres }, show) =>
      `The border is ${show.length(hasMicrometres, 'up')}; ${body} ${clause} allows ${show.length(mostMicrometres)}.`,
    'name-too-small': ({ body, clause, hasMicrometres, leastMicrometres }, show) =>
      `The name is ${show.length(hasMicrometres)} high; ${body} ${clause} wants at least ${show.length(leastMicrometres, 'up')}.`,
    'name-too-large': ({ body, clause, hasMicrometres, mostMicrometres }, show) =>
      `The name is ${show.length(hasMicrometres, 'up')} high; ${body} ${clause} allows ${show.length(mostMicrometres)}.`,
    'name-near-number': ({ body, hasMicrometres, leastMicrometres }, show) =>
      `Name and number are ${show.length(hasMicrometres)} apart; ${body} wants ${show.length(leastMicrometres, 'up')}.`,
    'place-missing': ({ body, clause, garment, place }) =>
      `${body} ${clause} wants a number on the ${placesOf([place])} of the ${garment}.`,
    'no-rulebook': ({ sport }) =>
      `No rule book was named for this ${words.sports[sport] ?? sport} order, so the numbers are not checked against one.`,
    'old-edition': ({ body, edition }) => `Our copy of ${body} is an old edition (${edition}): ask the league.`,
    'ask-your-league': ({ body, clause }) => `Check ${body} ${clause} with your league.`,
    'goalkeeper-number': ({ line, number }) => `Line ${line}: ${number} is only for the goalkeeper.`,
    'wider-than-free': ({ text, widthMicrometres, freeWidthMicrometres }, show) =>
      `“${text}” is ${show.length(widthMicrometres, 'up')} wide; there is ${show.length(freeWidthMicrometres)} of free cloth.`,
    'places-collide': ({ first, second, overlapMicrometres }, show) =>
      `The ${first} and the ${second} overlap by ${show.length(overlapMicrometres, 'up')}.`,
    'implausible-record': ({ material, field, value, least, most }, show) =>
      `The record of ${material} gives ${figure(field, value, show)} (${field}); makers of its class publish ${figure(field, least, show)} to ${figure(field, most, show)}. Look at the sheet again.`,
    'short-of-material': ({ material, kind, missing, days }, show) =>
      `${kind === 'stones' ? plural(missing, 'stone', 'stones') : show.length(missing, 'up')} of ${material} must be ordered; it takes ${plural(days, 'day', 'days')}.`,
    'book-malformed': ({ reason }) => `The book of work cannot be read: ${reason}.`,
    'need-by-past': () => 'The hour you need it has passed: say a day and hour to come.',
    'time-in-lost-hour': ({ text, readAs }, show) =>
      `There is no ${show.hour(text.slice(11))} that day: the clocks go forward. I read it as ${show.moment(readAs)}; if you meant another hour, say which.`,
    'station-unknown': ({ station }) => `There is no station “${station}”.`,
    'station-twice': ({ station }) => `The station “${station}” is listed twice.`,
    'station-never-open': ({ station }) =>
      `The station “${station}” has no open hour in all the time that is planned: give it hours, or the work another station.`,
    'order-twice': ({ order }) => `The order “${order}” is in the book twice.`,
    'operation-twice': ({ operation }) => `The step “${operation}” is there twice.`,
    'after-unknown': ({ operation, after }) => `The step “${operation}” waits for “${after}”, which does not exist.`,
    'after-circle': ({ operation }) => `The step “${operation}” waits for itself.`,
    'work-longer-than-open': ({ operation, minutes, longestMinutes }) =>
      `“${operation}” takes ${minutes} minutes in one go; the longest open time is ${longestMinutes}: let it be interrupted, or open longer.`,
    'never-together': ({ operation }) =>
      `What “${operation}” needs is never open at the same time for long enough: let the hours of its stations and people meet.`,
    'setup-shortcut': ({ station, from, to }) => `The set-up times of “${station}” from ${from} to ${to} contradict each other.`,
    'started-together': ({ station, first, second }) => `“${first}” and “${second}” cannot both have begun at “${station}”.`,
    'started-in-future': ({ operation }) => `“${operation}” is said to have begun in the future.`,
    'beyond-horizon': () => 'The work does not fit into the time that is planned ahead: make it smaller, or give more hours.',
    'closed-before-need-by': ({ needBy, collectBy, why }, show) =>
      `We are closed on ${show.moment(needBy)}${why === null ? '' : ` (${why})`}; the last hour to collect before that is ${show.moment(collectBy)}.`,
    'cannot-plan-now': () =>
      'There is no room for this work in our hours as they stand. That is for us to put right, not for you; the shop has been told. Ask for a person and we will write to you.',
    'zone-unknown': ({ zone }) => `The time zone “${zone}” is not known.`,
    'time-malformed': ({ text }) => `“${text}” is not a date and time.`,
    'no-such-time': ({ text }) => `“${text}” does not exist.`,
    'year-out-of-range': ({ text, firstYear, lastYear }) => `“${text}” is not between ${firstYear} and ${lastYear}.`,
    'hours-malformed': ({ text }) => `“${text}” are not opening hours.`,
    'shop-file-missing': ({ file, folder }) => `${file} is missing in ${folder}.`,
    'shop-file-not-json': ({ file, reason }) => `${file} is not valid JSON: ${reason}.`,
    'shop-reference': ({ id, wanted, file }) => `${file} names the ${wanted} “${id}”, which does not exist.`,
    'shop-zone-differs': ({ profile, hours }) => `The shop’s zone is ${profile}, its hours say ${hours}.`,
    'order-not-json': ({ reason }) => `The order is not valid JSON: ${reason}.`,
    'stone-size-not-set': ({ size }) => `The shop has no setting for ${size} stones.`,
    'vinyl-over-stones': ({ garment, layer }) => `${garment}: vinyl (${layer}) cannot go over stones.`,
    'too-many-colours': ({ body, clause, decoration, colours, most }) =>
      `${decoration} has ${colours.length} colours; ${body} ${clause} allows ${most}.`,
    'too-many-layers': ({ decoration, layers, most }) =>
      `${decoration} has ${plural(layers, 'layer', 'layers')} of vinyl; ${most} is the most that holds.`,
    'late-for-need-by': ({ needBy, earliest, ready, of }, show) =>
      `It cannot be ready by ${show.moment(needBy)}; the soonest is ${show.moment(earliest)}.${
        ready === 0
          ? ''
          : ` About ${ready} of the ${of} garments could be ready in time: if you want to collect in two parts, ask a person here, who settles which ones.`
      }`,
    'paper-lacks': ({ characters }) =>
      `The ticket’s print has no sign for ${characters.join(' ')}; they are printed as code points.`,
  },
  ways: {
    'another-class': (subject) => `another vinyl${subject === '' ? '' : ` (${subject})`}`,
    'another-press': (subject) => `another press${subject === '' ? '' : ` (${subject})`}`,
    'another-garment': (subject) => `another garment${subject === '' ? '' : ` (${subject})`}`,
    'another-place': (subject) => `another place${subject === '' ? '' : ` (${subject})`}`,
    'another-stone': (subject) => `another stone${subject === '' ? '' : ` (${subject})`}`,
    'separate-places': () => 'put them on separate places',
    'no-stones': () => 'leave the stones off',
    'bleed-test': () => 'a bleed test over 24 hours',
    blocker: (subject) => `a blocker underneath${subject === '' ? '' : ` (${subject})`}`,
    'low-temperature-vinyl': (subject) => `low-temperature vinyl${subject === '' ? '' : ` (${subject})`}`,
    'stretch-vinyl': (subject) => `stretch vinyl${subject === '' ? '' : ` (${subject})`}`,
    'coated-cloth-vinyl': (subject) => `vinyl made for coated cloth${subject === '' ? '' : ` (${subject})`}`,
    'test-press': () => 'a test press',
    'water-drops': () => 'try water drops',
    'read-label': () => 'read the label',
    'lead-free-stones': (subject) => `lead-free stones${subject === '' ? '' : ` (${subject})`}`,
    certificate: () => 'a certificate for the lot',
    'ask-age': () => 'tell us the ages',
    'ask-league': () => 'ask your league',
    'ask-owner': () => 'ask the owner',
    'remove-strings': () => 'take the strings out',
    'two-halves': () => 'press in two halves',
    'pad-inside': () => 'a pad inside',
    'swap-layers': () => 'swap the layers',
    'knock-out-below': () => 'cut the lower layer away underneath',
    'outline-instead': () => 'an outline instead',
    'other-number': (subject) => `another number${subject === '' ? '' : ` (${subject})`}`,
    'other-colour': (subject) => `another colour${subject === '' ? '' : ` (${subject})`}`,
    'other-face': (subject) => `other letters${subject === '' ? '' : ` (${subject})`}`,
    larger: () => 'make it larger',
    smaller: () => 'make it smaller',
    'usual-setting': () => 'the usual setting',
    'customer-signs': () => 'you sign that it is skipped',
  },
  couldDo: (ways) => `Could be done: ${ways}.`,
  noWay: 'We know no way round it: ask the shop.',
  severities: { stop: 'Stop', 'needs-test': 'Test first', caution: 'Caution', note: 'Note' },
  buttons: {
    'sign-off': (revision) => `I approve revision ${revision}`,
    undo: () => 'Undo',
    change: () => 'Change something',
    person: () => 'Ask a person',
    'start-over': () => 'Start over',
    cancel: () => 'Cancel the order',
    status: () => 'How does it stand?',
  },
  answers: {
    'nobody-leaves': 'Nobody leaves',
    'sizes-as-before': 'Sizes as last time',
    everyone: 'Everyone on the list',
    garments: 'The garments',
    letters: 'Numbers, names or letters',
    numbers: 'Jersey numbers',
    pieces: 'How many of each size',
    yes: 'Yes',
    no: 'No',
    'as-is': 'It is right as it is',
    'all-13-up': 'Nobody: all are 13 or older',
    'all-3-12': 'All are 3 to 12',
    mixed: 'Some are 12 or younger',
    'not-known': 'I do not know',
    later: 'It follows later',
    none: 'None',
    'front-back': 'Front and back',
    cancel: 'Yes, cancel',
    'take-variant': 'Take this one',
    'keep-order': 'Keep it as it is',
    ...words.sports,
    other: 'another sport',
  },
  fits: { ...fits, men: 'adult (men’s)' },
  classes,
  places,
  row,
  fields,
  assumedMark: '(assumed)',
} satisfies Catalogue

function remedyText(remedies: readonly string[]): string {
  const said: Readonly<Record<string, string>> = {
    'smaller-stone': 'a smaller stone',
    'larger-stone': 'a larger stone',
    'fewer-rows': 'fewer rows',
    'wider-tracking': 'wider spacing',
    'another-face': 'other letters',
    'larger-letters': 'larger letters',
    'shorter-text': 'a shorter text',
    vinyl: 'vinyl without stones',
  }
  return remedies.length === 0 ? '' : `Would help: ${remedies.map((one) => said[one] ?? one).join(', ')}.`
}
