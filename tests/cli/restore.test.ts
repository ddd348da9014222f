import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, describe, expect, it } from 'vitest'
import { startEmbedded } from '../../src/adapters/store/embedded/start-embedded.ts'
import { temporaryFolder, unwrap } from '../support/embedded.ts'
import { runProgram } from '../support/service.ts'

const folder = temporaryFolder()
afterAll(() => folder.remove())

const restore = async (data: string, file: string) => {
  const run = runProgram('src/cli/restore.js', { DATA: data }, file)
  return { code: await run.ended, said: run.said() }
}

/** A whole backup with no rows, written by a program that knew these migrations. */
const backupOf = (migrations: readonly string[]): Buffer => {
  const head = JSON.stringify({ backup: 'platenpost', version: 1, migrations })
  const sha256 = createHash('sha256').update(`${head}\n`).digest('hex')
  return gzipSync(`${head}\n${JSON.stringify({ lines: 1, sha256 })}\n`)
}

describe('a backup that is not put back leaves no empty place behind', () => {
  it.each([
    ['when it is not there', null],
    ['when it is no backup', Buffer.from('no backup')],
    ['when it was cut short', backupOf(['0001-first']).subarray(0, 60)],
  ])('%s', { timeout: 60_000 }, async (name, bytes) => {
    const file = join(folder.path, `${name}.backup`)
    if (bytes !== null) writeFileSync(file, bytes)
    const data = join(folder.path, `data ${name}`)
    const { code, said } = await restore(data, file)
    expect([code, said]).toEqual([1, expect.stringContaining('Nothing was written')])
    expect(existsSync(data)).toBe(false)
  })

  it('when a newer program wrote it, and what else lies there stays', { timeout: 60_000 }, async () => {
    const file = join(folder.path, 'newer.backup')
    writeFileSync(file, backupOf(['9999-future']))
    const data = join(folder.path, 'newer')
    mkdirSync(data)
    writeFileSync(join(data, 'a-file-of-the-owner.txt'), 'mine')
    const { code, said } = await restore(data, file)
    expect([code, said]).toEqual([1, expect.stringContaining('newer version of this program')])
    expect(existsSync(join(data, 'postgres'))).toBe(false)
    expect(existsSync(join(data, 'a-file-of-the-owner.txt'))).toBe(true)
  })

  it('and never takes away a place that was there before', { timeout: 60_000 }, async () => {
    const file = join(folder.path, 'newest.backup')
    writeFileSync(file, backupOf(['9999-future']))
    const data = join(folder.path, 'before')
    const made = unwrap(await startEmbedded(data))
    await made.stop()
    const { code } = await restore(data, file)
    expect([code, existsSync(join(data, 'postgres', 'PG_VERSION'))]).toEqual([1, true])
  })
})
