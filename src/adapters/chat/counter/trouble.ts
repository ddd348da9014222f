import type { TroubleCode, TroubleFacts } from '../../../../templates/page/words.ts'

/** Why a request was not done, as a value; the sentence comes from the page's words. */
export type Trouble = { readonly code: TroubleCode } & Partial<TroubleFacts>

type Status = 400 | 401 | 403 | 404 | 413 | 415 | 421 | 429 | 500

const statuses: { readonly [Code in TroubleCode]: Status } = {
  'wrong-address': 421,
  forged: 403,
  'not-found': 404,
  'no-conversation': 404,
  'too-many': 429,
  'too-many-open': 429,
  empty: 400,
  'too-long': 413,
  'broken-form': 400,
  'upload-too-large': 413,
  'file-too-large': 413,
  'file-kind': 415,
  'too-many-files': 413,
  'sign-in-failed': 401,
  'link-used': 401,
  'owner-only': 403,
  'signed-out': 401,
  broken: 500,
}

export const statusOf = (trouble: Trouble): Status => statuses[trouble.code]
