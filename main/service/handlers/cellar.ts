/** The book as a whole: which one is open, its settings, its balance and its health. */
import { existsSync } from 'node:fs'
import { readLots } from '../../cellar/lot-store.ts'
import { integrityOf } from '../../cellar/open-book.ts'
import { allBatches } from '../../cellar/batch-store.ts'
import { allJars } from '../../cellar/jar-store.ts'
import { changeSettings, readSettings } from '../../cellar/setting-store.ts'
import { balance } from '../../engine/index.ts'
import type { CellarStatus, Settings } from '../../../shared/channels.ts'
import { cellarCosts } from '../cellar-costs.ts'
import { lotRowsOf } from '../lot-rows.ts'
import { rebuild, type Session } from '../session.ts'
import { viewOfBook } from '../ledger-view.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

function status(session: Session): CellarStatus {
  const { book, options, ledger } = session
  return {
    host: options.host,
    version: options.version,
    file: book.name,
    isDemo: session.isDemo,
    hasDemo: existsSync(options.demoFile),
    isEmpty:
      ledger.moves.length === 0 && allJars(book).length === 0 && allBatches(book).length === 0,
    settings: readSettings(book),
  }
}

/** What goes along into a demo that was never looked at: words, numbers and units as at home. */
const waysOfReading = ({ language, locale, units, temperature, strength, theme }: Settings) => ({
  language,
  locale,
  units,
  temperature,
  strength,
  theme,
})

/** Ids whose derived row is not what the ledger says. */
function differing<Row extends { id: string }>(kept: readonly Row[], told: readonly Row[]) {
  const toldById = new Map(told.map((row) => [row.id, JSON.stringify(row)]))
  const keptById = new Map(kept.map((row) => [row.id, JSON.stringify(row)]))
  return [...new Set([...toldById.keys(), ...keptById.keys()])].filter(
    (id) => toldById.get(id) !== keptById.get(id),
  )
}

export const cellarHandlers: Handlers<ChannelsOf<'cellar'>> = {
  'cellar.status': status,
  'cellar.openDemo': async (session) => {
    const own = session.trouble ? undefined : readSettings(session.book)
    await session.openDemo()
    const isNew = readSettings(session.book).language === undefined
    if (own && isNew) changeSettings(session.book, waysOfReading(own))
    return status(session)
  },
  'cellar.openOwn': async (session) => {
    await session.openOwn()
    return status(session)
  },
  'cellar.removeDemo': async (session) => {
    await session.removeDemo()
    return status(session)
  },
  'cellar.changeSettings': (session, change) => {
    session.book.transaction(() => changeSettings(session.book, change)).immediate()
    return readSettings(session.book)
  },
  'cellar.balance': (session) => balance(session.ledger.folded.cellar),
  'cellar.costs': ({ ledger }) => cellarCosts(ledger),
  'cellar.check': ({ book }) => {
    // Folded afresh from the rows, so that the check sees the book and not what memory holds.
    const { moves, folded } = viewOfBook(book)
    const kept = readLots(book)
    const told = lotRowsOf(folded.cellar)
    return {
      integrity: integrityOf(book),
      moveCount: moves.length,
      lotsDiffering: differing(kept.pantry, told.pantry),
      bottleLotsDiffering: differing(kept.bottles, told.bottles),
      refusedMoves: folded.refused.map(({ recorded }) => recorded.id),
    }
  },
  'cellar.rebuild': (session) => {
    rebuild(session)
    return {}
  },
}
