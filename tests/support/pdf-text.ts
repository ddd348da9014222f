import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** The text of every page in reading order, as another program reads it. */
export const pdfPages = async (bytes: Uint8Array): Promise<readonly string[]> => {
  const task = getDocument({ data: new Uint8Array(bytes), useSystemFonts: false, verbosity: 0 })
  const document = await task.promise
  const pages: string[] = []
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent()
    pages.push(items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? '\n' : ' '}` : '')).join(''))
  }
  await task.destroy()
  return pages.map((page) => page.replaceAll(/[ \t]+/g, ' '))
}
