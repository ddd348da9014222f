import type { WordList } from '../word-list.ts'

const polos = ['playera', 'camisa', 'camisas', 'camiseta', 'camisetas'].flatMap((shirt) => [
  `${shirt} tipo polo`,
  `${shirt} polo`,
])

/** What garments are called. */
export const esGarments: WordList = [
  {
    means: { kind: 'garment', id: 'jersey' },
    words: [
      'jersey',
      'jerseys',
      'uniforme',
      'uniformes',
      'camisola',
      'camisolas',
      'casaca',
      'casacas',
      'playera de juego',
      'playeras de juego',
      ...['equipación', 'equipaciones', 'elástica', 'elásticas'],
    ],
  },
  { means: { kind: 'garment', id: 'jersey', unnumbered: 't-shirt' }, words: ['camiseta', 'camisetas'] },
  {
    means: { kind: 'garment', id: 't-shirt', loose: true },
    words: ['blusa', 'blusas', 'playera', 'playeras', 'camisa', 'camisas', 'franela', 'franelas', 'remera', 'remeras'],
  },
  {
    means: { kind: 'garment', id: 'hoodie' },
    words: ['sudadera', 'sudaderas', 'buzo', 'buzos', 'sudadera con capucha', 'sudaderas con capucha'],
  },
  { means: { kind: 'garment', id: 'hoodie', catalogue: 'zip-hoodie' }, words: ['sudadera con cierre', 'sudaderas con cierre'] },
  {
    means: { kind: 'garment', id: 'polo' },
    words: ['polo', 'polos', 'playera polo', 'playeras polo', 'playeras tipo polo', 'camisa polo', ...polos],
  },
  {
    means: { kind: 'garment', id: 'jacket' },
    words: ['chamarra', 'chamarras', 'chaqueta', 'chaquetas', 'rompevientos', 'cortavientos', 'cortaviento'],
  },
  { means: { kind: 'garment', id: 'shorts' }, words: ['shorts', 'pantaloncillos', 'bermudas'] },
  {
    means: { kind: 'garment', id: 'bodysuit', catalogue: 'cheer-bodysuit' },
    words: [
      'bodysuit',
      'bodysuits',
      'bodys',
      'bodies',
      'traje de porrista',
      'trajes de porrista',
      'trajes de porristas',
      'leotardo',
      'leotardos',
    ],
  },
  {
    means: { kind: 'role', id: 'home' },
    words: [
      'local',
      'de local',
      'uniforme de local',
      'jersey de local',
      'jerseys de local',
      'los de local',
      'uniformes de local',
      'camisetas de local',
      ...['la de local', 'las de local', 'para local', 'la de casa', 'las de casa', 'el de casa', 'los de casa', 'para casa'],
      ...['camiseta de casa', 'camisetas de casa', 'uniforme de casa', 'jersey de casa', 'equipación de casa', 'jugamos en casa'],
      ...['primera equipación', 'primer uniforme', 'equipación titular', 'la titular', '1ª equipación', 'la primera equipación'],
    ],
  },
  {
    means: { kind: 'role', id: 'away' },
    words: [
      'visitante',
      'visita',
      'de visitante',
      'de visita',
      'uniforme de visitante',
      'jersey de visitante',
      'los de visitante',
      'jerseys de visitante',
      'uniformes de visitante',
      'camisetas de visitante',
      ...['la de visita', 'las de visita', 'la de visitante', 'la de fuera', 'las de fuera', 'el de fuera', 'los de fuera'],
      ...['para fuera', 'camiseta de fuera', 'camisetas de fuera', 'uniforme de fuera', 'jersey de fuera', 'equipación de fuera'],
      ...[
        'segunda equipación',
        'segundo uniforme',
        'equipación suplente',
        'la suplente',
        '2ª equipación',
        'la segunda equipación',
      ],
    ],
  },
]
