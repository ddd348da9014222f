import type { Reply } from './replies.ts'
import type { Understood } from './understood.ts'

/** What was left of a message that is too long. */
const cut = ({ cut: isCut }: Understood): readonly Reply[] => (isCut ? [{ code: 'text-cut', facts: { characters: 4_000 } }] : [])

const unread = ({ unread: lines }: Understood): readonly Reply[] =>
  lines.length === 0 ? [] : [{ code: 'lines-unread', facts: { lines: lines.slice(0, 10) } }]

const unheard = ({ unheard: words }: Understood): readonly Reply[] =>
  words.length === 0 ? [] : [{ code: 'words-unheard', facts: { words } }]

const undecided = ({ undecided: words }: Understood): readonly Reply[] =>
  words.length === 0 ? [] : [{ code: 'not-decided', facts: { words } }]

const alike = ({ alike: words }: Understood): readonly Reply[] =>
  words.length === 0 ? [] : [{ code: 'layers-alike', facts: { words } }]

const which = ({ which: words }: Understood): readonly Reply[] =>
  words.length === 0 ? [] : [{ code: 'which-of-them', facts: { words } }]

const elsewhere = ({ elsewhere: words }: Understood): readonly Reply[] =>
  words.length === 0 ? [] : [{ code: 'not-pressed-here', facts: { words } }]

const drawn = ({ artwork }: Understood): readonly Reply[] => (artwork ? [{ code: 'artwork-said', facts: {} }] : [])

const ruled = ({ book }: Understood): readonly Reply[] =>
  book === null ? [] : [{ code: 'rulebook-unknown', facts: { name: book } }]

/** What the message was, besides a part of the order. */
const greeted = ({ intent, patches }: Understood): readonly Reply[] => {
  switch (intent.kind) {
    case 'greeting':
      return patches.length === 0 ? [{ code: 'greeting', facts: {} }] : []
    case 'price':
      return [{ code: 'price-with-proof', facts: {} }]
    case 'photo':
      return [{ code: 'not-read-photo', facts: {} }]
    case 'earlier-order':
      return [{ code: 'earlier-order-noted', facts: { team: intent.asks.team } }]
    default:
      return []
  }
}

/** Replies that go before the next question: what could not be read or heard, what is kept for a person, and what the message was. */
export const firstReplies = (understood: Understood): readonly Reply[] =>
  [cut, unread, unheard, undecided, alike, which, elsewhere, drawn, ruled, greeted].flatMap((repliesOf) => repliesOf(understood))
