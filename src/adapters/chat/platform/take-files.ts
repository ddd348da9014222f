import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { Attachment, Channel } from '../../../ports/chat.ts'
import { type Fetched, fetchAttachment } from './attachments.ts'
import type { Needs } from './needs.ts'
import type { GivenFile } from './payload.ts'

export type Taken = { readonly files: readonly Attachment[]; readonly refusals: readonly string[] }

/** Files of one event at most; more are left where they are. */
const mostFiles = 10

const refusalOf = ({ why, name }: Extract<Fetched, { ok: false }>, language: Language, mostBytes: number): string => {
  const words = platformWords[language].fileNotTaken
  return why === 'too-large' ? words[why](name, `${Math.floor(mostBytes / 2 ** 20)} MiB`) : words[why](name)
}

/** Fetches what somebody sent and keeps our own copy; what cannot be taken is said in words. */
export const takeFiles = async (
  { desk, files: rules }: Needs,
  where: { readonly shop: string; readonly channel: Channel; readonly language: Language },
  given: readonly GivenFile[],
): Promise<Taken> => {
  const files: Attachment[] = []
  const refusals: string[] = []
  for (const one of given.slice(0, mostFiles)) {
    const fetched = await fetchAttachment(one, rules)
    if (!fetched.ok) {
      refusals.push(refusalOf(fetched, where.language, rules.mostBytes))
      continue
    }
    const { id } = await desk.keepFile(where.shop, where.channel, fetched.file)
    files.push({ file: id, name: fetched.file.name, mime: fetched.file.mime, bytes: fetched.file.bytes.length })
  }
  return { files, refusals }
}
