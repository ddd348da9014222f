import { describe, expect, test } from 'vitest'
import type { GarmentFacts } from '../../../src/domain/ticket/facts.ts'
import { garmentName } from '../../../src/domain/ticket/names.ts'
import { ticketWords } from '../../../templates/ticket/words.ts'
import { footballFacts, homeGarment, navy, white } from './facts.builder.ts'

type Called = Pick<GarmentFacts, 'id' | 'colour'>

const namesOf = (called: readonly Called[], language: 'en' | 'es' = 'en'): readonly string[] => {
  const garments = called.map((one): GarmentFacts => ({ ...homeGarment([]), name: 'mesh jersey', ...one }))
  const facts = footballFacts(1, { garments })
  return garments.map(({ id }) => garmentName({ facts, words: ticketWords[language] }, id))
}

describe('garments of a ticket', () => {
  test('are told apart by their colour', () => {
    const both = [
      { id: 'home', colour: navy },
      { id: 'away', colour: white },
    ]
    expect(namesOf(both)).toEqual(['navy mesh jersey', 'white mesh jersey'])
  })

  test('that are called the same are told apart by home and away, or counted', () => {
    const roles = [
      { id: 'home', colour: white },
      { id: 'away', colour: white },
    ]
    expect(namesOf(roles)).toEqual(['white mesh jersey (home)', 'white mesh jersey (away)'])
    expect(namesOf(roles, 'es')).toEqual(['mesh jersey white (local)', 'mesh jersey white (visitante)'])
    const three = ['a', 'b', 'c'].map((id) => ({ id, colour: id === 'b' ? navy : white }))
    expect(namesOf(three)).toEqual(['white mesh jersey (1)', 'navy mesh jersey', 'white mesh jersey (2)'])
  })
})
