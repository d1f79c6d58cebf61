import { beforeAll, describe, expect, it } from 'vitest'
import { ledgerDigest } from '../../main/cellar/ledger-digest.ts'
import { currentMoves } from '../../main/cellar/move-store.ts'
import { closeBook, openBook } from '../../main/cellar/open-book.ts'
import { seededNoise } from '../../main/demo/seeded-noise.ts'
import {
  viewOf,
  withAmendment,
  withMoves,
  type LedgerView,
} from '../../main/service/ledger-view.ts'
import type { RecordedMove } from '../../shared/schemas/moves.ts'
import { fillCellar } from '../bench/forty-year-cellar/fill.ts'
import { trial } from './with-service.ts'

/** More than a view folds in one part, so that there is something to go on from. */
const leastMoves = 9000

/** All that a view says, in an order of its own, so that two are the same or not. */
const told = ({ folded: { cellar, steps, refused } }: LedgerView) => ({
  digest: ledgerDigest(cellar),
  ids: [cellar.jars, cellar.lots, cellar.bottles, cellar.opened, cellar.batches].map((states) =>
    [...states.keys()].join(),
  ),
  steps: steps.map(({ recorded }) => `${recorded.id} ${recorded.version}`),
  transfers: steps.reduce((sum, { effect }) => sum + effect.transfers.length, 0),
  refused: refused.map(({ recorded, refusal }) => `${recorded.id} ${refusal.code}`),
})

describe('a view that goes on from an older one', () => {
  let moves: RecordedMove[]

  beforeAll(async () => {
    const t = await trial({ now: () => new Date('2026-11-25T18:00:00Z') })
    await fillCellar(t.service.dispatch, t.options.now(), { years: 4, batchesPerYear: 60 })
    t.service.close()
    const book = openBook(t.options.ownFile)
    moves = currentMoves(book)
    closeBook(book)
  }, 120_000)

  it(
    'is what folding all anew gives, after random amendments, strikes, returns and late entries',
    { timeout: 240_000 },
    () => {
      expect(moves.length).toBeGreaterThan(leastMoves)
      const noise = seededNoise('amendments')
      const upTo = (count: number) => Math.floor(noise.between(0, count))
      const struck: RecordedMove[] = []
      let view = viewOf(moves)
      let goneOn = 0
      for (let change = 0; change < 30; change += 1) {
        const before = view
        // As often among the last hundred as anywhere, as makers do.
        const back = change % 2 === 0 ? 100 : before.moves.length
        const one = before.moves.at(-1 - upTo(back)) as RecordedMove
        const act = upTo(4)
        const returned = struck.pop()
        if (act === 0) struck.push(one)
        if (act === 0) view = withAmendment(before, one.id, null)
        else if (act === 1 && returned) view = withMoves(before, [returned])
        else {
          const at = new Date(Date.parse(one.move.at) - upTo(20) * 86_400_000).toISOString()
          const move = { ...one.move, ...(act === 2 && { at }), note: `amended ${change}` }
          view = withAmendment(before, one.id, { ...one, version: one.version + 1, move })
        }
        expect(told(view)).toEqual(told(viewOf(view.moves)))
        if (view.folded.steps[0] === before.folded.steps[0]) goneOn += 1
      }
      // Else nothing was tried.
      expect(goneOn).toBeGreaterThan(15)
      expect(view.folded.refused.length).toBeGreaterThan(0)
    },
  )

  it('goes on from the very move before the first that differs', { timeout: 240_000 }, () => {
    const whole = viewOf(moves)
    const edge = whole.standings[0]?.stepCount ?? 0
    expect(edge).toBeGreaterThan(0)
    for (const index of [edge - 2, edge - 1, edge, edge + 1]) {
      const one = whole.folded.steps[index]?.recorded as RecordedMove
      const view = withAmendment(whole, one.id, null)
      expect(told(view)).toEqual(told(viewOf(view.moves)))
      expect(view.standings[0] === whole.standings[0]).toBe(index >= edge)
    }
  })
})
