import type { Open } from '../conversation.ts'
import type { Draft } from '../draft.ts'
import { type Patch, preview } from '../patch.ts'
import { languages, spoken } from '../words/languages.ts'
import { datesIn, type Given } from './dates-beside.ts'
import { joined } from './list/change.ts'
import { readChangedTally } from './list/changed-tally.ts'
import { readEveryone } from './list/everyone.ts'
import { readNamedSizes } from './list/named-sizes.ts'
import { readNamesInOrder } from './list/names-in-order.ts'
import { readNumberLists } from './list/number-lists.ts'
import { readPlayers } from './list/players.ts'
import { readRestSizes } from './list/rest-sizes.ts'
import { addPlayers } from './list/table.ts'
import { readTally } from './list/tally.ts'
import { headPatches, labels, nameSpans } from './people/heads.ts'
import { readAdded } from './players/added-player.ts'
import { readCorrections } from './players/corrections.ts'
import { readOfOneGarment } from './players/of-one-garment.ts'
import { readOnePiece } from './players/one-piece.ts'
import { readTheirSizeLater } from './players/their-size-later.ts'
import { readToldPlayers } from './players/told-player.ts'
import { type Lexicon, type Term, termsOf } from './text/lexicon.ts'
import { union, without } from './text/set-aside.ts'
import { stated } from './text/statements.ts'
import { fold, isCapital, type Token, tokensOf } from './text/tokens.ts'
import { wearersSide } from './text/viewer.ts'
import { askedAndRefused } from './things/asked-and-refused.ts'
import { readBlend } from './things/blend.ts'
import { countedPatches } from './things/counted-pieces.ts'
import { readDoubtedColour } from './things/doubted-colour.ts'
import { readDoubtedCounts } from './things/doubted-counts.ts'
import { readGarmentCounts } from './things/garment-counts.ts'
import { garmentIds } from './things/hear-garment.ts'
import { placeLoose, swapColours } from './things/hues.ts'
import { itemsOf } from './things/items.ts'
import { readMove } from './things/moves.ts'
import { readPartsTold } from './things/parts-told.ts'
import { readPlaceCorrected } from './things/place-corrected.ts'
import { readRecolour } from './things/recolour.ts'
import { readSetColours } from './things/set-colours.ts'
import { placeStones, readStonePlaces, setAside } from './things/stone-places.ts'
import { readThings } from './things/things.ts'
import { tradeIn } from './trade.ts'

/** `alone`: a single piece of an earlier order is made again. */
export type Prose = Given & { readonly shouted: boolean; readonly alone: boolean }

export type ProseFound = { readonly patches: readonly Patch[]; readonly open: readonly Open[] }

type Rosterlike = { readonly patches: readonly Patch[]; readonly open: readonly Open[]; readonly taken: ReadonlySet<number> }

const sizedPatches = (draft: Draft, listed: ReturnType<typeof readNumberLists>): readonly Patch[] =>
  Object.entries(draft.rows).flatMap(([key, row]) =>
    listed.sized
      .filter((one) => row.number !== undefined && one.numbers.includes(row.number))
      .flatMap((one): readonly Patch[] => [
        { path: ['rows', key, 'size'], value: one.size },
        ...(one.fit === undefined ? [] : [{ path: ['rows', key, 'fit'], value: one.fit }]),
      ]),
  )

/** Where a list is there, a question ("is Ulises 8 an XL?") or a doubt puts nobody on it. */
const asStated = (tokens: readonly Token[], { rows }: Draft): readonly Token[] =>
  Object.keys(rows).length === 0 ? tokens : stated(tokens)

/** Rows, sizes and changes of rows that stand in sentences. */
const readRows = (scene: Prose, tokens: readonly Token[]): Rosterlike => {
  const added = readAdded(tokens, { rows: scene.before.rows, lexicon: scene.lexicon })
  if (added.taken.size === 0) return readRowsOfPiece(scene, tokens)
  const patches = addPlayers(scene.draft.rows, added.players)
  const left = readRowsOfPiece({ ...scene, draft: preview(scene.draft, patches) }, without(tokens, added.taken))
  return joined([{ patches, open: [], taken: added.taken }, left])
}

const readRowsOfPiece = (scene: Prose, tokens: readonly Token[]): Rosterlike => {
  const piece = readOnePiece(tokens, scene)
  if (piece.taken.size > 0) {
    const left = readRowsBeside({ ...scene, draft: preview(scene.draft, piece.patches) }, without(tokens, piece.taken))
    return joined([piece, left])
  }
  return readRowsBeside(scene, tokens)
}

/** "Everybody is an M except Greta, she is an L": who has a size told alone keeps it. */
const isTold = ({ path: [root, key, field] }: Patch, told: readonly Patch[]): boolean =>
  root === 'rows' && told.some(({ path }) => path[1] === key && path[0] === root && (path[2] === field || path[2] === 'size'))

const readRowsBeside = (scene: Prose, tokens: readonly Token[]): Rosterlike => {
  const counted = readGarmentCounts(tokens, termsOf(scene.lexicon, tokens), scene.before)
  const about = { draft: scene.before, quote: scene.text.trim().slice(0, 80), trade: tradeIn(scene.lexicon, tokens) }
  const read = (words: readonly Token[]) => readCorrections(words, about)
  const apart = readOfOneGarment(without(tokens, counted.taken), { ...about, lexicon: scene.lexicon, read })
  const before = { ...about, draft: preview(about.draft, apart.patches) }
  const first = joined([counted, apart])
  const corrections = joined([first, readCorrections(without(tokens, first.taken), before)])
  const dated = datesIn(scene, tokens, corrections.taken)
  const patches: Patch[] = [...corrections.patches, ...dated.patches]
  let draft = preview(scene.draft, patches)
  const add = (more: readonly Patch[]) => {
    patches.push(...more)
    draft = preview(draft, more)
  }
  const told = readToldPlayers(without(tokens, union(corrections.taken, dated.taken)), { draft, lexicon: scene.lexicon })
  add(addPlayers(draft.rows, told.players))
  let free = without(tokens, union(corrections.taken, dated.taken, told.taken))
  const listed = readNumberLists(free, new Set(Object.values(draft.rows).flatMap((row) => row.number ?? [])))
  add(addPlayers(draft.rows, listed.players))
  add(sizedPatches(draft, listed))
  const everyone = readEveryone(without(free, new Set()), draft)
  free = without(free, union(listed.taken, everyone.taken))
  const inline = readPlayers({
    tokens: asStated(free, scene.before),
    draft: scene.before,
    lexicon: scene.lexicon,
    taken: new Set(),
  })
  add(addPlayers(draft.rows, inline.players))
  add(everyone.patches.filter((patch) => !isTold(patch, corrections.patches)))
  add(addPlayers(draft.rows, everyone.players))
  add(readTheirSizeLater(tokens, draft))
  add(readNamesInOrder(scene.text, draft))
  free = without(free, inline.taken)
  const sized = readNamedSizes({ tokens: free, draft, lexicon: scene.lexicon })
  add(addPlayers(draft.rows, sized.players))
  return {
    patches,
    open: [...corrections.open, ...dated.open],
    taken: union(corrections.taken, dated.taken, told.taken, listed.taken, everyone.taken, inline.taken, sized.taken),
  }
}

type Sorted = { readonly scene: Prose; readonly tokens: readonly Token[]; readonly terms: readonly Term[] }

/** "Luz, Gris y Blanca son tallas de mujer", "Stone quit": words of the trade in capitals that are names of the list are those players. */
const namedTerms = ({ scene, tokens, terms }: Sorted): ReadonlySet<number> => {
  const names = new Set(Object.values(scene.draft.rows).flatMap(({ name }) => (name === undefined ? [] : fold(name).split(' '))))
  const capital = terms.filter(({ from, to }) => to === from + 1 && isCapital(tokens[from]))
  return new Set(capital.flatMap(({ from }) => (names.has(tokens[from]?.key ?? '') ? [from] : [])))
}

/** Garments, what goes on them, counted sizes, and colours of nothing in particular. */
const readGoods = (
  { scene, tokens, terms }: Sorted,
  before: readonly Patch[],
  taken: ReadonlySet<number>,
): ProseFound & { readonly things: Draft } => {
  const blend = readBlend(tokens, terms)
  const tally = readTally({ tokens, terms, taken })
  const stones = readStonePlaces({ tokens, terms }, scene.draft)
  const doubted = readDoubtedCounts({ text: scene.text, tokens, terms, draft: scene.draft })
  const aside = union(tally.taken, doubted.taken, blend?.taken ?? new Set(), namedTerms({ scene, tokens, terms }))
  const postfix = languages[scene.language].basics.nounFirst
  const known = preview(scene.draft, before)
  const sets = readSetColours({ tokens, terms, draft: known, postfix })
  const spare = without(setAside(tokens, union(stones.taken, sets.taken)), aside)
  const items = itemsOf({ text: scene.text, tokens: spare, terms: termsOf(scene.lexicon, spare), shouted: scene.shouted })
  const walked = readThings({ draft: preview(known, sets.patches), items, postfix, setsTold: sets.taken.size > 0 })
  const found = placeStones(scene.before, walked, stones)
  const things = found.draft
  const [first = 'jersey'] = Object.keys(things.garments)
  const cloth = blend === null ? [] : [{ path: ['garments', first, 'fibres'], value: blend.fibres }]
  const swapped = swapColours(things, found.negated, found.loose)
  const loose = swapped.length > 0 ? { patches: [], open: [] } : placeLoose(things, found.loose, scene.asked)
  const changed = readChangedTally(scene.before, { tokens, terms }, tally.counted)
  const counted = [...changed.patches, ...countedPatches(scene.draft, things, { terms, counted: changed.fresh })]
  return {
    things,
    patches: [...sets.patches, ...found.patches, ...cloth, ...swapped, ...loose.patches, ...counted],
    open: [...found.open, ...loose.open, ...changed.open, ...doubted.open],
  }
}

const forEach = new RegExp(`\\b${spoken.players.forEach}\\b[^.\\n]{0,20}\\b${spoken.players.forEachDoes}\\b`)

/** "Everyone gets a hoodie too": a garment named in such a sentence is each player's. */
const eachPatches = (text: string, things: Draft, lexicon: Lexicon): readonly Patch[] =>
  (text.match(/[^.\n!?]+/g) ?? []).flatMap((sentence) => {
    if (!forEach.test(fold(sentence))) return []
    const garments = termsOf(lexicon, tokensOf(sentence)).flatMap(({ meaning }) =>
      meaning.kind === 'garment' ? [garmentIds[meaning.id]] : [],
    )
    return garments
      .filter((id) => things.garments[id] !== undefined)
      .map((id): Patch => ({ path: ['garments', id, 'each'], value: true }))
  })

/** Who is named by name: "Kelly Shaw" and "Jade" are no colours. */
const whom: readonly string[] = ['orders', 'signsOff', 'pays', 'collects']

/** Capitals that are, or stand in, what is to be written are no team. */
const isWritten = (team: string, written: readonly string[]): boolean =>
  written.includes(team) || (team === team.toUpperCase() && written.some((text) => text.includes(team)))

/** "Drennan's mom texted, it's Drennen": a name of the list, where it is known who orders. */
const isPlayer = ({ path: [root], value }: Patch, { rows }: Draft, { orders }: Draft): boolean =>
  root === 'orders' && orders !== undefined && Object.values(rows).some(({ name }) => name !== undefined && name === value)

/** Reads the sentences of a message: rows and sizes, days, people, then garments and what goes on them. */
export const readProse = (given: Prose): ProseFound => {
  const scene = { ...given, text: wearersSide(given.text) }
  const told = tokensOf(scene.text)
  const tokens = without(told, askedAndRefused(told))
  const rows = readRows(scene, tokens)
  const free = without(tokens, rows.taken)
  const parts = readPartsTold(free, termsOf(scene.lexicon, free), scene.before)
  const first = without(free, parts.taken)
  const named = termsOf(scene.lexicon, first)
  const plainly = readRecolour(first, named, scene.before)
  const recolour = plainly.taken.size > 0 ? plainly : readDoubtedColour(first, named, scene.before)
  const corrected = readPlaceCorrected(first, named, scene.before)
  const move = corrected.taken.size > 0 ? corrected : readMove(scene.text, { tokens: first, terms: named, draft: scene.before })
  const calm = without(first, union(recolour.taken, move.taken))
  const terms = termsOf(scene.lexicon, calm)
  const before = [...rows.patches, ...parts.patches, ...recolour.patches, ...move.patches]
  const heads = headPatches(scene, first, terms)
  const team = heads.find((patch) => patch.path[0] === 'team')?.value ?? scene.before.team
  const people = heads.flatMap(({ path: [root], value }) =>
    typeof value === 'string' && whom.includes(root ?? '') ? [value] : [],
  )
  const names = [...people, typeof team === 'string' ? team : undefined].map((name) => nameSpans(calm, name))
  const plain = without(calm, union(labels(calm), ...names))
  const goods = readGoods({ scene, tokens: plain, terms: termsOf(scene.lexicon, plain) }, before, rows.taken)
  const written = Object.values(goods.things.marks).flatMap((mark) => mark.text ?? [])
  const head = heads.filter((patch) => patch.path[0] !== 'team' || !isWritten(String(patch.value), written))
  const whose = head.filter((patch) => !isPlayer(patch, preview(scene.draft, before), scene.before))
  const each = eachPatches(scene.text, goods.things, scene.lexicon)
  const said = [...before, ...goods.patches, ...each, ...whose]
  const rest = readRestSizes(tokens, preview(scene.draft, said))
  return { patches: [...said, ...rest], open: [...rows.open, ...goods.open] }
}
