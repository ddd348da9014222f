import { type APILabelComponent, type APIModalInteractionResponseCallbackData, ComponentType, TextInputStyle } from 'discord.js'
import type { Form, FormField } from '../../../ports/chat.ts'
import { customId } from './custom-id.ts'
import { label } from './plain-text.ts'

/** A modal holds five parts; a list of more than 25 choices takes several of them. */
const mostParts = 5
const mostOptions = 25

type FormPart = { readonly name: string; readonly component: APILabelComponent }

const labelled = (text: string, component: APILabelComponent['component']): APILabelComponent => ({
  type: ComponentType.Label,
  label: label(text, 45),
  ...(text.length > 45 ? { description: label(text, 100) } : {}),
  component,
})

const selectParts = (field: FormField): readonly FormPart[] => {
  const options = [...new Map(field.options.map((option) => [option.value.slice(0, 100), label(option.label, 100)]))]
  const count = Math.max(1, Math.ceil(options.length / mostOptions))
  return Array.from({ length: count }, (_, at) => ({
    name: field.name,
    component: labelled(count > 1 ? `${label(field.label, 36)} (${at + 1}/${count})` : field.label, {
      type: ComponentType.StringSelect,
      custom_id: at === 0 ? field.name : `${field.name}~${at + 1}`,
      required: field.required && count === 1,
      options: options.slice(at * mostOptions, (at + 1) * mostOptions).map(([value, text]) => ({ value, label: text })),
    }),
  }))
}

const textPart = (field: FormField, style: TextInputStyle): FormPart => ({
  name: field.name,
  component: labelled(field.label, { type: ComponentType.TextInput, custom_id: field.name, style, required: field.required }),
})

const partsOf = (field: FormField): readonly FormPart[] => {
  switch (field.kind) {
    case 'line':
      return [textPart(field, TextInputStyle.Short)]
    case 'lines':
      return [textPart(field, TextInputStyle.Paragraph)]
    case 'select':
      return field.options.length === 0 ? [] : selectParts(field)
    case 'file':
      return [
        {
          name: field.name,
          component: labelled(field.label, { type: ComponentType.FileUpload, custom_id: field.name, required: field.required }),
        },
      ]
  }
}

/** The pages a form needs; each is submitted by itself and fills its own fields. */
export const formPages = (form: Form): readonly (readonly APILabelComponent[])[] => {
  const parts = form.fields.flatMap(partsOf)
  return Array.from({ length: Math.max(1, Math.ceil(parts.length / mostParts)) }, (_, at) =>
    parts.slice(at * mostParts, (at + 1) * mostParts).map((part) => part.component),
  )
}

/** The modal of one page, counted from 1; null when the form has no such page or nothing to fill. */
export const modalOf = (form: Form, page: number): APIModalInteractionResponseCallbackData | null => {
  const components = formPages(form)[page - 1]
  if (components === undefined || components.length === 0) return null
  return { title: label(form.title, 45), custom_id: customId({ kind: 'form', id: form.id, page }), components: [...components] }
}

/** The field a part of a form belongs to. */
export const fieldOf = (partId: string): string => partId.replace(/~\d+$/, '')
