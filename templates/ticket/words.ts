import type { TicketWords } from '../../src/domain/ticket/words.ts'
import { ticketWordsEn } from './en.ts'
import { ticketWordsEs } from './es.ts'

/** The words of the paper by language. */
export const ticketWords: { readonly en: TicketWords; readonly es: TicketWords } = { en: ticketWordsEn, es: ticketWordsEs }
