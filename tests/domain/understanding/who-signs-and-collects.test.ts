import { describe, expect, test } from 'vitest'
import { completeOrders } from './complete-orders.ts'
import { play } from './corpus.ts'
import { heard } from './rows-of.ts'
import { starterShop } from './starter-shop.ts'

const order = '24 grey tees with ELLERY WINDS on the front in navy'

test.each([
  ['our principal, Mr. Castellano, has to sign off on it, not me', 'Castellano'],
  ['Dana Whitlock needs to sign off before you print', 'Dana Whitlock'],
  ['our AD, Ms. Okafor, must approve it first', 'Okafor'],
  ['Coach Reyes gets the final say on the design', 'Reyes'],
  ['the sign-off is up to Ms. Lindqvist', 'Lindqvist'],
  ['Mr. Byrd will be signing off on the proof', 'Byrd'],
  ['the proof goes to our treasurer Hal Brandt for approval', 'Hal Brandt'],
  ['please get approval from Nora Diaz', 'Nora Diaz'],
  ['only Ruth Amato can sign off', 'Ruth Amato'],
  ['Approval has to come from Ms. Greer', 'Greer'],
  ["I'm ordering but Dr. Salas is the one who has to approve", 'Salas'],
  ['the booster president, Ellen Moy, has final approval', 'Ellen Moy'],
])('who signs: %s', async (words, name) => {
  const { draft } = (await heard('en', [order, words])).played.conversation
  expect(draft.signsOff).toBe(name)
  expect([draft.team, draft.collects, draft.pays]).toEqual([undefined, undefined, undefined])
})

test.each([
  ['My husband Glenn Abbott will be the one picking them up', 'Glenn Abbott'],
  ['my sister Tara Vance is going to pick it up', 'Tara Vance'],
  ['Rob Kessler can come get them for me', 'Rob Kessler'],
  ['our manager, Leah Ponce, will swing by for them', 'Leah Ponce'],
  ["it'll be my mom Doris Hale picking up", 'Doris Hale'],
  ['my coworker Jae Lim is picking up the box', 'Jae Lim'],
  ['the person picking up is Omar Diaz', 'Omar Diaz'],
  ['Pick up will be done by Wes Carter', 'Wes Carter'],
  ['Glenn Abbott will grab them on Friday', 'Glenn Abbott'],
  ['My neighbor, Ruth Amato, is coming to get them', 'Ruth Amato'],
])('who collects: %s', async (words, name) => {
  const { draft } = (await heard('en', [order, words])).played.conversation
  expect([draft.collects, draft.handOver, draft.team]).toEqual([name, 'collect', undefined])
})

test.each([
  ['Is our order ready? my wife Dee Cole is coming to pick it up', 'Dee Cole'],
  ['when will they be ready? Glenn Abbott is picking them up', 'Glenn Abbott'],
  ['are the shirts done? My husband Al Vega will be the one picking them up', 'Al Vega'],
])('who collects, beside a question how it stands: %s', async (words, name) => {
  const { played } = await heard('en', [words])
  expect(played.wants.map(({ kind }) => kind)).toEqual(['status'])
  expect(played.conversation.draft).toMatchObject({ collects: name, handOver: 'collect', garments: {}, rows: {} })
})

test.each([
  ['las retira mi papá, Rubén Gauna', 'Rubén Gauna'],
  ['las recogería mi marido, Fermín Osuna', 'Fermín Osuna'],
  ['retira Wilfredo Toro', 'Wilfredo Toro'],
  ['las pasa a buscar mi cuñada Inés Roldán', 'Inés Roldán'],
  ['los va a retirar mi socio, Bruno Paz', 'Bruno Paz'],
  ['mi prima Ada Ruiz los retira el jueves', 'Ada Ruiz'],
])('quién recoge: %s', async (words, name) => {
  const { draft } = (await heard('es', ['24 playeras grises con VIENTO al frente en azul marino', words])).played.conversation
  expect([draft.collects, draft.handOver, draft.team]).toEqual([name, 'collect', undefined])
})

test.each([['someone will pick it up'], ['Saturday would be best, we will come get them'], ['is it ready to be picked up?']])(
  'nobody is named: %s',
  async (words) => {
    expect((await heard('en', [order, words])).played.conversation.draft.collects).toBeUndefined()
  },
)

describe('that somebody else must approve approves nothing', async () => {
  const shop = await starterShop()
  test.each([
    ['en', 'our principal, Mr. Castellano, has to sign off on it, not me'],
    ['en', 'only Ruth Amato can sign off'],
    ['en', 'Dana Whitlock needs to sign off before you print'],
    ['en', 'my boss must sign off first'],
    ['en', 'the coach will sign off on it tomorrow'],
    ['en', 'it has to be approved by the board'],
    ['en', 'waiting on my wife, she signs off on everything'],
    ['en', 'I think Coach Reyes should sign off on this'],
    ['es', 'la directora lo tiene que ver aprobado por la mesa, no yo'],
    ['es', 'falta que lo vea la maestra para que quede aprobado'],
    ['es', 'tiene que quedar aprobado por el director'],
  ] as const)('%s: %s', (language, word) => {
    const one = { id: 'sure', now: '2026-11-20T10:00', language, facts: [], signed: true }
    const signs = (last: string): boolean =>
      play({ ...one, says: [...completeOrders[language], last] }, shop).wants.some(({ kind }) => kind === 'sign-off')
    expect(signs(word)).toBe(false)
    expect(signs(language === 'en' ? 'I sign off on it' : 'lo apruebo')).toBe(true)
  })
})
