import { execFileSync, spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { root } from './support/embedded.ts'

const files = execFileSync('git', ['ls-files', 'src', 'workers', 'templates', '.ci', 'docker-compose.yml', 'package.json'], {
  cwd: root,
  encoding: 'utf8',
})
  .trim()
  .split('\n')
const textOf = (file: string): string => readFileSync(join(root, file), 'utf8')

describe('secrets', () => {
  it('come from the environment, which one file alone reads', () => {
    const readers = files.filter(
      (file) => /\.(ts|js|mjs)$/.test(file) && /process\s*\.\s*env|process\s*\[|env\s*}\s*=\s*process/.test(textOf(file)),
    )
    expect(readers.filter((file) => !file.startsWith('.ci/'))).toEqual(['src/config.ts'])
  })

  it('stand nowhere in what is shipped', () => {
    const shapes = [
      /-----BEGIN [A-Z ]*PRIVATE KEY-----/,
      /\b[MN][\w-]{23,25}\.[\w-]{6}\.[\w-]{27,}\b/,
      /\b(?:postgres|postgresql|rediss?):\/\/[^\s:/@'"`$]*:(?!…)[^\s@'"`$…{]+@/,
      /(?:password|secret|token|api_?key)["']?\s*[:=]\s*["'][A-Za-z0-9+/_-]{16,}["']/i,
    ]
    const found = files
      .filter((file) => !/\.(woff2?|png|ttf)$/.test(file))
      .flatMap((file) => shapes.filter((shape) => shape.test(textOf(file))).map((shape) => `${file}: ${shape}`))
    expect(found).toEqual([])
  })

  it.each(['SESSION_KEY', 'WATCH_TOKEN'])('that are too short are refused without being repeated (%s)', (name) => {
    const env = { ...process.env, [name]: 'hush-hush' }
    const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, '.build/src/main.js')], { env, encoding: 'utf8' })
    expect(status).toBe(1)
    expect(stderr).toMatch(new RegExp(`^stop at /${name}: It must have \\d+ signs or more`))
    expect(stdout + stderr).not.toContain('hush')
  })
})
