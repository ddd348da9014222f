import type { TicketFacts } from '../../../domain/ticket/facts.ts'

/** What a press is set to for a ticket: its hottest press step in tenths of °C, and the machine; empty where nothing is pressed. */
export const pressSetting = ({ press }: TicketFacts): { readonly tenthsC: number; readonly machine: string } => {
  const steps = press.filter(({ action }) => action === 'press')
  return { tenthsC: Math.max(0, ...steps.map(({ tenthsC }) => tenthsC ?? 0)), machine: steps[0]?.machine ?? '' }
}
