/** File names come from ids and counts, never from what a customer wrote. */
export const ticketFile = 'ticket.pdf'
export const priceFile = 'price.pdf'
export const careFile = 'care.pdf'
export const templatePrintFile = 'templates.pdf'
export const archiveFile = 'cut.zip'
export const previewFile = 'preview.png'
export const resultFile = 'result.json'
export const vinylSheetFile = (material: string): string => `cut/${material}.svg`
export const templateSheetFile = (sheet: string): string => `cut/${sheet}.svg`
export const dxfOf = (svgFile: string): string => svgFile.replace(/\.svg$/, '.dxf')
