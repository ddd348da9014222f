declare module 'dxf' {
  /** Reads a drawing and resolves its blocks to plain entities. */
  export class Helper {
    constructor(text: string)
    readonly denormalised: readonly { readonly type: string; readonly x: number; readonly y: number; readonly r: number }[]
  }
}
