import { type ParseArgsConfig, parseArgs } from 'node:util'

/** Exit codes of every command: 0 done, 1 refused, 2 not understood. */
export const exitCodes = { done: 0, refused: 1, usage: 2 } as const

/** The words of the command line could not be understood; the message says what and what to do. */
export class UsageError extends Error {
  override readonly name = 'UsageError'
}

type Options = NonNullable<ParseArgsConfig['options']>
type Flags = { readonly [name: string]: string | boolean | undefined }
export type Words = { readonly flags: Flags; readonly positionals: readonly string[] }

const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error))

const readWords = (options: Options): Words => {
  try {
    const { values, positionals } = parseArgs({ options: { ...options, help: { type: 'boolean' } }, allowPositionals: true })
    const flags = Object.entries(values).map(([name, value]) => [name, Array.isArray(value) ? value.at(-1) : value])
    return { flags: Object.fromEntries(flags), positionals }
  } catch (error) {
    throw new UsageError(reasonOf(error), { cause: error })
  }
}

/** The value of a text option, or undefined when it was not given. */
export const text = (words: Words, name: string): string | undefined => {
  const value = words.flags[name]
  return typeof value === 'string' ? value : undefined
}

export const isOn = (words: Words, name: string): boolean => words.flags[name] === true

export type Command = {
  readonly usage: string
  readonly options: Options
  readonly run: (words: Words) => Promise<number>
}

/** Runs a command: its exit code is that of the process, a usage error prints the usage, a bug prints its cause. */
export const runCommand = async ({ usage, options, run }: Command): Promise<void> => {
  try {
    const words = readWords(options)
    if (isOn(words, 'help')) {
      process.stdout.write(`${usage}\n`)
      return
    }
    process.exitCode = await run(words)
  } catch (error) {
    if (!(error instanceof UsageError)) throw error
    process.stderr.write(`${error.message}\n\n${usage}\n`)
    process.exitCode = exitCodes.usage
  }
}
