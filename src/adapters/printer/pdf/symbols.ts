/** Signs of our own drawing in a square of 24 units, y down: black shapes on white, readable without colour. */
const triangle = 'M12 1L23.6 22L0.4 22ZM12 4.6L3.3 20.4L20.7 20.4Z'

const wave = (x: number): string =>
  `M${x} 16.2Q${x - 1.9} 14 ${x} 12.4Q${x + 1.2} 11.2 ${x} 9.6L${x + 1.3} 8.9Q${x + 3.1} 11.2 ${x + 1.5} 13.1Q${x + 0.2} 14.5 ${x + 1.4} 15.8Z`

const ripple = (y: number): string =>
  `M6.6 ${y}Q8.4 ${y - 1.9} 10.2 ${y}Q12 ${y + 1.9} 13.8 ${y}Q15.6 ${y - 1.9} 17.4 ${y}L17.4 ${y + 1.4}Q15.6 ${y - 0.5} 13.8 ${y + 1.4}Q12 ${y + 3.3} 10.2 ${y + 1.4}Q8.4 ${y - 0.5} 6.6 ${y + 1.4}Z`

const inside: Readonly<Record<string, string>> = {
  hot: `M6 19L18 19L18 17.4L6 17.4Z${wave(8)}${wave(11.4)}${wave(14.8)}`,
  crush:
    'M6 19.2L18 19.2L18 17.4L6 17.4ZM9.4 10.4L14.6 10.4L14.6 12.2L9.4 12.2ZM11.2 7.4L12.8 7.4L12.8 10.4L11.2 10.4ZM8.6 13.4L14 13.4Q16.4 13.4 16.4 15Q16.4 16.2 14.8 16.2L8.6 16.2Z',
  air: `${ripple(11.6)}${ripple(15.6)}`,
  floor:
    'M5.4 19.2L18.6 19.2L18.6 17.6L5.4 17.6ZM11 6.6Q12.9 6.6 12.9 8.5Q12.9 10.4 11 10.4Q9.1 10.4 9.1 8.5Q9.1 6.6 11 6.6ZM9 11L13 11L16.4 15.6L15 16.7L12.2 13.4L9 16.4L7.8 15.2L10 13Z',
  child:
    'M12 6.4Q14.1 6.4 14.1 8.5Q14.1 10.6 12 10.6Q9.9 10.6 9.9 8.5Q9.9 6.4 12 6.4ZM7.6 11.4L16.4 11.4L16.4 13L13.8 13L13.8 19L10.2 19L10.2 13L7.6 13Z',
  mark: 'M10.7 7.6L13.3 7.6L12.8 14.8L11.2 14.8ZM10.8 16.2L13.2 16.2L13.2 18.6L10.8 18.6Z',
}

const gloves =
  'M12 0.6A11.4 11.4 0 1 1 11.99 0.6ZM8 19.4L15.6 19.4L15.6 18L8 18ZM8 16.8L8 11.4L5.8 9.4L7 8L9.2 9.6L9.2 5.6L10.9 5.6L10.9 10L11.5 10L11.5 4.4L13.1 4.4L13.1 10L13.7 10L13.7 5.2L15.2 5.2L15.2 10.4L15.7 10.4L15.7 6.8L17 6.8L17 14Q17 16 15.6 16.8Z'

/** The path of a sign; fill by the even-odd rule. */
export const signPath = (symbol: string): string =>
  symbol === 'gloves' ? gloves : `${triangle}${inside[symbol] ?? inside['mark'] ?? ''}`
