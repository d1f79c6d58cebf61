/** Labels: what the book would put on them, how they are laid out, and the papers to print. */
import { keptStyle, ownSheets, putSheet, putStyle, removeSheet } from '../../cellar/label-store.ts'
import { batchById } from '../../cellar/batch-store.ts'
import { readSettings } from '../../cellar/setting-store.ts'
import type { DrawnLabels, LabelJob, LabelStyle } from '../../../shared/schemas/labels.ts'
import { drawLabels } from '../../papers/labels/draw-labels.ts'
import { labelsPaper } from '../../papers/labels/labels-paper.ts'
import { testPaper } from '../../papers/labels/test-paper.ts'
import { usualSheetId, usualSheets } from '../../papers/labels/usual-sheets.ts'
import { paperWords } from '../../papers/words/paper-words.ts'
import { usualText } from '../../papers/labels/usual-text.ts'
import { steepedTolerancePctVol, strengthProblems } from '../label-checks.ts'
import { bottleStateOf, labelFacts } from '../label-facts.ts'
import { notFound, ServiceError } from '../service-error.ts'
import type { Session } from '../session.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

function drawn(session: Session, job: LabelJob): DrawnLabels {
  for (const { bottleLotId } of job.labels) bottleStateOf(session, bottleLotId)
  const labels = drawLabels(job)
  return { ...labels, problems: [...strengthProblems(session, job), ...labels.problems] }
}

const usualStyle = ({ book }: Session): LabelStyle => ({
  design: 'parlour',
  part: 'front',
  shown: ['name', 'kind', 'vintage', 'strength', 'volume', 'bottled', 'ingredients', 'allergens'],
  hasCode: true,
  hasEmblem: true,
  hasCutMarks: false,
  strengthPrefix: 'none',
  sheetId: usualSheetId(readSettings(book).units === 'us'),
})

const colourless = '#5a5a5a'

export const labelHandlers: Handlers<ChannelsOf<'labels'>> = {
  'labels.usual': (session, { bottleLotIds, strengthPrefix }) => {
    const style = { settings: readSettings(session.book), strengthPrefix }
    return bottleLotIds.map((bottleLotId) => {
      const lot = bottleStateOf(session, bottleLotId)
      const facts = labelFacts(session, bottleLotId)
      return {
        bottleLotId,
        text: usualText(facts, style),
        colour: batchById(session.book, lot.batchId)?.colour ?? colourless,
        bottleSizeMl: lot.bottleSizeMl,
        count: lot.count,
        ...(facts.liquid && { strengthPctVol: facts.liquid.strengthPctVol }),
        tolerancePctVol: steepedTolerancePctVol,
      }
    })
  },
  'labels.draw': drawn,
  'labels.paper': async (session, job) => {
    const [first] = job.labels
    const title =
      job.labels.length === 1 && first
        ? first.text.name
        : paperWords(readSettings(session.book)).label.file
    const pdf = await labelsPaper({
      drawn: drawn(session, job),
      sheet: job.sheet,
      title,
      locale: readSettings(session.book).locale,
    })
    return { fileName: fileNameOf(title, session.options.now()), pdfBase64: base64(pdf) }
  },
  'labels.testPaper': async ({ book, options }, { sheet }) => {
    const title = paperWords(readSettings(book)).label.test
    const pdf = await testPaper(sheet, title)
    return { fileName: fileNameOf(title, options.now()), pdfBase64: base64(pdf) }
  },

  'labels.sheets': ({ book }) => ({ usual: [...usualSheets], own: ownSheets(book) }),
  'labels.keepSheet': ({ book }, sheet) => {
    if (usualSheets.some(({ id }) => id === sheet.id))
      throw new ServiceError('alreadyThere', `sheet ${sheet.id} is a usual one`, { id: sheet.id })
    book.transaction(() => putSheet(book, sheet)).immediate()
    return sheet
  },
  'labels.removeSheet': ({ book }, { sheetId }) => {
    if (!book.transaction(() => removeSheet(book, sheetId)).immediate())
      throw notFound('label sheet', sheetId)
    return {}
  },
  'labels.style': (session) => keptStyle(session.book) ?? usualStyle(session),
  'labels.keepStyle': ({ book }, style) => {
    book.transaction(() => putStyle(book, style)).immediate()
    return style
  },
}

const base64 = (bytes: Uint8Array): string => Buffer.from(bytes).toString('base64')

/** Letters of any language stay; what a file system may refuse does not. */
const fileNameOf = (title: string, now: Date): string => {
  const letters = [
    ...title
      .normalize('NFC')
      .replace(/[^\p{L}\p{N}-]+/gu, ' ')
      .trim(),
  ]
  const plain = letters.slice(0, 60).join('').trim()
  return `${plain || 'Labels'} ${now.toISOString().slice(0, 10)}.pdf`
}
