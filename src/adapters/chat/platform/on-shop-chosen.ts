import { platformWords } from '../../../../templates/platform/languages.ts'
import { acknowledge } from './acknowledge.ts'
import type { Interaction } from './interaction.ts'
import type { Needs } from './needs.ts'
import { openConversation } from './rooms.ts'
import { textPart } from './say.ts'
import { shopsFor } from './shop-choice.ts'
import { tell } from './tell.ts'

/** In a direct message somebody said which shop they mean; only one they share a server with counts. */
export const onShopChosen = async (needs: Needs, interaction: Interaction, guild: string): Promise<void> => {
  const how = await acknowledge(needs.answers, interaction)
  const { person, id } = interaction
  const words = platformWords[person.language]
  const theirs = (await shopsFor(needs, person.id)).some((shop) => shop.guild === guild)
  const settings = theirs ? await needs.desk.guild(guild) : null
  const talk = settings === null ? null : await openConversation(needs, { settings, person, asked: null, cause: id })
  if (talk === null) await tell(needs, interaction, { how, parts: [textPart(words.noShop)], files: [] })
}
