import type { SlipWords, TemplateWords } from '../../../src/domain/ticket/slip-words.ts'
import { plural } from '../../plural.ts'

export const slip: SlipWords = {
  price: 'Precio',
  heads: { what: 'Por', quantity: 'Cantidad', unit: 'Cada uno', amount: 'Importe' },
  total: 'Total',
  money: {
    none: 'Aún no se ha pagado nada.',
    deposit: 'Hay un anticipo pagado.',
    paid: 'Pagado.',
    'order-number': 'Con número de pedido.',
    'on-account': 'A cuenta.',
  },
  paid: (amount, open) => `Pagado: ${amount}. Queda: ${open}.`,
  reference: (reference) => `Referencia: ${reference}.`,
  questions: (shop, ask) => `${shop}. Preguntas: ${ask}.`,
  care: 'Cómo lavarlo y cuidarlo',
  colours: (colours) => `Colores: ${colours}. Los colores de la pantalla no son los verdaderos.`,
  wash: [
    'Lavar al revés, en frío o tibio.',
    'Sin suavizante, sin lejía, sin limpieza en seco.',
    'Colgar o secar a baja temperatura. Una secadora industrial mata el pegamento.',
    'Nunca pasar la plancha sobre lo estampado.',
    'No doblar por los números mientras estén tibios.',
  ],
  stones: [
    'Piedras: lavar en bolsa, no frotar, guardar las sobrantes para arreglos.',
    'Las piedras sueltas son piezas pequeñas: lejos de los niños pequeños.',
  ],
  complaint: 'Si algo se levanta o se cae: díganos cuándo se lavó y cómo se secó, y mande una foto.',
}

export const template: TemplateWords = {
  all: (job) => `Plantillas de piedras de ${job}, tamaño real`,
  title: (text, height, stone) => `Plantilla de piedras ${text} · ${height} · ${stone}`,
  fullSize: 'Imprimir al 100 %, sin ajustar a la página: medir la regla',
  readsRight: 'SE LEE AL DERECHO',
  top: 'ARRIBA',
  join: 'Poner la hoja siguiente sobre esta hasta que coincidan las cruces; las rayas marcan centro y línea base.',
  sheet: (sheet, of) => `hoja ${sheet} de ${of}`,
  ruler: (length) => `Regla de ${length}`,
  holes: (count) => `${plural(count, 'agujero, dibujado', 'agujeros, dibujados')} a tamaño real`,
}
