import { type Html, html, type Piece } from './html.ts'
import type { PageWords } from './words.ts'

/** What every page has. `asset` gives the address of a style, script or icon. */
export type Frame = {
  readonly words: PageWords
  readonly lang: string
  readonly look: 'customer' | 'staff'
  readonly shopName: string
  readonly title: string
  readonly asset: (name: string) => string
  readonly links: Piece
}

/** A whole page: the shop's sign, the way round, and the page's own part. */
export const frame = (page: Frame, main: Piece): Html => html`<!doctype html>
<html lang="${page.lang}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${page.title} · ${page.shopName}</title>
<link rel="stylesheet" href="${page.asset('counter.css')}">
<link rel="stylesheet" href="${page.asset('floor.css')}">
<link rel="icon" href="${page.asset('icon.svg')}">
<script src="${page.asset('counter.js')}" defer></script>
</head>
<body class="${page.look}">
<a class="skip" href="#main">${page.words.skip}</a>
<header class="sign"><p class="shop">${page.shopName}</p>${page.links}</header>
<main id="main" tabindex="-1" data-lost="${page.words.live.lost}" data-on="${page.words.live.on}" data-unsent="${page.words.live.unsent}" data-large="${page.words.trouble['file-too-large']({ name: '*', most: '8 MB' })}">
${main}
<p id="notice" class="notice" role="status"></p>
</main>
</body>
</html>
`
