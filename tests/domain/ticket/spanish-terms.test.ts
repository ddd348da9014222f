import { describe, expect, it } from 'vitest'
import { ticketWordsEs } from '../../../templates/ticket/es.ts'
import { workName } from '../../../templates/ticket/work.ts'

const { pick, gates, last, head } = ticketWordsEs

describe('the Spanish paper', () => {
  it.each([
    ['negro', 'sudadera con capucha', 'sudadera con capucha negra'],
    ['rojo', 'camiseta de malla', 'camiseta de malla roja'],
    ['blanco', 'playera de algodón', 'playera de algodón blanca'],
    ['plateado', 'chamarra de nylon', 'chamarra de nylon plateada'],
    ['negro', 'polo', 'polo negro'],
    ['morado', 'traje de porrista', 'traje de porrista morado'],
    ['blanco', 'vinilo con brillo', 'vinilo con brillo blanco'],
    ['azul marino', 'camiseta de malla', 'camiseta de malla azul marino'],
    ['amarillo claro', 'playera de mezcla', 'playera de mezcla amarillo claro'],
    ['vino', 'sudadera con cierre', 'sudadera con cierre vino'],
  ])('lets %s follow the gender of %s', (colour, kind, said) => {
    expect(pick.vinylName(colour, kind)).toBe(said)
  })

  it.each([
    ['count-in', gates['count-in'].title],
    ['test-press', gates['test-press'].title],
    ['bleed-test', gates['bleed-test'].title],
    ['weed', pick.sheetHeads.weeded.replace('ado', 'ar')],
  ])('calls %s in the plan what it calls it at the bench', (work, title) => {
    expect(workName(work, 'es')).toBe(title.toLowerCase())
  })

  it('ends a sentence after p. m. with one point', () => {
    for (const said of [
      last.promised('viernes, 5:00 p. m.'),
      last.freezes('viernes, 5:00 p. m.'),
      head.made('viernes, 5:00 p. m.'),
    ])
      expect(said).toMatch(/p\. m\.$/)
  })
})
