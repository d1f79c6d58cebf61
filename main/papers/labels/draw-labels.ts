/** A print job laid out: what the screen shows and the PDF draws. */
import type { DrawnLabels, LabelJob, LabelOp } from '../../../shared/schemas/labels.ts'
import { drawLabel, type DrawnLabel, type LabelToDraw } from './draw-label.ts'
import { outlineOf } from './faces.ts'
import { cutMarks, pagesOf } from './sheet-grid.ts'

export function drawLabels(job: LabelJob): DrawnLabels {
  const { sheet, design, part, shown, hasCode, hasEmblem } = job
  const drawn = job.labels.map(({ text, colour, bottleSizeMl }) =>
    remembered({
      text,
      colour,
      bottleSizeMl,
      design,
      part,
      shown,
      hasCode,
      hasEmblem,
      widthMm: sheet.labelWidthMm,
      heightMm: sheet.labelHeightMm,
    }),
  )
  const drawings = drawn.map(({ ops }) => [...ops])
  return {
    drawings,
    pages: pagesOf(
      sheet,
      job.firstPosition,
      job.labels.map(({ copies }) => copies),
    ),
    cutMarks: job.hasCutMarks ? cutMarks(sheet) : '',
    glyphs: outlinesOf(drawings.flat()),
    problems: drawn.flatMap(({ problems }, labelIndex) =>
      problems.map((problem) => ({ ...problem, labelIndex })),
    ),
  }
}

const kept = new Map<string, DrawnLabel>()
const mostKept = 400

/** While one label is being edited the others stay as they are. */
function remembered(label: LabelToDraw): DrawnLabel {
  const key = JSON.stringify(label)
  const known = kept.get(key)
  if (known) return known
  const drawn = drawLabel(label)
  if (kept.size >= mostKept) kept.clear()
  kept.set(key, drawn)
  return drawn
}

function outlinesOf(ops: readonly LabelOp[]): Record<string, string> {
  const keys = new Set(
    ops.flatMap((op) => (op.op === 'text' ? op.glyphs.map(({ key }) => key) : [])),
  )
  return Object.fromEntries([...keys].sort().map((key) => [key, outlineOf(key)]))
}
