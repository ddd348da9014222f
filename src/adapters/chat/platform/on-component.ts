import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Incoming } from '../../../ports/chat.ts'
import type { PlatformDesk } from '../../../ports/platform-desk.ts'
import { acknowledge, acknowledgePrivately, showForm } from './acknowledge.ts'
import type { ComponentRef } from './custom-id.ts'
import { modalOf } from './form.ts'
import type { Asking, Interaction } from './interaction.ts'
import type { Needs } from './needs.ts'
import { onShopChosen } from './on-shop-chosen.ts'
import { tellOutcome } from './outcome.ts'
import { textPart } from './say.ts'
import { shopChoiceId } from './shop-choice.ts'
import { takeFiles } from './take-files.ts'
import { tell } from './tell.ts'
import { handOver, keptIn, type Whose, whoseIs } from './whose.ts'

/** A form must be shown as the first answer; the desk has this long to give it. */
const formWithin = 1_800

const formPage = (ref: ComponentRef, desk: PlatformDesk): { readonly id: string; readonly page: number } | null => {
  if (ref.kind === 'form') return { id: ref.id, page: ref.page }
  return ref.kind === 'action' && desk.opensForm(ref.id) ? { id: ref.id, page: 1 } : null
}

const askForm = async (needs: Needs, interaction: Interaction, wanted: { readonly id: string; readonly page: number }) => {
  const whose = await whoseIs(needs, interaction)
  if (whose.kind === 'not-set-up' || whose.kind === 'nobody') return null
  const isOthers = whose.kind === 'talk' && whose.talk.person !== interaction.person.id
  const form = isOthers ? null : await needs.desk.form(whose.kind === 'talk' ? whose.talk : whose.actor, wanted.id)
  return form === null ? null : modalOf(form, wanted.page)
}

const slow = (milliseconds: number): Promise<'slow'> =>
  new Promise((resolve) => setTimeout(() => resolve('slow'), milliseconds).unref())

const incomingOf = (id: string, ref: ComponentRef, values: readonly string[]): Incoming | null => {
  if (ref.kind === 'action') return { kind: 'pressed', id, action: ref.id }
  const [value] = values
  return ref.kind === 'choice' && value !== undefined ? { kind: 'chose', id, choice: ref.id, value } : null
}

const tellGone = async (needs: Needs, interaction: Interaction, word: 'gone' | 'later' | 'notSetUp'): Promise<void> => {
  const how = await acknowledgePrivately(needs.answers, interaction)
  await tell(needs, interaction, { how, parts: [textPart(platformWords[interaction.person.language][word])], files: [] })
}

const missing = (whose: Whose): 'gone' | 'notSetUp' => (whose.kind === 'not-set-up' ? 'notSetUp' : 'gone')

/** Somebody pressed a button that opens a form. A form that is not theirs is refused by the desk, as a press. */
const openForm = async (
  needs: Needs,
  interaction: Interaction,
  wanted: { readonly id: string; readonly page: number },
): Promise<void> => {
  const modal = await Promise.race([askForm(needs, interaction, wanted), slow(formWithin)])
  if (modal === 'slow') {
    await tellGone(needs, interaction, 'later')
    return
  }
  if (modal !== null) {
    await showForm(needs.answers, interaction, modal)
    return
  }
  await handComponent(needs, interaction, { kind: 'pressed', id: interaction.id, action: wanted.id })
}

/** Acknowledged first, then handed over, then answered in private. */
const handComponent = async (needs: Needs, interaction: Interaction, incoming: Incoming): Promise<void> => {
  const how = await acknowledge(needs.answers, interaction)
  const whose = await whoseIs(needs, interaction)
  if (whose.kind === 'not-set-up' || whose.kind === 'nobody') {
    const text = platformWords[interaction.person.language][missing(whose)]
    await tell(needs, interaction, { how, parts: [textPart(text)], files: [] })
    return
  }
  const outcome = await handOver(needs, whose, { by: interaction.person, incoming })
  await tellOutcome(needs, interaction, { how, kept: keptIn(whose), outcome, refusals: [] })
}

/** A button was pressed or something was chosen. */
export const onComponent = async (
  needs: Needs,
  interaction: Interaction,
  { ref, values }: Extract<Asking, { kind: 'component' }>,
): Promise<void> => {
  const wanted = formPage(ref, needs.desk)
  if (wanted !== null) {
    await openForm(needs, interaction, wanted)
    return
  }
  const incoming = incomingOf(interaction.id, ref, values)
  if (incoming === null) {
    await tellGone(needs, interaction, 'gone')
    return
  }
  if (incoming.kind === 'chose' && incoming.choice === shopChoiceId && interaction.guild === null) {
    await onShopChosen(needs, interaction, incoming.value)
    return
  }
  await handComponent(needs, interaction, incoming)
}

/** A form was filled: its files are fetched and kept, their ids become the fields' values. */
export const onSubmitted = async (
  needs: Needs,
  interaction: Interaction,
  { ref, texts, files }: Extract<Asking, { kind: 'submitted' }>,
): Promise<void> => {
  if (ref.kind !== 'form') {
    await tellGone(needs, interaction, 'gone')
    return
  }
  const how = await acknowledge(needs.answers, interaction)
  const whose = await whoseIs(needs, interaction)
  if (whose.kind === 'not-set-up' || whose.kind === 'nobody') {
    const text = platformWords[interaction.person.language][missing(whose)]
    await tell(needs, interaction, { how, parts: [textPart(text)], files: [] })
    return
  }
  const kept = keptIn(whose)
  const values: { [field: string]: string } = { ...texts }
  const refusals: string[] = []
  for (const field of new Set(files.map((one) => one.field))) {
    const given = files.filter((one) => one.field === field).map((one) => one.file)
    const taken = await takeFiles(needs, { ...kept, language: interaction.person.language }, given)
    values[field] = taken.files.map(({ file }) => file).join(',')
    refusals.push(...taken.refusals)
  }
  const incoming: Incoming = { kind: 'filled', id: interaction.id, form: ref.id, values }
  const outcome = await handOver(needs, whose, { by: interaction.person, incoming })
  await tellOutcome(needs, interaction, { how, kept, outcome, refusals })
}
