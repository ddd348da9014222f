// Loaded before a program (node --import): its clock is off by as many milliseconds as the file of SHIFTED_CLOCK says, which is
// looked at again all the time, so that the clock jumps while the program runs.
import { readFileSync } from 'node:fs'

const file = process.env.SHIFTED_CLOCK
const state = { off: 0 }
const look = () => {
  try {
    state.off = Number(readFileSync(file, 'utf8')) || 0
  } catch {
    state.off = 0
  }
}
if (file !== undefined) {
  look()
  setInterval(look, 50).unref()
  const RealDate = Date
  const realNow = Date.now.bind(Date)
  globalThis.Date = class extends RealDate {
    constructor(...parts) {
      if (parts.length === 0) super(realNow() + state.off)
      else super(...parts)
    }
    static now() {
      return realNow() + state.off
    }
  }
}
