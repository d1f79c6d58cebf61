/** Coming from a spreadsheet: each row judged first, then all that are wanted in one go. */
import { openBatchWithMoves } from '../../cellar/batch-store.ts'
import { changesOfGroup, groupOfRequest } from '../../cellar/move-store.ts'
import type { Sheet } from '../../../shared/schemas/sheets.ts'
import { stepsOfMoves } from '../ledger-view.ts'
import { mustHold, write } from '../move-writing.ts'
import { ServiceError } from '../service-error.ts'
import { judgedSheet, type JudgedSheet } from '../sheet-rows.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

/** A row that was ready when it was looked at may be in the book by now. */
function mustBeWanted({ rows }: Sheet, { verdicts }: JudgedSheet): void {
  for (const [index, told] of verdicts.entries()) {
    if (told.verdict === 'refused')
      throw new ServiceError(told.code, `row ${index} cannot be`, { ...told.details, index })
    if (told.verdict === 'twin' && !rows[index]?.evenIfThere)
      throw new ServiceError('alreadyThere', `row ${index} is there already`, {
        ...told.of,
        index,
      })
  }
}

export const sheetHandlers: Handlers<ChannelsOf<'sheets'>> = {
  'sheets.look': (session, { sheet }) => ({
    verdicts: [...judgedSheet(session, sheet, 'look').verdicts],
  }),

  'sheets.bringIn': (session, { key, sheet }) => {
    const { book, options, ledger } = session
    const done = groupOfRequest(book, key)
    if (done) return { groupId: done.id, changes: changesOfGroup(book, done.id) }
    const groupId = options.newId()
    const found = judgedSheet(session, sheet, groupId)
    mustBeWanted(sheet, found)
    const { recorded, opened, view } = found
    mustHold(ledger, view, recorded)
    write(session, {
      requestKey: key,
      groupId,
      rows: recorded.map(({ id, move }) => ({ id, version: 1, move })),
      view,
      newSteps: stepsOfMoves(view, new Set(recorded.map(({ id }) => id))),
      alongside: (open) => {
        for (const batch of opened) openBatchWithMoves(open, batch)
      },
    })
    return { groupId, changes: changesOfGroup(book, groupId) }
  },
}
