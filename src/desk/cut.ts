import { sheetWords } from '../../templates/sheets/words.ts'
import type { CuttingProblem } from '../domain/cutting/problems.ts'
import type { Sheet } from '../domain/cutting/sheet.ts'
import { type StoneTemplate, templateSheets } from '../domain/cutting/template-sheets.ts'
import { type CutPart, type CutSheet, type Roll, vinylSheet } from '../domain/cutting/vinyl-sheets.ts'
import type { Auxiliary, StoneSettingRecord, Vinyl } from '../domain/material/material.ts'
import type { Order } from '../domain/order/order.ts'
import { ok, type Problem, type Result } from '../domain/result/result.ts'
import type { Profile } from '../domain/shop/shop.ts'
import { micrometres } from '../domain/units/units.ts'
import { type Counted, type PlacedTemplate, templateName } from './count.ts'
import { couponsFor } from './coupons.ts'
import type { LaidApplication } from './lay-out.ts'
import { vinylUses } from './ticket/picks.ts'

export type VinylCut = { readonly material: Vinyl; readonly sheet: CutSheet; readonly applications: readonly LaidApplication[] }

/** Everything the cutter is given: one sheet per vinyl record, and the template sheets. */
export type Cuts = { readonly vinyl: readonly VinylCut[]; readonly templates: readonly Sheet[] }

export type CutMeans = {
  readonly job: string
  readonly language: Order['language']
  readonly cutter: Profile['cutter']
  readonly auxiliaries: readonly Auxiliary[]
  readonly settings: readonly StoneSettingRecord[]
  /** Content keys of the templates on the shelf: they are not cut again. */
  readonly shelf: ReadonlySet<string>
}

const rollOf = (vinyl: Vinyl, cutter: Profile['cutter']): Roll => ({
  id: vinyl.id,
  cut: vinyl.cut,
  grain: vinyl.grain,
  width: micrometres(vinyl.rollWidthMicrometres),
  margin: micrometres(cutter.marginMicrometres),
  kerf: micrometres(cutter.kerfMicrometres),
  bladeOffset: micrometres(cutter.bladeOffsetMicrometres),
})

/** One part per layer of this vinyl and garment; a row of three garments gives three. */
const partsOf = (laid: LaidApplication, vinyl: Vinyl, job: string): readonly CutPart[] => {
  const { application, drawing } = laid
  if (drawing === null) return []
  const tag = `${job} · ${application.line} · ${application.place.id} · ${application.text}`
  const centre = (drawing.shape.box.left + drawing.shape.box.right) / 2
  return drawing.vinyl
    .filter(({ layer }) => layer.material.id === vinyl.id)
    .flatMap(({ layer, shape }) =>
      Array.from({ length: application.quantity }, (_, copy) => ({
        key: `${application.line} ${layer.id} ${copy + 1}`,
        tag,
        contours: shape.contours,
        box: shape.box,
        centre,
      })),
    )
}

const vinylCut = (use: ReturnType<typeof vinylUses>[number], means: CutMeans): Result<VinylCut, CuttingProblem> => {
  const parts = use.laid.flatMap((laid) => partsOf(laid, use.material, means.job))
  const sheet = vinylSheet(parts, rollOf(use.material, means.cutter), sheetWords[means.language])
  return sheet.ok ? ok({ material: use.material, sheet: sheet.value, applications: use.laid }) : sheet
}

/** Templates that do not lie on the shelf. */
export const freshTemplates = (counted: Counted, shelf: ReadonlySet<string>): readonly PlacedTemplate[] =>
  counted.templates.filter(({ key }) => !shelf.has(key))

const templatesOf = (counted: Counted, means: CutMeans): readonly StoneTemplate[] =>
  freshTemplates(counted, means.shelf).map(({ key, piece, hole, no, text, size, colour, heightMicrometres }) => ({
    key,
    piece,
    hole,
    lines: [templateName({ no, text }), `${(heightMicrometres / 1_000).toFixed(0)} mm`, size, colour, means.job],
  }))

/** Template sheets of one kind, named by it and counted; none where there is nothing to cut. */
const sheetsOf = (
  kind: 'coupon' | 'template',
  templates: readonly StoneTemplate[],
  means: CutMeans,
): Result<readonly Sheet[]> => {
  if (templates.length === 0) return ok([])
  const flock = means.auxiliaries.find((auxiliary) => auxiliary.kind === 'flock-sheet')
  const stock = { width: micrometres(flock?.widthMicrometres ?? 0), height: micrometres(flock?.heightMicrometres ?? 0) }
  const sheets = templateSheets(templates, stock, sheetWords[means.language])
  return sheets.ok ? ok(sheets.value.map((sheet, index) => ({ ...sheet, id: `${kind}-${index + 1}` }))) : sheets
}

/**
 * Cuts an order: every vinyl name and number one part in roster order, a coupon for every new lot of stones, every template
 * that is not on the shelf.
 */
export const cutOrder = (applications: readonly LaidApplication[], counted: Counted, means: CutMeans): Result<Cuts, Problem> => {
  const vinyl = vinylUses(applications).map((use) => vinylCut(use, means))
  const coupons = sheetsOf('coupon', couponsFor(counted, means.settings, means.job), means)
  const templates = sheetsOf('template', templatesOf(counted, means), means)
  const problems = [...vinyl, coupons, templates].flatMap((cut) => (cut.ok ? [] : cut.problems))
  if (problems.length > 0) return { ok: false, problems }
  return ok({
    vinyl: vinyl.flatMap((cut) => (cut.ok ? [cut.value] : [])),
    templates: [coupons, templates].flatMap((sheets) => (sheets.ok ? sheets.value : [])),
  })
}
