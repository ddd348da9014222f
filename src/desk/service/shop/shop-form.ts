import type { ShopAct } from '../../../domain/ticket/acts.ts'
import type { Form, FormField } from '../../../ports/chat.ts'
import type { Desk } from '../desk.ts'
import { momentOf, wordsFor } from '../say/say-floor.ts'
import { amountText, itemName } from '../stock/item-name.ts'

type Options = FormField['options']
type Field = keyof ReturnType<typeof wordsFor>['fields']

const field = (desk: Desk, name: Field, rest: Partial<FormField> = {}): FormField => ({
  name,
  label: wordsFor(desk).fields[name],
  kind: 'line',
  options: [],
  required: false,
  ...rest,
})

const items = async (desk: Desk): Promise<Options> => {
  const { stock } = desk.store.shop(desk.shopId)
  const known = new Set([...(await stock.sums()).keys(), ...(await stock.needs()).map(({ item }) => item)])
  return [...known].map((value) => ({ value, label: itemName(desk, value) })).toSorted((a, b) => a.label.localeCompare(b.label))
}

const coming = async (desk: Desk): Promise<Options> =>
  (await desk.store.shop(desk.shopId).stock.coming()).map((one) => ({
    value: one.comingId,
    label: `${itemName(desk, one.item)}, ${amountText(desk, one)}, ${momentOf(desk, one.due)}`,
  }))

const shelfFields = async (desk: Desk, act: ShopAct): Promise<readonly FormField[]> => {
  const item = field(desk, 'item', { kind: 'select', options: await items(desk), required: true })
  if (act === 'ordered') return [item, field(desk, 'amount', { required: true })]
  const both = [item, field(desk, 'lot'), field(desk, 'amount'), field(desk, 'weight')]
  if (act !== 'received') return both
  const deliveries = await coming(desk)
  return deliveries.length === 0
    ? [...both, field(desk, 'certificate')]
    : [...both, field(desk, 'coming', { kind: 'select', options: deliveries })]
}

const pressFields = (desk: Desk): readonly FormField[] => {
  const options = desk.workshop.shop.presses.map(({ id }) => ({ value: id, label: id.replaceAll('-', ' ') }))
  const required = { required: true }
  return [
    field(desk, 'press', { kind: 'select', options, required: true }),
    field(desk, 'set', required),
    field(desk, 'readings', required),
  ]
}

const templateFields = async (desk: Desk): Promise<readonly FormField[]> => {
  const shelf = await desk.store.shop(desk.shopId).stock.templates()
  const options = shelf.map(({ key, box, brushed }) => ({ value: key, label: `${box} · ${key.slice(0, 12)} · ${brushed}` }))
  return [field(desk, 'key', { kind: 'select', options, required: true }), field(desk, 'box')]
}

const fieldsOf = (desk: Desk, act: ShopAct): Promise<readonly FormField[]> | readonly FormField[] => {
  if (act === 'press-check') return pressFields(desk)
  return act === 'template' ? templateFields(desk) : shelfFields(desk, act)
}

/** What must be filled in for something done with the shop's own things: `s:<act>`. */
export const shopForm = async (desk: Desk, act: ShopAct): Promise<Form> => ({
  id: `s:${act}`,
  title: wordsFor(desk).acts[act],
  fields: await fieldsOf(desk, act),
  submit: wordsFor(desk).save,
})
