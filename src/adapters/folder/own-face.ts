import { createHash } from 'node:crypto'
import { Worker } from 'node:worker_threads'
import { type DrawnFace, faceFrom } from '../../domain/face/drawn-face.ts'
import type { Face, FaceKind } from '../../domain/face/face.ts'
import type { FaceProblem } from '../../domain/face/problems.ts'
import { ok, type Result, refuse } from '../../domain/result/result.ts'
import type { FaceTask } from './face-task.ts'

/** A font of a shop is small and opens at once; what needs more than this is no font. */
const LIMITS = { seconds: 20, megabytes: 192, bytes: 8_000_000 }

/** How a font file begins: TrueType, OpenType with cubic outlines, the older Apple tag, WOFF. */
const SIGNATURES = ['\0\x01\0\0', 'OTTO', 'true', 'wOFF']

const unreadable = (face: string, reason: string) =>
  refuse<FaceProblem>({ code: 'face-unreadable', at: '', severity: 'stop', facts: { face, reason } })

/** Maker: the thread posts nothing but such a result. */
const answerOf = (message: unknown): Result<DrawnFace, FaceProblem> => message as Result<DrawnFace, FaceProblem>

const inThread = (task: FaceTask, thread: URL | string): Promise<Result<DrawnFace, FaceProblem>> =>
  new Promise((settle) => {
    const worker = new Worker(thread, {
      workerData: task,
      env: {},
      resourceLimits: { maxOldGenerationSizeMb: LIMITS.megabytes, maxYoungGenerationSizeMb: 32, stackSizeMb: 4 },
    })
    const done = (answer: Result<DrawnFace, FaceProblem>): void => {
      clearTimeout(timer)
      settle(answer)
      void worker.terminate()
    }
    const timer = setTimeout(
      () => done(unreadable(task.id, `it took longer than ${LIMITS.seconds} s to open`)),
      LIMITS.seconds * 1000,
    )
    worker.once('message', (message) => done(answerOf(message)))
    worker.once('error', (error) => done(unreadable(task.id, error instanceof Error ? error.message : String(error))))
    worker.once('exit', () => done(unreadable(task.id, 'it could not be opened')))
  })

/**
 * A shop's own TTF, OTF or WOFF file as a face: opened and checked in a thread with limits on memory and time, handed over as
 * plain data. A file that is not a font, lacks digits or has open shapes is refused.
 */
export const readOwnFace = async (
  own: { readonly id: string; readonly kind: FaceKind; readonly bytes: Uint8Array },
  thread: URL | string | undefined = new URL('./face-thread.js', import.meta.url),
): Promise<Result<Face, FaceProblem>> => {
  const start = Buffer.from(own.bytes.subarray(0, 4)).toString('latin1')
  if (!SIGNATURES.includes(start)) return unreadable(own.id, 'it is not a TTF, OTF or WOFF font file')
  if (own.bytes.length > LIMITS.bytes) return unreadable(own.id, `it is larger than ${LIMITS.bytes / 1_000_000} MB`)
  const sha256 = createHash('sha256').update(own.bytes).digest('hex')
  const drawn = await inThread({ ...own, sha256 }, thread)
  return drawn.ok ? ok(faceFrom(drawn.value)) : drawn
}
