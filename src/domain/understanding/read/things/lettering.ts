import type { ContentKind, Draft, Mark, Style } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { isEmpty, stylePatches } from './style-patches.ts'

/** What is said of letters: how they are made, and on which garments. */
type Lettering = {
  readonly content: ContentKind
  readonly text: string | undefined
  readonly places: ReadonlySet<string>
  readonly style: Style
  readonly on: ReadonlySet<string>
  readonly everywhere: boolean
}

const wantedMarks = (draft: Draft): readonly (readonly [string, Mark])[] =>
  Object.entries(draft.marks).filter(([, mark]) => mark.wanted !== false)

/** A make of letters of which no text was said: "gold lettering", "white print". */
export const isMakeOnly = (group: Lettering): boolean =>
  group.content === 'text' && group.text === undefined && group.places.size === 0 && !isEmpty(group.style)

/** "The letters on the polos in white": of what is put on these garments, the texts where there are any. */
const letteringOn = (draft: Draft, group: Lettering): readonly Patch[] => {
  const there = wantedMarks(draft).filter(([, { on }]) => on === undefined || on.some((id) => group.on.has(id)))
  const texts = there.filter(([, mark]) => mark.content === 'text')
  return (texts.length > 0 ? texts : there).flatMap(([id, { on }]) => {
    const wholly = on?.every((garment) => group.on.has(garment)) === true
    const roots = wholly ? [['marks', id, 'style']] : [...group.on].map((garment) => ['styles', `${id}@${garment}`])
    return roots.flatMap((root) => stylePatches(root, group.style))
  })
}

/** Where only texts are known the make is theirs, else it is that of all that is put on. */
export const letteringPatches = (draft: Draft, group: Lettering, several: boolean): readonly Patch[] => {
  const apart = several && group.on.size > 0 && !group.everywhere ? letteringOn(draft, group) : []
  if (apart.length > 0) return apart
  const marks = wantedMarks(draft)
  const texts = marks.length > 0 && marks.every(([, mark]) => mark.content === 'text')
  if (!texts) return stylePatches(['styles', 'all'], group.style)
  return marks.flatMap(([id]) => stylePatches(['marks', id, 'style'], group.style))
}
