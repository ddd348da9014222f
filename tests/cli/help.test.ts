import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { root } from '../support/embedded.ts'

const commands = ['make', 'talk', 'stones', 'plan', 'backup', 'restore', 'forget', 'register']

const help = (file: string) => spawnSync(process.execPath, [join(root, file), '--help'], { encoding: 'utf8', timeout: 30_000 })

test.each(commands)('%s says what it is for and how it is called, and does nothing else', (name) => {
  const { status, stdout, stderr } = help(`.build/src/cli/${name}.js`)
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
  expect(stdout).toMatch(new RegExp(`^${name}: \\S`))
  expect(stdout).toContain(`npm run -s ${name} -- `)
})

test.each([
  ['.build/src/main.js', 'npm start:'],
  ['.build/workers/main.js', 'node .build/workers/main.js:'],
  ['.ci/long.mjs', 'npm run long -- <name>:'],
])('%s asked for help neither starts nor fails', (file, words) => {
  const { status, stdout } = help(file)
  expect(status).toBe(0)
  expect(stdout.startsWith(words)).toBe(true)
})
