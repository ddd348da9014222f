import { isShopAct, isTicketAct } from '../../domain/ticket/acts.ts'
import type { Form, FormField } from '../../ports/chat.ts'
import type { Desk } from '../service/desk.ts'
import { readLife } from '../service/floor/read-life.ts'
import { needsForm, ticketForm } from '../service/floor/ticket-form.ts'
import { shopForm } from '../service/shop/shop-form.ts'

/** Whether an action of staff asks for something to be filled in first; known from its id alone. */
export const asksForm = (id: string): boolean => {
  const [kind, name = '', act = ''] = id.split(':')
  return (kind === 't' && needsForm(act)) || (kind === 's' && isShopAct(name))
}

/** A longer list would take more lists than a modal has room for beside its other fields: its choice is typed instead. */
const mostListed = 25

const typedWhereLong = (field: FormField): FormField =>
  field.kind === 'select' && field.options.length > mostListed ? { ...field, kind: 'line', options: [] } : field

/** The form of an action with its choices of now; null: there is no such ticket in this shop, or nothing to fill in. */
export const staffForm = async (desk: Desk, id: string): Promise<Form | null> => {
  const [kind, name = '', act = ''] = id.split(':')
  if (kind === 's' && isShopAct(name)) {
    const form = await shopForm(desk, name)
    return { ...form, fields: form.fields.map(typedWhereLong) }
  }
  if (kind !== 't' || !isTicketAct(act) || !needsForm(act)) return null
  const life = await readLife(desk, desk.store.shop(desk.shopId), name)
  return life === null ? null : ticketForm(desk, life, act)
}
