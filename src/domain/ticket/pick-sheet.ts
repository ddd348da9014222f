import type { StoneFacts, TemplateFacts, TicketFacts, VinylFacts } from './facts.ts'
import { supplyText, weightText } from './figures.ts'
import { lengthOf, type Scene } from './names.ts'
import { cell, column, table } from './table.ts'
import type { Block, Sheet } from './ticket.ts'

const supply = ({ facts }: Scene, micrometres: number): string => supplyText(micrometres, facts.show.length)

const lotBin = ({ words }: Scene, { lot, bin }: { readonly lot: string; readonly bin: string | null }): string =>
  `${words.pick.lot(lot)} · ${words.pick.bin(bin)}`

const vinylName = ({ words }: Scene, vinyl: VinylFacts): string =>
  words.pick.vinylName(vinyl.colour.name, words.pick.classes[vinyl.class])

const vinylTable = (scene: Scene): readonly Block[] => {
  const { facts, words } = scene
  if (facts.vinyl.length === 0) return []
  const heads = words.pick.vinylHeads
  const rows = facts.vinyl.map((vinyl) => [
    cell(vinylName(scene, vinyl), { bold: true }),
    cell(vinyl.places.map((place) => words.place.ids[place]).join(', ')),
    cell(`${supply(scene, vinyl.lengthMicrometres)} × ${supply(scene, vinyl.widthMicrometres)}`),
    cell(lotBin(scene, vinyl)),
    cell(words.pick.reads[vinyl.cut], { bold: true }),
    cell(words.press.peels[vinyl.peel]),
    cell('', { boxes: 1 }),
  ])
  const columns = [
    column(heads.material, 3),
    column(heads.places, 3),
    column(heads.amount, 2.4),
    column(heads.lotBin, 3),
    column(heads.reads, 2.6),
    column(heads.peel, 1.2),
    column(heads.done, 1.2, 'centre'),
  ]
  return [{ kind: 'heading', level: 2, text: words.pick.vinyl }, table(columns, [{ heading: null, rows }])]
}

const sheetTable = (scene: Scene): readonly Block[] => {
  const { facts, words } = scene
  const heads = words.pick.sheetHeads
  const groups = facts.vinyl
    .filter((vinyl) => vinyl.sheets.length > 0)
    .map((vinyl) => ({
      heading: `${vinylName(scene, vinyl)} · ${words.pick.reads[vinyl.cut]}`,
      rows: vinyl.sheets.map((sheet) => [
        cell(sheet.file),
        cell(`${supply(scene, sheet.widthMicrometres)} × ${supply(scene, sheet.lengthMicrometres)}`),
        cell(String(sheet.pieces)),
        cell('', { boxes: 1 }),
        cell('', { boxes: 1 }),
      ]),
    }))
  if (groups.length === 0) return []
  const columns = [
    column(heads.file, 5),
    column(heads.size, 3),
    column(heads.pieces, 1.2, 'right'),
    column(heads.cut, 1, 'centre'),
    column(heads.weeded, 1.2, 'centre'),
  ]
  return [{ kind: 'heading', level: 2, text: words.pick.sheets }, table(columns, groups)]
}

const tallyTable = (scene: Scene): readonly Block[] => {
  const { facts, words } = scene
  if (facts.tally.length === 0) return []
  const heads = words.pick.tallyHeads
  const rows = facts.tally.map((tally) => [
    cell(lengthOf(scene, tally.heightMicrometres), { bold: true }),
    cell(words.place.ids[tally.place]),
    cell(tally.face),
    cell(tally.digits.map(({ digit, count }) => `${digit}×${count}`).join('   '), { bold: true }),
  ])
  const columns = [column(heads.height, 1.2), column(heads.place, 2), column(heads.face, 2.5), column(heads.digits, 7)]
  return [{ kind: 'heading', level: 2, text: words.pick.tally }, table(columns, [{ heading: null, rows }])]
}

/** "12, 20", or place by place where one template serves several. */
const servedText = ({ words }: Scene, { on }: TemplateFacts): string => {
  if (on.length === 0) return words.pick.allOn
  const named = on.map(({ place, texts }) => `${words.place.ids[place]}: ${texts.join(', ')}`)
  return on.length === 1 ? on.flatMap(({ texts }) => texts).join(', ') : named.join('; ')
}

const templateRow = (scene: Scene, template: TemplateFacts): readonly ReturnType<typeof cell>[] => [
  cell(template.box ?? scene.words.pick.cutNew, { bold: template.box !== null }),
  cell(`#${template.no}`),
  cell(template.text, { bold: true }),
  cell(servedText(scene, template), { bold: template.on.length > 0 }),
  cell(lengthOf(scene, template.heightMicrometres)),
  cell(`${template.size} ${template.colour.name}`),
  cell(String(template.holes)),
  cell(scene.words.pick.times(template.brushed), { bold: true }),
  cell('', { boxes: Math.min(template.brushed, 1) }),
]

const templateTable = (scene: Scene): readonly Block[] => {
  const { facts, words } = scene
  if (facts.templates.length === 0) return []
  const heads = words.pick.templateHeads
  const headingOf = (template: TemplateFacts): string => template.places.map((place) => words.place.ids[place]).join(', ')
  const headings = [...new Set(facts.templates.map(headingOf))]
  const groups = headings.map((heading) => ({
    heading,
    rows: facts.templates
      .filter((template) => headingOf(template) === heading)
      .sort((a, b) => b.heightMicrometres - a.heightMicrometres || (a.text < b.text ? -1 : 1))
      .map((template) => templateRow(scene, template)),
  }))
  const columns = [
    column(heads.box, 2),
    column(heads.no, 0.8),
    column(heads.character, 2),
    column(heads.on, 3),
    column(heads.height, 1.4),
    column(heads.stone, 2.6),
    column(heads.holes, 1.3, 'right'),
    column(heads.brushed, 1.7, 'right'),
    column(heads.done, 1.2, 'centre'),
  ]
  return [{ kind: 'heading', level: 2, text: words.pick.templates }, table(columns, groups)]
}

const stoneRow = (scene: Scene, stone: StoneFacts): readonly ReturnType<typeof cell>[] => [
  cell(`${stone.size} ${stone.colour.name}`, { bold: true }),
  cell(lotBin(scene, stone)),
  cell(String(stone.pieces), { bold: true }),
  cell(String(stone.spare)),
  cell(String(stone.gross), { bold: true }),
  cell(weightText(stone.milligrams), { bold: true }),
  cell('', { boxes: 1 }),
]

const stoneTable = (scene: Scene): readonly Block[] => {
  const { facts, words } = scene
  if (facts.stones.length === 0) return []
  const heads = words.pick.stoneHeads
  const columns = [
    column(heads.stone, 3),
    column(heads.lotBin, 4),
    column(heads.pieces, 1.4, 'right'),
    column(heads.spare, 1.2, 'right'),
    column(heads.gross, 1.2, 'right'),
    column(heads.weight, 1.6, 'right'),
    column(heads.done, 1.2, 'centre'),
  ]
  const rows = facts.stones.map((stone) => stoneRow(scene, stone))
  return [
    { kind: 'heading', level: 2, text: words.pick.stones },
    table(columns, [{ heading: null, rows }]),
    { kind: 'text', style: 'small', text: words.pick.coupon },
  ]
}

const worked = ({ vinyl, stones, templates }: TicketFacts): 'vinyl' | 'stones' | 'both' => {
  if (stones.length + templates.length === 0) return 'vinyl'
  return vinyl.length === 0 ? 'stones' : 'both'
}

/** What is fetched, cut, weeded and brushed before anybody goes to the press. */
export const pickSheets = (scene: Scene): readonly Sheet[] => {
  const blocks = [vinylTable, sheetTable, tallyTable, stoneTable, templateTable].flatMap((part) => part(scene))
  if (blocks.length === 0) return []
  const title = scene.words.pick.titles[worked(scene.facts)]
  return [{ title, blocks: [{ kind: 'heading', level: 1, text: title }, ...blocks] }]
}
