import { strokeOf } from '../domain/layout/stroke.ts'
import type { Extent } from '../domain/press/job.ts'
import type { LaidApplication } from './lay-out.ts'

/** How large each decoration comes out on each row: the body's own box and stroke, stones and borders excluded. */
export const extentsOf = (applications: readonly LaidApplication[]): readonly Extent[] =>
  applications.flatMap(({ application, drawing }) =>
    drawing === null
      ? []
      : [
          {
            decoration: application.decoration.id,
            line: application.line,
            text: application.text,
            widthMicrometres: Math.round(drawing.shape.box.right - drawing.shape.box.left),
            heightMicrometres: drawing.shape.height,
            aboveMicrometres: Math.round(drawing.shape.box.top - drawing.shape.fit.height),
            strokeMicrometres: strokeOf(drawing.shape),
            freeWidthMicrometres: application.freeWidth,
          },
        ],
  )
