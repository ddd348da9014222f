/**
 * What a component carries: ids, nothing that gives a right. An action is its own id; `s:<n>:<choice>` is the n-th part of a
 * choice, `f:<page>:<form>` opens or submits a page of a form, `g:<setting>` belongs to the set-up dialogue.
 */
export type ComponentRef =
  | { readonly kind: 'action'; readonly id: string }
  | { readonly kind: 'choice'; readonly id: string; readonly part: number }
  | { readonly kind: 'form'; readonly id: string; readonly page: number }
  | { readonly kind: 'setting'; readonly name: string }

const ours = /^[A-Za-z0-9][A-Za-z0-9:_.~-]*$/
const longest = 100
/** What is done with the shop's own things is an action too: `s:counted`. */
const ofTheShop = /^s:[a-z][a-z-]*$/

export const customId = (ref: ComponentRef): string => {
  const text = textOf(ref)
  if (text.length > longest || !ours.test(text)) throw new Error(`not an id a component can carry: ${JSON.stringify(text)}`)
  return text
}

const textOf = (ref: ComponentRef): string => {
  switch (ref.kind) {
    case 'action':
      return ref.id
    case 'choice':
      return `s:${ref.part}:${ref.id}`
    case 'form':
      return `f:${ref.page}:${ref.id}`
    case 'setting':
      return `g:${ref.name}`
  }
}

/** Reads what came back; null for anything that we never send. */
export const readCustomId = (text: string): ComponentRef | null => {
  if (text.length > longest || !ours.test(text)) return null
  const [, letter, number, id] = /^([sf]):(\d{1,2}):(.+)$/.exec(text) ?? []
  if (id !== undefined) {
    return letter === 's' ? { kind: 'choice', id, part: Number(number) } : { kind: 'form', id, page: Number(number) }
  }
  if (text.startsWith('g:')) return { kind: 'setting', name: text.slice(2) }
  return /^[sf]:/.test(text) && !ofTheShop.test(text) ? null : { kind: 'action', id: text }
}
