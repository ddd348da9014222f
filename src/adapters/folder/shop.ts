import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type * as z from 'zod'
import { ok, type Problem, type Result, refuse } from '../../domain/result/result.ts'
import { parseShape } from '../../domain/result/shape.ts'
import { checkShop } from '../../domain/shop/check-shop.ts'
import { type Shop, shopFiles } from '../../domain/shop/shop.ts'

const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error))

/** Maker: each value was read with the schema that `shopFiles` ties to its key. */
const shopFrom = (parts: { readonly [key: string]: unknown }): Shop => parts as Shop

const readPart = async <T>(
  folder: string,
  part: { readonly file: string; readonly schema: z.ZodType<T> },
): Promise<Result<T>> => {
  const { file } = part
  const text = await readFile(join(folder, file), 'utf8').catch(() => null)
  if (text === null) return refuse({ code: 'shop-file-missing', at: file, severity: 'stop', facts: { file, folder } })
  let document: unknown
  try {
    document = JSON.parse(text)
  } catch (error) {
    return refuse({ code: 'shop-file-not-json', at: file, severity: 'stop', facts: { file, reason: reasonOf(error) } })
  }
  const parsed = parseShape(part.schema, document)
  if (parsed.ok) return parsed
  return { ok: false, problems: parsed.problems.map((problem) => ({ ...problem, at: `${file}#${problem.at}` })) }
}

/**
 * Reads a shop folder: every file with its schema, then that the records fit together. All problems of all files are
 * returned, each with `file#/path` of the value.
 */
export const loadShop = async (folder: string): Promise<Result<Shop>> => {
  const read = await Promise.all(
    Object.entries(shopFiles).map(async ([key, part]) => ({ key, result: await readPart<unknown>(folder, part) })),
  )
  const problems: readonly Problem[] = read.flatMap(({ result }) => (result.ok ? [] : result.problems))
  if (problems.length > 0) return { ok: false, problems }
  const shop = shopFrom(Object.fromEntries(read.flatMap(({ key, result }) => (result.ok ? [[key, result.value]] : []))))
  const dangling = checkShop(shop)
  return dangling.length > 0 ? { ok: false, problems: dangling } : ok(shop)
}
