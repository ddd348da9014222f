import { english } from '../../../../templates/page/en.ts'
import { spanish } from '../../../../templates/page/es.ts'
import { type Frame, frame } from '../../../../templates/page/frame.ts'
import { html, markupOf, type Piece } from '../../../../templates/page/html.ts'
import type { PageWords } from '../../../../templates/page/words.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { StoredFile } from '../../../ports/counter-desk.ts'
import type { Counter, Visit } from './counter.ts'
import { kindOf } from './file-kind.ts'
import { asAttachment } from './file-name.ts'
import { statusOf, type Trouble } from './trouble.ts'

const words: { readonly [L in Language]: PageWords } = { en: english, es: spanish }
export const wordsOf = (language: Language): PageWords => words[language]

/** The language a visitor asks for: `?language=`, else the browser's first that the shop speaks, else the shop's first. */
export const visitorLanguage = (c: Visit, counter: Counter): Language => {
  const spoken = counter.desk.languages
  const accepted = (c.req.header('accept-language') ?? '').split(',').map((part) => part.trim().slice(0, 2).toLowerCase())
  const wanted = [c.req.query('language'), ...accepted]
  return wanted.flatMap((asked) => spoken.filter((language) => language === asked))[0] ?? spoken[0] ?? 'en'
}

export type Look = {
  readonly language: Language
  readonly look: Frame['look']
  readonly title: string
  readonly links: Piece
}

/** A whole page as the answer. */
export const showPage = (
  c: Visit,
  counter: Counter,
  look: Look & { readonly main: Piece; readonly status?: 200 | 401 },
): Response => {
  const page = frame(
    {
      ...look,
      words: wordsOf(look.language),
      lang: look.language,
      shopName: counter.desk.shopName,
      asset: counter.assets.address,
    },
    look.main,
  )
  return c.html(markupOf(page), look.status ?? 200)
}

/** The page's own script asks for JSON; a form sent without script gets a page. */
export const wantsJson = (c: Visit): boolean => (c.req.header('accept') ?? '').startsWith('application/json')

export type Refusal = { readonly trouble: Trouble; readonly language: Language; readonly back: string }

/** Says what happened and what to do, to the script or as a page with the way back. */
export const refuse = (c: Visit, counter: Counter, refusal: Refusal): Response => {
  const { trouble, language } = refusal
  const said = wordsOf(language)
  const sentence = said.trouble[trouble.code]({ name: trouble.name ?? '', most: trouble.most ?? '' })
  const status = statusOf(trouble)
  if (status === 429) c.header('retry-after', '60')
  if (wantsJson(c)) return c.json({ trouble: trouble.code, said: sentence }, status)
  const main = html`<section class="sheet"><h1>${said.troubleTitle}</h1><p role="alert">${sentence}</p><p><a class="button" href="${refusal.back}">${said.back}</a></p></section>`
  const page = frame(
    {
      words: said,
      lang: language,
      look: 'customer',
      shopName: counter.desk.shopName,
      title: said.troubleTitle,
      asset: counter.assets.address,
      links: null,
    },
    main,
  )
  return c.html(markupOf(page), status)
}

/** A stored file as a download whose type is what its content shows. */
export const sendFile = (c: Visit, file: StoredFile): Response => {
  const mime = kindOf(file.bytes, file.name)?.mime ?? 'application/octet-stream'
  c.header('content-type', mime.startsWith('text/') ? `${mime}; charset=utf-8` : mime)
  c.header('content-disposition', asAttachment(file.name))
  c.header('content-security-policy', "sandbox; default-src 'none'")
  return c.body(new Uint8Array(file.bytes))
}
