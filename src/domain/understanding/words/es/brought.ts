import type { BroughtPhrases } from '../matters/brought.ts'

/** How Spanish says that garments are the customer's and come in. */
export const esBrought: BroughtPhrases = {
  brings: [
    '(?:les?|os|te) (?:llevo|llevamos|llevare|llevaremos|llevaria|llevariamos|traigo|traemos|traere|dejo|dejamos)',
    '(?:voy|vamos|puedo|podemos) a? ?(?:llevar|traer|dejar)(?:les?|los|las|selos|selas)?',
    '(?:traigo|traemos|traere|traeremos|llevare|llevaremos)',
  ],
  bringsThem: [
    '(?<!(?:me|nos) )l[ao]s (?:(?:puedo|podemos|podria|podriamos|voy a|vamos a) (?:dejar|llevar|traer)|llevo|llevamos|dejo|dejamos|traigo|traemos)',
  ],
  has: ['(?:ya )?(?:tengo|tenemos|compre|compramos)'],
  sure: ['ya', 'en casa', 'en el club', 'del ano pasado', 'de la temporada pasada', 'guardad[ao]s', 'que (?:nos )?sobraron'],
  them: ['l[ao]s'],
  besides: ['lista', 'tallas?', 'nombres?', 'numeros?', 'logo', 'archivo', 'anticipo', 'dinero', 'pago', 'pedido'],
  next: ['y', 'pero', 'para', 'necesit[oa]', 'necesitamos', 'luego', 'asi'],
  that: ['que', 'las cuales', 'los cuales'],
  before: ['el', 'este', 'la', 'proximo'],
  elsewhere: [
    '(?:se )?l[ao]s (?:llevo|llevamos|vamos a llevar|voy a llevar)(?= al? (?!(?:la |el )?(?:tienda|taller|local)|usted))',
  ],
  own: [],
}
