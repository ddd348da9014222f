import { describe, expect, test } from 'vitest'
import { beforeFirstPiece, making, piecesThrough, type Work, wanting } from '../../../src/domain/ticket/made.ts'
import { workSteps } from '../../../src/domain/ticket/work-steps.ts'
import { footballFacts, rosterRow, sideSteps } from './facts.builder.ts'

const workOf = (quantities: readonly number[], done: readonly (readonly [number, number])[] = []): Work => {
  const roster = quantities.map((quantity, at) => rosterRow(at + 1, { quantity }))
  const lines = roster.map(({ line }) => line)
  const steps = workSteps({ ...footballFacts(1), roster, press: sideSteps('back', lines, 1) })
  return { roster, steps, ticks: done.map(([step, line]) => ({ step, line, state: 'done', by: 'Noor' })) }
}

const through = (work: Work, line: number, kinds: readonly string[] = making): readonly (readonly [number, number])[] =>
  work.steps.filter(({ kind }) => kinds.includes(kind)).map(({ no }) => [no, line] as const)

describe('a first piece', () => {
  const bare = workOf([1, 1, 1])
  const garment = bare.roster[0]?.garment ?? ''

  test('wants every step that makes it, of the line that has gone furthest', () => {
    expect(beforeFirstPiece(bare, garment)).toHaveLength(through(bare, 1).length)
    const all = through(bare, 2)
    const nearly = workOf([1, 1, 1], all.slice(0, -1))
    expect(beforeFirstPiece(nearly, garment)).toEqual([{ step: nearly.steps.find(({ no }) => no === all.at(-1)?.[0]), line: 2 }])
    expect(beforeFirstPiece(workOf([1, 1, 1], all), garment)).toEqual([])
  })

  test('of lines of several garments is made before their pressing is ticked', () => {
    const before = through(bare, 1, ['cut', 'weed', 'brush'])
    expect(beforeFirstPiece(workOf([5, 5]), garment)).toHaveLength(before.length)
    expect(beforeFirstPiece(workOf([5, 5], before), garment)).toEqual([])
    expect(beforeFirstPiece(workOf([1, 5], before), garment)).not.toEqual([])
  })

  test('of another kind is not made by pressing this one', () => {
    expect(beforeFirstPiece(workOf([1], through(bare, 1)), garment)).toEqual([])
    const two = workOf([1, 1], through(workOf([1, 1]), 1))
    const roster = two.roster.map((row) => (row.line === 2 ? { ...row, garment: 'other' } : row))
    expect(beforeFirstPiece({ ...two, roster }, garment)).toEqual([])
    expect(beforeFirstPiece({ ...two, roster }, 'other')).not.toEqual([])
  })
})

describe('steps that are still wanted', () => {
  test('are those of some lines, each once, in the order of the work', () => {
    const work = workOf([1, 1], through(workOf([1, 1]), 1))
    expect(wanting(work, making, [1])).toEqual([])
    expect(wanting(work, making, [1, 2]).map(({ no }) => no)).toEqual(through(work, 2).map(([no]) => no))
  })
})

describe('garments through a step', () => {
  test('are those of lines that are ticked and of those that are ticked now, by how many they are', () => {
    const work = workOf([1, 3, 2], [[1, 1]])
    const [step] = work.steps.filter(({ kind }) => kind === 'press')
    if (step === undefined) throw new Error('the ticket presses nothing')
    expect([piecesThrough(work, step, []), piecesThrough(work, step, [1]), piecesThrough(work, step, [3])]).toEqual([1, 1, 3])
  })
})
