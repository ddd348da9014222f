import type { Row } from './order.ts'

type Worn = Pick<Row, 'age' | 'fit'>

/** Twelve years or younger, as it was said. */
export const isChild = ({ age }: Worn): boolean => age === 'under-3' || age === '3-12'

export const looksYoung = ({ fit }: Worn): boolean => fit === 'toddler' || fit === 'youth'

/** A child, or nobody said the age and the cut is a child's: what is looked at for children is looked at here, too. */
export const mayBeChild = (row: Worn): boolean => isChild(row) || (row.age === 'unknown' && looksYoung(row))
