import type { FloorWords } from '../../../../templates/desk/floor/floor-words.ts'
import type { WorkStep } from '../../../domain/ticket/work-steps.ts'

/** A step as it is read at the bench and at the press: '4 PRESS, back'. */
export const stepName = (words: FloorWords, { no, kind, press }: WorkStep): string => {
  if (press === null) return words.steps[kind]
  return [`${no} ${words.pressActions[press.action] ?? press.action}`, words.pressWords[press.side] ?? press.side].join(', ')
}
