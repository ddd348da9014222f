import type { AnewPhrases } from '../matters/anew.ts'

export const esAnew: AnewPhrases = {
  being: [
    ...['son', 'es', 'sean', 'deben', 'debe', 'ser', 'ahora', 'mejor', 'que', 'serian', 'van', 'a', 'solo'],
    ...['nada', 'mas', 'nomas', 'suben', 'sube', 'bajan', 'baja'],
  ],
  fillers: ['de', 'las', 'los', 'la', 'el', 'talla', 'tallas', 'en'],
  not: ['no', 'vez', 'lugar'],
  notOf: ['de', 'las', 'los', 'son', 'eran', 'como'],
  insteadLead: ['en', 'y'],
  told: ['sean', 'son'],
  toldOf: ['las', 'los'],
  notFirst: ['no'],
  wasOf: ['son', 'eran', 'las', 'los'],
  butNow: ['sino', 'son', 'solo'],
  from: ['de'],
  to: ['a'],
  ends: ['y', 'por', 'ahora'],
  more: ['mas', 'otra', 'otras', 'otro', 'otros'],
  fewer: ['menos'],
  another: ['otra', 'otro'],
  moreOf: ['a'],
  raising: [
    ...['sumele', 'sumale', 'sumenle', 'agregale', 'agreguele', 'aumentele', 'echele', 'echale', 'pongale'],
    ...['subele', 'suban', 'sube', 'subanle', 'aumenta', 'aumentale', 'aumenten', 'agrega', 'agreguen', 'anade'],
  ],
  changing: [...['mejor', 'cambia', 'cambien', 'sean', 'ahora', 'solo', 'realmente', 'siempre', 'perdon', 'quise', 'equivoque']],
  adding: [
    ...['agrega', 'agreguen', 'agregar', 'tambien', 'ademas', 'faltan', 'faltaban', 'faltaron', 'olvidaron', 'olvido', 'anade'],
  ],
  sentence: ['menos', 'mas', 'equivoque', 'quise', 'perdon', 'solo'],
  inAll: ['total', 'en total', 'solo', 'nada mas', 'nomas'],
  besides: ['extra', 'mas', 'ademas', 'aparte', 'tambien', 'agrega'],
}
