import { correction, generate } from 'lean-qr'

/** The dark modules of a QR code (ISO/IEC 18004) at correction level M or better, row by row, without the quiet zone. */
export const codeRows = (content: string): readonly (readonly boolean[])[] => {
  const code = generate(content, { minCorrectionLevel: correction.M })
  return Array.from({ length: code.size }, (_row, y) =>
    Array.from({ length: code.size }, (_module, x) => code.get(x, y) === true),
  )
}
