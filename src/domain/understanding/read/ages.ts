import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { refsIn } from './refs.ts'
import { fold, tokensOf } from './tokens.ts'

const grownUp =
  /\b(?:(?:every(?:one|body)|all of them|they|we)(?: is|'re| are)? (?:all )?(?:1[3-9]|[2-9]\d)(?: years?(?: old)?)? (?:or|and) (?:older|up|over|above)|todos (?:son |tienen )?(?:de )?(?:mas de )?1[3-9](?: anos)? (?:o|y) mas|mayores de 1[2-9]|(?:nobody|no one|none of them)(?: is| are|'s)? (?:under|younger than) 1[3-9]|(?:nadie|ninguno|ninguna) (?:es |tiene )?(?:menor|menos) de 1[3-9]|all (?:are )?adults?|adult (?:league|team|rec)|adults only|everyone is an adult|(?:all|everyone|everybody|they are|they're)(?: is| are|'s)?(?: all)? (?:over|above|older than) (?:1[2-9]|[2-9]\d)|all (?:1[3-9]|[2-9]\d) (?:or|and) (?:older|up)|adultos|puros adultos|todos (?:son )?(?:adultos|mayores)|beer league|varsity|high school|college|old timers|men's league|women's league|veteranos|prepa|preparatoria|universidad)\b|(?:^|[,.;] ?)adults?(?=[,.;]|$)/
const children =
  /\b(?:u-?(?:[6-9]|1[0-2])|(?:[1-6]|1st|2nd|3rd|4th|5th|first|second|third|fourth|fifth)(?:st|nd|rd|th)? graders?|kindergarten|kindergartners|[1-6](?:st|nd|rd|th) grade|(?:first|second|third|fourth|fifth|sixth) grade|[1-6](?:o|ro|do|to)? (?:de primaria|grado)|elementary|peewee|pee wee|t-?ball|infantil|primaria|kinder|all under 1[0-2]|12 and under|10 and under|menores de 1[0-3])\b/

const years =
  /\b(?:they are |they're |all |tienen |de )?(?:all |todos |todas )?(\d{1,2})(?:\s*(?:-|to|and|or|a|y|o)\s*(\d{1,2}))?\s*(?:years?(?: old)?|yrs?|yo|años|anos)\b/

const classOf = (age: number): '13-up' | '3-12' | 'under-3' => (age < 3 ? 'under-3' : age < 13 ? '3-12' : '13-up')

const group =
  /\b(?:they|all|everyone|kids|girls|boys|players|team|ages?|aged|between|children|todos|todas|tienen|entre|edades|ninos|ninas|chicos|chicas|jugador[ae]s|muchach[ao]s|son|equipo|categoria)\b/

/** "All of them are 9 or 10", "todas tienen 9 o 10": said of everybody, two figures that end the clause are years. */
const bareYears =
  /\b(?:all of them|they|everyone|everybody|the (?:kids|girls|boys)|todas|todos|all)(?: are|'re| is|'s| son| tienen)?(?: all)?(?: between| entre)? (\d{1,2}) ?(?:or|to|and|-|a|o|y) ?(\d{1,2})(?= *(?:[.,;!\n]|$))/

const everyonesYears = (folded: string): Draft['ages'] | null => {
  const bare = bareYears.exec(folded)
  if (bare !== null && Number(bare[2]) < 20 && Number(bare[1]) < Number(bare[2]))
    return classOf(Number(bare[1])) === classOf(Number(bare[2])) ? classOf(Number(bare[1])) : 'mixed'
  const found = years.exec(folded)
  if (found === null || !group.test(folded)) return null
  const [low, high] = [Number(found[1]), Number(found[2] ?? found[1])]
  return classOf(low) === classOf(high) ? classOf(low) : 'mixed'
}

type Scene = { readonly draft: Draft; readonly asked: string | null }

const nobody =
  /\b(?:no one|nobody|none|nope|no kids|no children|nadie|ninguno|ninguna|todos (?:son )?(?:mayores|grandes|adultos)|all (?:are )?(?:older|over|teenagers|teens|13)|adults?)\b|^no\b/
const everybody = /\b(?:all of them|everyone|everybody|yes,? all|all are|they all are|todos|todas)\b/

/** The answer to "is anyone 12 or younger, under 3?": nobody, all, some, or these players by name or number. */
const answered = (text: string, { draft }: Scene): readonly Patch[] => {
  const folded = fold(text)
  const under3 = /\b(?:under 3|under three|menor(?:es)? de (?:3|tres)|baby|toddler|bebe)\b/.test(folded)
  const refs = refsIn(tokensOf(text), draft.rows).flatMap((ref) => (ref.keys.length === 1 ? ref.keys : []))
  if (refs.length > 0 && !/^no\b/.test(folded)) {
    const age = under3 && !/12/.test(folded) ? 'under-3' : '3-12'
    return [{ path: ['ages'], value: '13-up' }, ...refs.map((key): Patch => ({ path: ['rows', key, 'age'], value: age }))]
  }
  if (everybody.test(folded) && !/\b(?:older|mayores|adult)/.test(folded)) return [{ path: ['ages'], value: '3-12' }]
  if (nobody.test(folded)) return [{ path: ['ages'], value: '13-up' }]
  return /^(?:yes|si|some|a few|algunos|unos)\b/.test(folded) ? [{ path: ['ages'], value: 'mixed' }] : []
}

/** What a message says of the players' ages. Sizes say nothing of them. */
export const readAges = (text: string, scene: Scene): readonly Patch[] => {
  const folded = fold(text)
  if (scene.asked === 'ask-ages') {
    const patches = answered(text, scene)
    if (patches.length > 0) return patches
  }
  const all = everyonesYears(folded)
  if (all !== null) return [{ path: ['ages'], value: all }]
  if (children.test(folded)) return [{ path: ['ages'], value: '3-12' }]
  return grownUp.test(folded) ? [{ path: ['ages'], value: '13-up' }] : []
}
