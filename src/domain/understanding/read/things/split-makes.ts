import { newGroup } from './groups.ts'
import type { Item } from './items.ts'
import { flush, type Walk } from './walk.ts'

/** "…, el de adelante plateado", "red on the back and white on the front": another place with a make of its own is said apart. */
export const splitsAt = (walk: Walk, item: Item, at: number): boolean => {
  const [group] = walk.groups
  if (group === undefined || walk.groups.length > 1 || group.style.colour === undefined || group.content === 'text') return false
  if (item.kind === 'colour' && isOfAnother(walk, at)) return true
  if (group.places.size === 0) return false
  if (item.kind === 'place') {
    const ahead = walk.items.slice(at + 1, at + 4)
    const pause = ahead.findIndex(
      (one) => one.kind === 'comma' || one.kind === 'stop' || one.kind === 'and' || one.kind === 'with',
    )
    return (
      ahead.slice(0, pause < 0 ? 3 : pause).some((one) => one.kind === 'colour' || (one.kind === 'class' && walk.postfix)) &&
      walk.waiting.length === 0 &&
      walk.target.kind === 'mark'
    )
  }
  const next = walk.items
    .slice(at + 1, at + 3)
    .find((one) => one.kind !== 'other' && one.kind !== 'class' && one.kind !== 'vinyl')
  return item.kind === 'colour' && walk.target.kind === 'mark' && next?.kind === 'place' && !walk.postfix
}

/** "gold on the home ones and maroon on the away": a colour for another garment than the last one's. */
const isOfAnother = (walk: Walk, at: number): boolean => {
  const ahead = walk.items.slice(at + 1, at + 5)
  const pause = ahead.findIndex((one) => one.kind === 'comma' || one.kind === 'stop' || one.kind === 'colour')
  const role = ahead.slice(0, pause < 0 ? 4 : pause).find((one) => one.kind === 'role' || one.kind === 'garment')
  const on = walk.groups[0]?.on ?? new Set()
  return role !== undefined && on.size > 0 && ahead.indexOf(role) > 0 && !(role.kind === 'role' && on.has(role.id))
}

export const split = (walk: Walk, item: Item): void => {
  const [group] = walk.groups
  if (group === undefined) return
  const another = item.kind === 'colour' && group.on.size > 0 && walk.target.kind !== 'garment'
  const fresh = newGroup(group.content, another ? null : walk.scope)
  if (another) for (const place of group.places) fresh.places.add(place)
  flush(walk)
  walk.groups = [fresh]
}
