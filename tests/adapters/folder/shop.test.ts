import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeEach, describe, expect, test } from 'vitest'
import { projectRoot } from '../../../src/adapters/folder/root.ts'
import { loadShop } from '../../../src/adapters/folder/shop.ts'
import { freshFolder } from '../../support/command.ts'

const starter = join(projectRoot(), 'templates', 'shop')
const folder = freshFolder('shop')
afterAll(folder.remove)
beforeEach(() => cpSync(starter, folder.path, { recursive: true, force: true }))

const change = (file: string, from: string, to: string): void => {
  const path = join(folder.path, file)
  const text = readFileSync(path, 'utf8')
  expect(text).toContain(from)
  writeFileSync(path, text.replace(from, to))
}

const troubles = async () => {
  const shop = await loadShop(folder.path)
  return shop.ok ? [] : shop.problems.map(({ code, at }) => `${code} ${at}`)
}

describe('a shop folder', () => {
  test('of the starter shop is whole', async () => {
    expect(await troubles()).toEqual([])
  })

  test('with a wrong value names file and path', async () => {
    change('shop.json', '"temperature": "F"', '"temperature": "K"')
    expect(await troubles()).toEqual(['shape-choice shop.json#/units/temperature'])
  })

  test('with trouble in several files names all of them', async () => {
    rmSync(join(folder.path, 'prices.json'))
    writeFileSync(join(folder.path, 'colours.json'), '[{')
    change('hours.json', '"zone"', '"zon"')
    const found = await troubles()
    expect(found).toContain('shop-file-missing prices.json')
    expect(found).toContain('shop-file-not-json colours.json')
    expect(found).toContain('shape-unknown-key hours.json#/zon')
  })

  test('whose records name what does not exist says which and where', async () => {
    change('garments.json', '"fabric": "poly-mesh"', '"fabric": "poly-mash"')
    change('shop.json', '"numberFace": "saira-condensed-800"', '"numberFace": "no-such-face"')
    const found = await troubles()
    expect(found).toContain('shop-reference garments.json#/0/fabric')
    expect(found).toContain('shop-reference shop.json#/usual/numberFace')
  })

  test('with a vinyl whose usual point lies outside its own window is refused', async () => {
    const path = join(folder.path, 'vinyl.json')
    const vinyl = JSON.parse(readFileSync(path, 'utf8'))
    vinyl[0].window.tenthsC.usual = vinyl[0].window.tenthsC.most + 10
    writeFileSync(path, JSON.stringify(vinyl))
    expect(await troubles()).toEqual(['shape-rule vinyl.json#/0/window'])
  })
})
