import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Channel, Message } from '../../../ports/chat.ts'
import type { PlatformDesk } from '../../../ports/platform-desk.ts'
import { fileName } from './plain-text.ts'
import { type Carried, mostBytes } from './render.ts'

/** A file as it is sent: `name` is the only one of its kind in its message, `id` is the desk's own. */
export type Upload = { readonly name: string; readonly mime: string; readonly bytes: Uint8Array; readonly id: string }
/** Everything that a message shows beside its words; `papers` has the message's own file first. */
type Uploads = { readonly picture: Upload | null; readonly papers: readonly Upload[] }
export type Bundle = { readonly uploads: readonly Upload[]; readonly carried: Carried }

type FileDesk = Pick<PlatformDesk, 'file'>
type Kept = { readonly shop: string; readonly channel: Channel }

const load = async (desk: FileDesk, { shop, channel }: Kept, id: string): Promise<Upload> => {
  const stored = await desk.file(shop, channel, id)
  if (stored === null) throw new Error(`there is no file ${id} to send`)
  return { id, name: fileName(stored.name), mime: stored.mime, bytes: stored.bytes }
}

/** The platform tells the files of one message apart by their names, whatever their case. */
const named = (uploads: readonly Upload[]): readonly Upload[] => {
  const taken = new Set<string>()
  return uploads.map((upload) => {
    const names = Array.from({ length: taken.size + 1 }, (_, at) => (at === 0 ? upload.name : `${at + 1}-${upload.name}`))
    const name = names.find((one) => !taken.has(one.toLowerCase())) ?? upload.name
    taken.add(name.toLowerCase())
    return { ...upload, name }
  })
}

const loadUploads = async (desk: FileDesk, kept: Kept, { picture, file, papers = [] }: Message): Promise<Uploads> => {
  const ids = new Set([...(file === null ? [] : [file]), ...papers].map((paper) => paper.file))
  const loaded = await Promise.all([...ids].map((id) => load(desk, kept, id)))
  const shown = picture === null ? [] : [await load(desk, kept, picture.file)]
  const all = named([...loaded, ...shown])
  return { picture: all[loaded.length] ?? null, papers: all.slice(0, loaded.length) }
}

const bundleOf = (all: readonly Upload[], shown: Uploads, language: Message['language']): Bundle => {
  const carries = ({ bytes }: Upload): boolean => bytes.length <= mostBytes
  const picture = shown.picture !== null && carries(shown.picture) ? shown.picture : null
  const papers = shown.papers.filter(carries)
  const uploads = [...(picture === null ? [] : [picture]), ...papers]
  const missing = all.filter((one) => !uploads.includes(one)).map(({ name }) => name)
  const sized = ({ name, bytes }: Upload) => ({ name, bytes: bytes.length })
  return {
    uploads,
    carried: {
      picture: picture === null ? null : sized(picture),
      papers: papers.map(sized),
      note: missing.length === 0 ? null : platformWords[language].tooLarge(missing.join(', ')),
    },
  }
}

/**
 * The sets of files to try with a message, never none: everything that can be sent at all, then without the picture, then the
 * message's own file alone, then words only. What a set lacks is named in its note.
 */
export const bundlesOf = async (desk: FileDesk, kept: Kept, message: Message): Promise<readonly Bundle[]> => {
  const whole = await loadUploads(desk, kept, message)
  const { picture, papers } = whole
  const all = [...(picture === null ? [] : [picture]), ...papers]
  const sets = [whole, { picture: null, papers }, { picture: null, papers: papers.slice(0, 1) }, { picture: null, papers: [] }]
  const bundles = sets.map((set) => bundleOf(all, set, message.language))
  return bundles.filter(({ uploads }, at) => uploads.length !== bundles[at - 1]?.uploads.length)
}
