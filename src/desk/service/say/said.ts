import type { Button, Said, SaidFile } from '../../../domain/understanding/conversation.ts'
import type { Incoming } from '../../../ports/chat.ts'

const buttons: readonly Button[] = ['sign-off', 'undo', 'change', 'person', 'start-over', 'cancel', 'status']

const pressed = (id: string, action: string): Said => {
  const [, name = '', revision = '', hash = ''] = action.split(':')
  const button = buttons.find((known) => known === name)
  if (button === undefined) return { id, kind: 'said', text: '' }
  const version = /^\d+$/.test(revision) ? { revision: Number(revision), ...(hash === '' ? {} : { hash }) } : {}
  return { id, kind: 'pressed', action: button, ...version }
}

/** What came in by the chat as the conversation understands it; a button nobody knows says nothing. */
export const saidFrom = (incoming: Incoming, files: readonly SaidFile[]): Said => {
  switch (incoming.kind) {
    case 'said':
      return { id: incoming.id, kind: 'said', text: incoming.text, files }
    case 'pressed':
      return pressed(incoming.id, incoming.action)
    case 'chose':
      return { id: incoming.id, kind: 'chose', value: incoming.value }
    case 'filled':
      return { id: incoming.id, kind: 'filled', values: incoming.values }
  }
}

/** The customer's own words, as they are shown in the conversation; a press or a choice is shown by its answer. */
export const wordsOf = (incoming: Incoming): string | null => {
  if (incoming.kind === 'said') return [incoming.text, ...incoming.files.map((file) => `[${file.name}]`)].join('\n').trim()
  if (incoming.kind === 'chose') return null
  return incoming.kind === 'filled' ? Object.values(incoming.values).join('\n') : null
}
