import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'

const said = spoken.people

/** Words before the noun that belong to it: "athletic", "Lincoln High". */
const WORD = `(?:(?!${said.bodyLead} |${said.endsBody}(?!\\p{L}))[\\p{L}\\p{M}'’&.-]{2,30} )`
const NOUN = `(?:${said.body})(?!\\p{L})(?: ${said.bodyMore}(?!\\p{L})){0,2}`
/** "the booster club", "our PTA", "la sociedad de padres", "Lincoln High boosters", "parents": articles are left out. */
const BODY = `(?:(?:${said.bodyLead} )?(?:${said.bodyLead}) )?((?:${WORD}){0,2}?${NOUN})`
const START = `(?:^|[.,;:!?\\n(] ?|(?<!\\p{L})(?:${said.bodyLead}|${spoken.rosters.and}) )`

type Role = 'signsOff' | 'pays' | 'collects'

const OBJECT = `(?:(?:${said.bodyObject}) )?`

/** Each role with the patterns that have one group, of who it is: said before what they do, or behind it. */
const roles: readonly (readonly [Role, readonly RegExp[]])[] = (
  [
    ['pays', said.pays, said.paidBy],
    ['signsOff', said.signs, said.signedBy],
    ['collects', said.collects, said.collectedBy],
  ] as const
).map(([role, does, doneBy]) => [
  role,
  [
    new RegExp(`${START}${BODY},? ${OBJECT}(?:${does})(?!\\p{L})`, 'iu'),
    new RegExp(`(?<!\\p{L})${OBJECT}(?:${doneBy}),?:? ${BODY}`, 'iu'),
  ],
])

/** "Is the school paying?" asks. */
const isAsked = (text: string, to: number): boolean => /^[^.,;!\n]*\?/u.test(text.slice(to))

/** The first that one of these patterns gives and that nobody asks about. */
export const bodyIn = (text: string, patterns: readonly RegExp[]): string | undefined => {
  for (const pattern of patterns) {
    const found = pattern.exec(text)
    if (found?.[1] !== undefined && !isAsked(text, found.index + found[0].length)) return found[1]
  }
  return undefined
}

/** Who signs, pays or collects where it is no person with a name: a club, a school, somebody's husband, as they were called. */
export const readBodies = (text: string): readonly Patch[] =>
  roles.flatMap(([role, patterns]): readonly Patch[] => {
    const body = bodyIn(text, patterns)
    return body === undefined ? [] : [{ path: [role], value: body }]
  })
