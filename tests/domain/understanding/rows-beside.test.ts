import { expect, test } from 'vitest'
import { readRoster } from '../../../src/domain/understanding/read/list/roster.ts'

const read = (text: string) => readRoster(text, { expected: false, numbered: true })

test('columns in any order, with any separator, give the same rows', () => {
  const rows = [
    { number: '4', name: 'Núñez', size: 'M' },
    { number: '07', name: "O'Neil", size: 'L' },
  ]
  for (const text of [
    "4 Núñez M\n07 O'Neil L",
    "Núñez,4,M\nO'Neil,07,L",
    "M;Núñez;4\nL;O'Neil;07",
    "Núñez\tM\t4\nO'Neil\tL\t07",
    "size,no,name\nM,4,Núñez\nL,07,O'Neil",
    "#4 - Núñez - M\n#07 - O'Neil - L",
  ]) {
    expect(read(text).players).toEqual(rows)
  }
})

test('what stands beside a player is a note, and a line that cannot be read is named', () => {
  const found = read('14 Garcia M - captain\n22 Lopez L (goalie, long sleeve)\n9 Ruiz S\n10 whatever the kid wants to be called')
  expect(found.players.map(({ number, name, note }) => [number, name, note])).toEqual([
    ['14', 'Garcia', 'captain'],
    ['22', 'Lopez', 'goalie, long sleeve'],
    ['9', 'Ruiz', undefined],
  ])
  expect(found.unread).toEqual(['10 whatever the kid wants to be called'])
})

test('sentences, dates and addresses are no roster', () => {
  for (const text of [
    'Need them Dec 17, 5 pm',
    'we play Saturday\ncall me at 555-0142',
    'navy jerseys\nwhite numbers',
    '12 Main St, apartment 4, thanks',
  ]) {
    expect(read(text).players).toEqual([])
  }
})

test('two that look like sizes: the last one is the size', () => {
  expect(read('7 Small M\n8 Grande L').players).toEqual([
    { number: '7', name: 'Small', size: 'M' },
    { number: '8', name: 'Grande', size: 'L' },
  ])
})
