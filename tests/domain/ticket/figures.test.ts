import { describe, expect, it } from 'vitest'
import { correctionText, runsText, supplyText, weightText } from '../../../src/domain/ticket/figures.ts'

describe('corrections on paper', () => {
  it('signs a correction', () => {
    expect(correctionText(28, 'F')).toBe('+5 °F')
    expect(correctionText(-30, 'C')).toBe('−3 °C')
  })
})

describe('lengths on paper', () => {
  it('rounds what is to be fetched up', () => {
    expect(supplyText(254_001, 'in')).toBe('10.1 in')
    expect(supplyText(254_000, 'in')).toBe('10 in')
    expect(supplyText(101, 'cm')).toBe('0.1 cm')
  })
})

describe('weights and runs of lines', () => {
  it('weighs in tenths of a gram', () => {
    expect(weightText(221_190)).toBe('221.2 g')
  })

  it('joins neighbouring lines', () => {
    expect(runsText([3, 1, 2, 7, 9, 10, 7])).toBe('1–3, 7, 9–10')
    expect(runsText([])).toBe('')
  })
})
