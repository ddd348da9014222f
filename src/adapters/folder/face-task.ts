import type { FaceKind } from '../../domain/face/face.ts'

/** What the thread that opens a font file is given. */
export type FaceTask = { readonly id: string; readonly kind: FaceKind; readonly sha256: string; readonly bytes: Uint8Array }
