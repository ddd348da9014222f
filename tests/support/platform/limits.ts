import type { Json } from './world.ts'

/** What the platform refuses with 400 / 50035; each line names the part. Written from its published limits. */
const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value)
const listOf = (value: unknown): readonly Json[] => (Array.isArray(value) ? value.filter(isJson) : [])
const textOf = (value: unknown): string => (typeof value === 'string' ? value : '')

export const everyComponent = (components: unknown): readonly Json[] =>
  listOf(components).flatMap((one) => [
    one,
    ...everyComponent(one['components']),
    ...(isJson(one['component']) ? everyComponent([one['component']]) : []),
    ...(isJson(one['accessory']) ? everyComponent([one['accessory']]) : []),
  ])

const length = (value: unknown, most: number, where: string, least = 0): readonly string[] => {
  const size = textOf(value).length
  return size > most || size < least ? [`${where}: ${size} signs, allowed ${least}-${most}`] : []
}

const optionTroubles = (select: Json): readonly string[] => {
  const options = listOf(select['options'])
  const values = options.map((option) => option['value'])
  return [
    ...(options.length < 1 || options.length > 25 ? [`options: ${options.length}`] : []),
    ...(new Set(values).size === values.length ? [] : ['options: a value twice']),
    ...options.flatMap((option) => [
      ...length(option['label'], 100, 'option.label', 1),
      ...length(option['value'], 100, 'option.value', 1),
    ]),
    ...length(select['placeholder'], 150, 'placeholder'),
  ]
}

const partTroubles = (part: Json): readonly string[] => {
  const named = typeof part['custom_id'] === 'string' ? length(part['custom_id'], 100, 'custom_id', 1) : []
  switch (part['type']) {
    case 1:
      return listOf(part['components']).length > 5
        ? ['row: more than 5']
        : listOf(part['components']).length === 0
          ? ['row: empty']
          : []
    case 2:
      return [...named, ...length(part['label'], 80, 'button.label', 1)]
    case 3:
      return [...named, ...optionTroubles(part)]
    case 4:
      return [...named, ...length(part['value'], 4000, 'value'), ...length(part['placeholder'], 100, 'placeholder')]
    case 10:
      return length(part['content'], 4000, 'text', 1)
    case 18:
      return [...length(part['label'], 45, 'label', 1), ...length(part['description'], 100, 'description')]
    default:
      return named
  }
}

const uniqueTroubles = (parts: readonly Json[]): readonly string[] => {
  const names = parts.flatMap((part) => (typeof part['custom_id'] === 'string' ? [part['custom_id']] : []))
  const ids = parts.flatMap((part) => (typeof part['id'] === 'number' && part['id'] !== 0 ? [part['id']] : []))
  return [
    ...(new Set(names).size === names.length ? [] : ['custom_id: twice']),
    ...(new Set(ids).size === ids.length ? [] : ['component id: twice']),
  ]
}

const fileTroubles = (parts: readonly Json[], files: readonly string[]): readonly string[] => {
  const named = parts.flatMap((part) => {
    const media =
      part['type'] === 13 ? [part['file']] : part['type'] === 12 ? listOf(part['items']).map((item) => item['media']) : []
    return media.filter(isJson).map((item) => textOf(item['url']))
  })
  return named
    .filter((url) => url.startsWith('attachment://') && !files.includes(url.slice('attachment://'.length)))
    .map((url) => `${url}: no such file`)
}

export const messageTroubles = (body: Json, files: readonly string[]): readonly string[] => {
  const parts = everyComponent(body['components'])
  const newKind = (Number(body['flags'] ?? 0) & (1 << 15)) !== 0
  const texts = parts.filter((part) => part['type'] === 10).reduce((sum, part) => sum + textOf(part['content']).length, 0)
  return [
    ...length(body['content'], 2000, 'content'),
    ...length(body['nonce'], 25, 'nonce'),
    ...(newKind && textOf(body['content']) !== '' ? ['content: not with components'] : []),
    ...(newKind && parts.length === 0 ? ['components: empty'] : []),
    ...(newKind && parts.length > 40 ? [`components: ${parts.length}`] : []),
    ...(files.length > 10 ? [`files: ${files.length}`] : []),
    ...(new Set(files.map((name) => name.toLowerCase())).size === files.length ? [] : ['files: a name twice']),
    ...(newKind && texts > 4000 ? [`texts: ${texts}`] : []),
    ...(!newKind && parts.some((part) => Number(part['type']) >= 9) ? ['components: flag missing'] : []),
    ...(!newKind && parts.length === 0 && textOf(body['content']) === '' && files.length === 0 ? ['message: empty'] : []),
    ...parts.flatMap(partTroubles),
    ...uniqueTroubles(parts),
    ...fileTroubles(parts, files),
  ]
}

export const modalTroubles = (modal: Json): readonly string[] => {
  const parts = listOf(modal['components'])
  return [
    ...length(modal['title'], 45, 'title', 1),
    ...length(modal['custom_id'], 100, 'custom_id', 1),
    ...(parts.length < 1 || parts.length > 5 ? [`modal: ${parts.length} parts`] : []),
    ...everyComponent(parts).flatMap(partTroubles),
    ...uniqueTroubles(everyComponent(parts)),
  ]
}

const commandName = /^[-_'\p{L}\p{N}]{1,32}$/u

export const commandTroubles = (commands: readonly Json[]): readonly string[] => [
  ...(commands.length > 100 ? [`commands: ${commands.length}`] : []),
  ...commands.flatMap((command) => [
    ...(commandName.test(textOf(command['name'])) && textOf(command['name']) === textOf(command['name']).toLowerCase()
      ? []
      : [`name: ${textOf(command['name'])}`]),
    ...length(command['description'], 100, 'description', 1),
    ...listOf(command['options']).flatMap((option) => [
      ...(commandName.test(textOf(option['name'])) ? [] : [`option: ${textOf(option['name'])}`]),
      ...length(option['description'], 100, 'option.description', 1),
    ]),
  ]),
]
