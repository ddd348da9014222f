import { parentPort, workerData } from 'node:worker_threads'
import { checkFace } from '../../domain/face/check-face.ts'
import { drawFace } from '../../domain/face/drawn-face.ts'
import { openFace } from '../../domain/face/open-face.ts'
import type { FaceTask } from './face-task.ts'

/** Maker: the thread is only ever started by `readOwnFace` with such a task. */
const taskOf = (data: unknown): FaceTask => data as FaceTask

const { bytes, ...listing } = taskOf(workerData)
const opened = openFace({ ...listing, files: [{ file: listing.id, sha256: listing.sha256 }] }, [bytes])
const checked = opened.ok ? checkFace(opened.value) : opened
parentPort?.postMessage(checked.ok ? { ok: true, value: drawFace(checked.value) } : checked)
