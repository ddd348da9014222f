import { defineConfig } from 'vitest/config'

const inCi = process.env['CI'] !== undefined

/** Suites run from the project's root; CI also leaves the counts where `.ci/run` reads them. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    testTimeout: 30_000,
    hookTimeout: 60_000,
    reporters: inCi ? ['default', ['json', { outputFile: '.build/tests.json' }]] : ['default'],
  },
})
