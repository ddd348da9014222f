import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { html, markupOf, when } from '../../../../templates/page/html.ts'

const readBack = (text: string): string =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&#96;', '`')
    .replaceAll('&amp;', '&')

describe('html', () => {
  it('never lets a text end an attribute or begin a tag, and loses nothing of it', () => {
    void fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const inside = markupOf(html`${text}`)
        expect(inside).not.toMatch(/[<>"'`]/)
        expect(readBack(inside)).toBe(text)
      }),
    )
  })

  it('keeps markup made by itself, in lists too', () => {
    expect(markupOf(html`<ul>${['a', '<b>'].map((item) => html`<li>${item}</li>`)}</ul>`)).toBe(
      '<ul><li>a</li><li>&lt;b&gt;</li></ul>',
    )
  })

  it('leaves out what is not wanted and does not even make it', () => {
    const refuses = () => {
      throw new Error('made in vain')
    }
    expect(markupOf(html`a${when(false, refuses)}${null}b`)).toBe('ab')
  })

  it('takes no object for markup that only looks like it', () => {
    const forged = JSON.parse('{"made by html": "<script>"}')
    expect(() => markupOf(html`${forged}`)).toThrow(TypeError)
  })
})
