import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { expect, it } from 'vitest'

it('every package has a licence we accept, and every direct one a reason to be here', () => {
  const root = join(import.meta.dirname, '../..')
  const { status, stderr } = spawnSync(process.execPath, ['.ci/licences.mjs'], { cwd: root, encoding: 'utf8' })
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
})
