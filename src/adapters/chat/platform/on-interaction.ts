import { platformWords } from '../../../../templates/platform/languages.ts'
import { acknowledgePrivately, suggest } from './acknowledge.ts'
import { type Asking, type Interaction, readInteraction } from './interaction.ts'
import type { Needs } from './needs.ts'
import { onCommand } from './on-command.ts'
import { onComponent, onSubmitted } from './on-component.ts'
import { onSetting } from './on-setting.ts'
import { actorOf } from './role.ts'
import { textPart } from './say.ts'
import { tell } from './tell.ts'

const onTyping = async (needs: Needs, interaction: Interaction, { word, option, text }: Extract<Asking, { kind: 'typing' }>) => {
  const settings = interaction.guild === null ? null : await needs.desk.guild(interaction.guild)
  const found = settings === null ? [] : await needs.desk.suggest(actorOf(settings, interaction), { command: word, option, text })
  await suggest(needs.answers, interaction, found)
}

const dispatch = async (needs: Needs, interaction: Interaction): Promise<void> => {
  const { asking } = interaction
  switch (asking.kind) {
    case 'command':
      return await onCommand(needs, interaction, asking)
    case 'typing':
      return await onTyping(needs, interaction, asking)
    case 'component':
      return asking.ref.kind === 'setting'
        ? await onSetting(needs, interaction, { name: asking.ref.name, values: asking.values })
        : await onComponent(needs, interaction, asking)
    case 'submitted':
      return await onSubmitted(needs, interaction, asking)
    case 'unknown': {
      const how = await acknowledgePrivately(needs.answers, interaction)
      return await tell(needs, interaction, {
        how,
        parts: [textPart(platformWords[interaction.person.language].gone)],
        files: [],
      })
    }
  }
}

/** Says that it did not work; when the platform no longer takes even that, nothing more can be done. */
const tellLater = async (needs: Needs, interaction: Interaction): Promise<void> => {
  if (interaction.asking.kind === 'typing') return
  const text = platformWords[interaction.person.language].later
  const how = await acknowledgePrivately(needs.answers, interaction)
  await tell(needs, interaction, { how, parts: [textPart(text)], files: [] })
}

/** One interaction as the platform sent it. */
export const onInteraction = async (needs: Needs, data: unknown): Promise<void> => {
  const interaction = readInteraction(data)
  if (interaction === null) return
  try {
    await dispatch(needs, interaction)
  } catch (error) {
    needs.report(error)
    await tellLater(needs, interaction)
  }
}
