// Lets a child process of a test run the sources as they are: node --import of this file.
import { readFile } from 'node:fs/promises'
import { register } from 'node:module'
import { isMainThread } from 'node:worker_threads'
import typescript from 'typescript'

if (isMainThread) register(import.meta.url)

export const load = async (url, context, next) => {
  if (!url.startsWith('file:') || !url.endsWith('.ts')) return await next(url, context)
  const source = await readFile(new URL(url), 'utf8')
  const { outputText } = typescript.transpileModule(source, {
    compilerOptions: { module: typescript.ModuleKind.ESNext, target: typescript.ScriptTarget.ES2023 },
  })
  return { format: 'module', source: outputText, shortCircuit: true }
}
