import type { Conversation } from '../conversation.ts'
import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { spoken } from '../words/languages.ts'
import { fold, tokensOf } from './text/tokens.ts'
import { refsIn } from './whom/refs.ts'

type Scene = { readonly draft: Draft; readonly asked: NonNullable<Conversation['asked']>; readonly text: string }

const said = spoken.answers
const nobody = new RegExp(`\\b${said.nobodyLeaves}\\b|^${said.no}\\b`)
const sameSizes = new RegExp(`\\b${said.sameSizes}\\b|^${said.sameYes}\\b`)

/** The first answer offered leaves things as they were. */
const asIs = ({ asked }: Scene): readonly Patch[] => asked.readings?.[0]?.patches ?? []

const keysNamed = ({ text, draft }: Scene): readonly string[] => refsIn(tokensOf(text), draft.rows).flatMap((ref) => ref.keys)

/** Everybody who is named leaves the list; with nobody named only a plain "nobody" is an answer. */
const answerLeaving = (scene: Scene): readonly Patch[] => {
  const keys = keysNamed(scene)
  if (keys.length > 0) return keys.map((key) => ({ path: ['rows', key], value: null }))
  return nobody.test(fold(scene.text).trim()) ? asIs(scene) : []
}

/** The one who is named stays, and the others go. */
const answerWhose = (scene: Scene): readonly Patch[] => {
  const keys = new Set(keysNamed(scene))
  if (keys.size === 0) return []
  return Object.keys(scene.draft.rows).flatMap((key) => (keys.has(key) ? [] : [{ path: ['rows', key], value: null }]))
}

/** Answers to what is asked about an earlier order that was taken over: who leaves, whose piece it is, whether sizes still fit. */
export const answerAgain = (scene: Scene): readonly Patch[] => {
  if (scene.asked.code === 'whose') return answerWhose(scene)
  if (scene.asked.code === 'leaving') return answerLeaving(scene)
  return sameSizes.test(fold(scene.text).trim()) ? asIs(scene) : []
}
