import { describe, expect, it } from 'vitest'
import { startDraft } from '../../../../renderer/screens/batch/log/drafts/draft.ts'
import { asPlanned } from '../../../../renderer/screens/batch/log/planned-prefill.ts'
import type { Move } from '../../../../shared/schemas/moves.ts'
import { at, logContext } from './log-context-fixture.ts'

const isJar = (jarId: string) => jarId === 'south'
const planned = (move: Move, jarId = 'south') => {
  const draft = startDraft(move.kind, logContext())
  return { draft, filled: asPlanned(draft, { ...move, ...('jarId' in move && { jarId }) }, isJar) }
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
    const move: Move = { ...inBatch, kind: 'pourWater', volumeMl: 300 }
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

  it('counts bottles, and leaves what is poured off to what stands there', () => {
    const bottle: Move = {
      at,
      kind: 'bottle',
      batchId: 'damson',
      fromJarId: 'on-paper',
      bottleLotId: 'on-paper',
      bottleSizeMl: 350,
      count: 7,
    }
    expect(planned(bottle).filled).toMatchObject({ bottleSizeMl: 350, count: 7 })
    const off: Move = { at, kind: 'drawOff', batchId: 'damson', fromJarId: 'a', toJarId: 'b' }
    const { draft, filled } = planned(off)
    expect(filled).toEqual(draft)
  })

  it('pours, marries and filters into the vessel that was chosen for it', () => {
    const into = { at, batchId: 'damson', toJarId: 'south' } as const
    const off: Move = { ...into, kind: 'drawOff', fromJarId: 'on-paper' }
    expect(planned(off).filled).toEqual({ ...planned(off).draft, toJarId: 'south' })
    const marry: Move = { ...into, kind: 'marry', parts: [{ jarId: 'on-paper' }] }
    expect(planned(marry).filled).toMatchObject({ kind: 'marry', toJarId: 'south' })
    const filter: Move = { ...into, kind: 'filter', fromJarId: 'on-paper', medium: 'cloth' }
    expect(planned(filter).filled).toMatchObject({ toJarId: 'south', medium: 'cloth' })
  })
})
