import { Routes } from 'discord.js'
import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { Message } from '../../../ports/chat.ts'
import { withPatience } from './patience.ts'
import { hasCode } from './rest-failure.ts'
import type { RoomNeeds } from './rooms.ts'

type Shop = { readonly guild: string; readonly name: string }

export const shopChoiceId = 'c:shop'
/** A person who never spoke with us is looked for in so many servers at most. */
const mostServers = 50

const isMember = async ({ rest, clock }: RoomNeeds, guild: string, person: string): Promise<boolean> => {
  try {
    await withPatience(clock, () => rest.get(Routes.guildMember(guild, person)))
    return true
  } catch (error) {
    if (hasCode(error, 10_004, 10_007, 10_013, 50_001)) return false
    throw error
  }
}

/** The shops somebody may mean in a direct message: those they share a server with, the ones they spoke with first. */
export const shopsFor = async (needs: RoomNeeds, person: string): Promise<readonly Shop[]> => {
  const known = await needs.desk.shopsOf(person)
  const others = (await needs.desk.guilds()).filter(({ guild }) => !known.some((shop) => shop.guild === guild))
  const shops: Shop[] = []
  for (const shop of [...known, ...others].slice(0, mostServers)) {
    if (await isMember(needs, shop.guild, person)) shops.push(shop)
  }
  return shops
}

export const shopChoice = (language: Language, shops: readonly Shop[]): Message => {
  const words = platformWords[language]
  return {
    language,
    blocks: [{ kind: 'text', text: words.whichShop, tone: 'plain' }],
    picture: null,
    file: null,
    actions: [],
    choice: { id: shopChoiceId, label: words.shop, options: shops.map(({ guild, name }) => ({ value: guild, label: name })) },
    form: null,
  }
}
