/** One ticket for each revision of an order. */
export const ticketIdOf = (orderId: string, revision: number): string => `t${orderId.slice(1)}-${revision}`
/** The number that people say and that stands on the paper. */
export const ticketName = (number: number): string => `T${String(number).padStart(4, '0')}`
