import { type Micrometres, micrometres } from '../units/units.ts'
import type { StoneSetting, StoneStyle } from './layout.ts'
import { edgeRoom, pitchOf, slackOf } from './rows.ts'

/**
 * The room two neighbours' edges need so that each is a piece of its own. Outside rows: twice the outermost row and a pitch
 * between; stones inside the letters need only a pitch between their
 * outermost, and letters that overlap are never apart.
 */
export const roomForRows = (setting: StoneSetting, style: StoneStyle): Micrometres => {
  const pitch = pitchOf(setting)
  const outermost =
    style.style === 'outline' ? edgeRoom(setting) + (style.rows - 1) * (pitch + slackOf(pitch)) : -edgeRoom(setting)
  return micrometres(Math.max(1, Math.ceil(2 * outermost + pitch + 10)))
}
