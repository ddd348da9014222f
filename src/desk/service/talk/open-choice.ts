import type { Asked } from '../../../domain/understanding/conversation.ts'
import type { Line } from '../../../ports/counter-desk.ts'

/** Whether a line's buttons answer what the conversation asks now. */
const answers = ({ message: { choice } }: Line, asked: Asked | null): boolean => {
  const values = new Set(asked?.readings?.map(({ value }) => value))
  return choice?.options.some(({ value }) => values.has(value)) ?? false
}

/** Lines of a conversation; of those with buttons only the newest that asks what is still asked can be answered by them. */
export const withAnswered = (lines: readonly Line[], asked: Asked | null): readonly Line[] => {
  const open = lines.findLast((line) => line.message.choice !== null)
  return lines.map((line) =>
    line.message.choice === null || (line === open && answers(line, asked)) ? line : { ...line, isAnswered: true },
  )
}
