import { describe, expect, it } from 'vitest'
import { startDraft } from '../../../../renderer/parts/moves/drafts/draft.ts'
import type { LoggedKind } from '../../../../renderer/parts/moves/kinds.ts'
import { asPlanned } from '../../../../renderer/screens/batch/log/planned-prefill.ts'
import type { MoveOf } from '../../../../shared/schemas/moves.ts'
import type { Goods } from '../../../../shared/schemas/goods.ts'
import { at, demijohn, extract, logContext } from '../../parts/moves/log-context-fixture.ts'

const planned = (move: MoveOf<LoggedKind>, jarId = 'south', goods?: Goods) => {
  const context = logContext()
  const draft = startDraft(move.kind, context)
  return {
    draft,
    filled: asPlanned(draft, { ...move, ...('jarId' in move && { jarId }) }, goods, context),
  }
}
const inBatch = { at, batchId: 'damson', jarId: 'south' } as const

describe('asPlanned', () => {
  it('takes amount and jar from the plan, and the lot from what is at hand', () => {
    const { draft, filled } = planned({
      ...inBatch,
      kind: 'pourSpirit',
      lotId: 'on-paper',
      volumeMl: 840,
    })
    expect(filled).toEqual({ ...draft, jarIds: ['south'], amount: 840 })
  })

  it('does not ask for a vessel that was only drawn', () => {
    const move: MoveOf<LoggedKind> = { ...inBatch, kind: 'pourWater', volumeMl: 300 }
    const { draft, filled } = planned(move, 'draft-jar')
    expect(filled).toEqual({ ...draft, amount: 300 })
  })

  it('brings cut and refuse of the fruit', () => {
    const { filled } = planned({
      ...inBatch,
      kind: 'charge',
      lotId: 'on-paper',
      massG: 2000,
      refuseG: 150,
      cut: 'pricked',
    })
    expect(filled).toMatchObject({ amount: 2000, refuseG: 150, cut: 'pricked' })
  })

  it('takes from a lot of the planned goods, and buys them where there is none', () => {
    const spirit: MoveOf<LoggedKind> = {
      ...inBatch,
      kind: 'pourSpirit',
      lotId: 'on-paper',
      volumeMl: 840,
    }
    const at95: Goods = { kind: 'spirit', strengthPctVol: 95 }
    expect(planned(spirit, 'south', at95).filled).toMatchObject({
      lotId: 'spirit',
      isJustBought: false,
    })
    expect(planned(spirit, 'south', { ...at95, strengthPctVol: 40 }).filled).toMatchObject({
      isJustBought: true,
      purchase: { strengthPctVol: 40 },
    })
    const fruit: MoveOf<LoggedKind> = {
      ...inBatch,
      kind: 'charge',
      lotId: 'a',
      massG: 900,
      cut: 'cut',
    }
    expect(planned(fruit, 'south', { kind: 'fruit', fruitId: 'quince' }).filled).toMatchObject({
      isJustBought: true,
      amount: 900,
      purchase: { fruitId: 'quince' },
    })
  })

  it('does not fill in a vessel that another batch stands in', () => {
    const water: MoveOf<LoggedKind> = { ...inBatch, kind: 'pourWater', volumeMl: 300 }
    const draft = startDraft('pourWater', logContext())
    const foreign = { ...demijohn, contents: { batchId: 'sloe' } as never }
    const filled = asPlanned(
      draft,
      { ...water, jarId: 'demijohn' },
      undefined,
      logContext({ jars: [foreign] }),
    )
    expect(filled).toEqual({ ...draft, amount: 300 })
  })

  it('counts bottles by what stands there, and leaves what is poured off to it', () => {
    const bottle: MoveOf<LoggedKind> = {
      at,
      kind: 'bottle',
      batchId: 'damson',
      fromJarId: 'on-paper',
      bottleLotId: 'on-paper',
      bottleSizeMl: 350,
      count: 7,
    }
    const standing = logContext({ jars: [extract] })
    const filled = asPlanned(startDraft('bottle', standing), bottle, undefined, standing)
    const there = extract.contents?.liquid?.volumeMl ?? 0
    expect(filled).toMatchObject({ bottleSizeMl: 350, count: Math.floor(there / 350) })
    const off: MoveOf<LoggedKind> = {
      at,
      kind: 'drawOff',
      batchId: 'damson',
      fromJarId: 'a',
      toJarId: 'b',
    }
    const poured = planned(off)
    expect(poured.filled).toEqual(poured.draft)
  })

  it('pours, marries and filters into the vessel that was chosen for it', () => {
    const into = { at, batchId: 'damson', toJarId: 'south' } as const
    const off: MoveOf<LoggedKind> = { ...into, kind: 'drawOff', fromJarId: 'on-paper' }
    expect(planned(off).filled).toEqual({ ...planned(off).draft, toJarId: 'south' })
    const marry: MoveOf<LoggedKind> = { ...into, kind: 'marry', parts: [{ jarId: 'on-paper' }] }
    expect(planned(marry).filled).toMatchObject({ kind: 'marry', toJarId: 'south' })
    const filter: MoveOf<LoggedKind> = {
      ...into,
      kind: 'filter',
      fromJarId: 'on-paper',
      medium: 'cloth',
    }
    expect(planned(filter).filled).toMatchObject({ toJarId: 'south', medium: 'cloth' })
  })
})
