/** The purchase list: read, ticked off, printed, and handed to a spreadsheet. */
import { groupOfRequest } from '../../cellar/move-store.ts'
import { readSettings } from '../../cellar/setting-store.ts'
import { purchaseCsv } from '../../papers/purchase-csv.ts'
import { purchasePaper } from '../../papers/purchase-paper.ts'
import { purchaseList } from '../purchase-list.ts'
import { notFound } from '../service-error.ts'
import type { Session } from '../session.ts'
import { tick, untick } from '../tick-purchase.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

const toTell = (session: Session) => ({
  list: purchaseList(session),
  settings: readSettings(session.book),
  fruitOf: session.fruits.fruitOf,
})

const fileName = ({ options }: Session, ending: string): string =>
  `purchases ${options.now().toISOString().slice(0, 10)}.${ending}`

export const purchaseHandlers: Handlers<ChannelsOf<'purchases'>> = {
  'purchases.list': (session) => purchaseList(session),
  'purchases.tick': (session, asked) => {
    const list = purchaseList(session)
    const done = groupOfRequest(session.book, asked.key)
    if (done) return { list, groupId: done.id }
    const line = list.lines.find(({ key }) => key === asked.lineKey)
    if (!line) throw notFound('purchase', asked.lineKey)
    // Ticked twice is bought once.
    if (asked.isTicked === (line.ticked !== undefined)) return { list, groupId: null }
    const groupId = (asked.isTicked ? tick : untick)(session, line, asked)
    return { list: purchaseList(session), groupId }
  },
  'purchases.paper': async (session, { by, size }) => {
    const pdf = await purchasePaper({ ...toTell(session), by, size })
    return { fileName: fileName(session, 'pdf'), pdfBase64: Buffer.from(pdf).toString('base64') }
  },
  'purchases.csv': (session, { by }) => ({
    fileName: fileName(session, 'csv'),
    csv: purchaseCsv({ ...toTell(session), by }),
  }),
}
