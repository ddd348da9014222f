/**
 * Why a plan took another's place: a longer search; hours, a delivery or a turn that the owner gave; a promise that a customer agreed
 * to move; an order that is collected in two parts, whose promise is that of the rest.
 */
export type PlanReason = 'search' | 'extra-hours' | 'earlier-delivery' | 'put-first' | 'promise-moved' | 'in-two-parts'
