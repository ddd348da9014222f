import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { root, temporaryFolder } from './support/embedded.ts'

const folder = temporaryFolder()
afterAll(() => folder.remove())

type Lock = { readonly packages: { readonly [path: string]: { readonly license?: string } } }

/** The list as it would be with another lock file. */
const listed = (name: string, change: (lock: Lock) => unknown) => {
  const copy = join(folder.path, name)
  mkdirSync(copy)
  cpSync(join(root, '.ci'), join(copy, '.ci'), { recursive: true })
  cpSync(join(root, 'package.json'), join(copy, 'package.json'))
  const lock: Lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'))
  writeFileSync(join(copy, 'package-lock.json'), JSON.stringify(change(lock)))
  return spawnSync(process.execPath, [join(copy, '.ci/licences.mjs')], { encoding: 'utf8' })
}

describe('the list of licences', () => {
  it('knows version, licence and reason of every package there is', () => {
    const { status, stdout, stderr } = listed('as-it-is', (lock) => lock)
    expect([status, stderr]).toEqual([0, ''])
    const lock: Lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'))
    expect(stdout.trim().split('\n')).toHaveLength(Object.keys(lock.packages).length)
  })

  it('fails on a licence that is not taken, on none, and on a package nobody gave a reason for', () => {
    const added = (parts: object) => (lock: Lock) => ({
      ...lock,
      packages: { ...lock.packages, 'node_modules/planted': { version: '1.0.0', ...parts } },
    })
    expect(listed('strict', added({ license: 'AGPL-3.0' }))).toMatchObject({ status: 1, stderr: 'planted: licence AGPL-3.0\n' })
    expect(listed('none', added({}))).toMatchObject({ status: 1, stderr: 'planted: licence not named\n' })
    const withoutReason = readFileSync(join(root, '.ci/licences.mjs'), 'utf8').replace(/^ {2}hono: .*\n/m, '')
    const copy = join(folder.path, 'reason')
    mkdirSync(join(copy, '.ci'), { recursive: true })
    writeFileSync(join(copy, '.ci/licences.mjs'), withoutReason)
    for (const file of ['package.json', 'package-lock.json']) cpSync(join(root, file), join(copy, file))
    expect(spawnSync(process.execPath, [join(copy, '.ci/licences.mjs')], { encoding: 'utf8' })).toMatchObject({
      status: 1,
      stderr: 'hono: say in .ci/licences.mjs why it is here\n',
    })
  })
})
