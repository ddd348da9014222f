import { everyComponent } from './limits.ts'
import type { Call } from './rest.ts'
import type { Json } from './world.ts'

/** What people may type, hoping that it does something. */
export const nasty = [
  '@everyone',
  '<@123456789012345678>',
  '<@&123456789012345678>',
  '<#123456789012345678>',
  '</order:123456789012345678>',
  '<t:1767571200:R>',
  '<:stone:123456789012345678>',
  '<id:customize>',
  '[free stones](https://evil.example)',
  '<https://evil.example>',
  'https://evil.example/a_b',
  '# heading',
  '-# small',
  '> quote',
  '>>> all',
  '- item',
  '* item',
  '+ item',
  '1. item',
  '**bold**',
  '__under__',
  '~~struck~~',
  '||hidden||',
  '`code`',
  '```js\nfence\n```',
  '\\',
  '\\\\@everyone',
  'RLO \u202etxt.exe',
  'zero\u200bwidth',
  'bell\u0007',
  '\u009b31m',
  'a\r\nb\u2028c',
  '\ud800',
  '👨‍👩‍👧 Núñez O’Brien-Smith III',
]

/** An independent reader: takes the escapes out, and says what is left that the platform would act on. */
export const takesEffect = (escaped: string): readonly string[] => {
  const bare = escaped.replace(/\\[^0-9A-Za-z\s]/g, '')
  return ['@', '<', '>', '[', ']', '*', '_', '~', '|', '`', '#', '\\', '://'].filter((sign) => bare.includes(sign))
}
export const startsList = (escaped: string): boolean => escaped.split('\n').some((line) => /^\s*(?:[-+*#>]|\d+\.)/.test(line))
export const controls = (all: string): boolean => /(?![\n\u200d])[\p{Cc}\p{Cf}]|\p{Cs}/u.test(all)

/** Our own marks in a text: a bold label, a fence around a table. */
const withoutOwnMarks = (text: string): string => text.replace(/```\n[^`]*\n```/g, '').replaceAll('**', '')

/** One text of a payload: `shown` is read as markup by the platform, `plain` is one line that it shows as it is. */
type Said = { readonly kind: string; readonly as: 'shown' | 'plain' | 'file' | 'address'; readonly text: string }

const said = (kind: string, as: Said['as'], value: unknown): readonly Said[] =>
  typeof value === 'string' && value !== '' ? [{ kind, as, text: value }] : []

const listOf = (value: unknown): readonly Json[] => (Array.isArray(value) ? value : [])
const jsonOf = (value: unknown): Json => (typeof value === 'object' && value !== null ? { ...value } : {})

const optionsSaid = (kind: string, options: unknown): readonly Said[] =>
  listOf(options).flatMap((option) => [
    ...said(`${kind}: option`, 'plain', option['label'] ?? option['name']),
    ...said(`${kind}: option's description`, 'plain', option['description']),
  ])

const partSaid = (part: Json): readonly Said[] => {
  switch (part['type']) {
    case 2:
      return [...said('button', 'plain', part['label']), ...said('button: address', 'address', part['url'])]
    case 3:
      return [...said('select: placeholder', 'plain', part['placeholder']), ...optionsSaid('select', part['options'])]
    case 4:
      return [...said('input: value', 'plain', part['value']), ...said('input: placeholder', 'plain', part['placeholder'])]
    case 10:
      return said('text', 'shown', part['content'])
    case 12:
      return listOf(part['items']).flatMap((item) => [
        ...said('picture: description', 'plain', item['description']),
        ...said('picture', 'file', jsonOf(item['media'])['url']),
      ])
    case 13:
      return said('paper', 'file', jsonOf(part['file'])['url'])
    case 18:
      return [...said('form: label', 'plain', part['label']), ...said('form: description', 'plain', part['description'])]
    default:
      return []
  }
}

/** Every text that a call shows somebody, with the kind of place it is shown in. */
export const saidBy = (call: Call): readonly Said[] => {
  const bodies = [call.body, jsonOf(call.body['data'])]
  const edits = call.method === 'PATCH' ? 'edit, ' : ''
  const all = bodies.flatMap((body) => [
    ...said('content', 'shown', body['content']),
    ...said('form: title', 'plain', body['title']),
    ...said('thread: name', 'plain', body['name']),
    ...optionsSaid('completion', body['choices']),
    ...everyComponent(body['components']).flatMap(partSaid),
  ])
  const files = call.files.map(({ name }): Said => ({ kind: 'file: name', as: 'file', text: name }))
  return [...all, ...files].map((one) => ({ ...one, kind: `${edits}${one.kind}` }))
}

const troublesOf = ({ as, text }: Said): readonly string[] => {
  switch (as) {
    case 'shown': {
      const outside = withoutOwnMarks(text)
      return [...takesEffect(outside), ...(startsList(outside) ? ['list'] : []), ...(controls(text) ? ['control sign'] : [])]
    }
    case 'plain':
      return /\n/.test(text) || controls(text) ? ['control sign'] : []
    case 'file':
      return /^(?:attachment:\/\/)?[A-Za-z0-9_][A-Za-z0-9._-]*$/.test(text) ? [] : ['file name']
    case 'address':
      return /^https:\/\/discord\.com\/channels\/(?:@me|\d+)\/\d+$/.test(text) ? [] : ['address']
  }
}

const sendsMessage = ({ method, path, body }: Call): boolean =>
  (method === 'POST' || method === 'PATCH') &&
  (path.includes('/messages') || /^\/webhooks\/\d+\/[^/]+$/.test(path)) &&
  body['flags'] !== undefined

/** What of a call would do more than show people's words: none may. */
export const effectsOf = (call: Call): readonly string[] => {
  const ids = [call.body, jsonOf(call.body['data'])].flatMap((body) => [body, ...everyComponent(body['components'])])
  return [
    ...saidBy(call).flatMap((one) => troublesOf(one).map((trouble) => `${one.kind}: ${trouble} in ${JSON.stringify(one.text)}`)),
    ...(sendsMessage(call) && JSON.stringify(call.body['allowed_mentions']) !== '{"parse":[]}'
      ? ['mentions are not switched off']
      : []),
    ...(call.path.includes('/reactions') || call.body['embeds'] !== undefined ? ['a kind of payload nobody looked at'] : []),
    ...ids.flatMap(({ custom_id: id }) => (typeof id === 'string' && !/^[!-~]{1,100}$/.test(id) ? [`custom id ${id}`] : [])),
  ]
}
