/** One order a conversation: its id is made from the conversation's, so that two devices make one order. */
export const orderIdOf = (conversationId: string): string => `o${conversationId.replace(/^c/, '')}`
