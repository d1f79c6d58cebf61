import { describe, expect, it } from 'vitest'
import type { Proposal } from '../../../../shared/schemas/tasks.ts'
import { startDraft } from '../../../../renderer/parts/moves/drafts/draft.ts'
import { asProposed } from '../../../../renderer/screens/batch/log/task-prefill.ts'
import {
  demijohn,
  extract,
  logContext,
  north,
  south,
} from '../../parts/moves/log-context-fixture.ts'

type Logged = Exclude<Proposal['kind'], 'pourGlass'>

function proposed(kind: Logged, proposal: Partial<Proposal>, change = {}) {
  const context = logContext(change)
  const draft = startDraft(kind, context)
  return { draft, filled: asProposed(draft, { kind, jarIds: [], ...proposal }, context) }
}

describe('asProposed', () => {
  it('takes the jar and the amount that the ledger proposes', () => {
    const { draft, filled } = proposed('pourSpirit', { jarIds: ['south'], amount: 640 })
    expect(filled).toEqual({ ...draft, jarIds: ['south'], amount: 640 })
    const sugar = proposed('coverWithSugar', { jarIds: ['north'], amount: 250 })
    expect(sugar.filled).toMatchObject({ jarIds: ['north'], amount: 250 })
  })

  it('leaves the jars as they usually are where none is proposed', () => {
    const { draft, filled } = proposed('stir', {})
    expect(filled).toEqual(draft)
  })

  it('draws off the one jar that is due, into a vessel that is another', () => {
    const { filled } = proposed('drawOff', { jarIds: ['south'] })
    expect(filled).toMatchObject({ fromJarIds: ['south'], volumeMl: undefined })
    expect('toJarId' in filled && filled.toJarId).not.toBe('south')
  })

  it('asks for the vessel where the usual one is poured from', () => {
    const context = logContext({ jars: [north, south, extract, demijohn] })
    const draft = startDraft('drawOff', context)
    if (draft.kind !== 'drawOff') throw new Error('a form for drawing off')
    const into = { ...draft, toJarId: 'south' }
    const filled = asProposed(into, { kind: 'drawOff', jarIds: ['south'] }, context)
    expect(filled).toMatchObject({ fromJarIds: ['south'], toJarId: undefined })
  })

  it('filters the jar that is due through the proposed medium', () => {
    const jars = { jars: [north, extract, demijohn] }
    const { filled } = proposed('filter', { jarIds: ['extract'], medium: 'racking' }, jars)
    expect(filled).toMatchObject({ fromJarId: 'extract', medium: 'racking', toJarId: 'demijohn' })
  })

  it('bottles as many as the jar fills, and no more than planned', () => {
    const jars = { jars: [north, extract, demijohn] }
    const bottle = (proposal: Partial<Proposal>) =>
      proposed('bottle', { jarIds: ['extract'], ...proposal }, jars).filled
    expect(bottle({ bottleSizeMl: 200 })).toMatchObject({ fromJarId: 'extract', count: 4 })
    expect(bottle({ bottleSizeMl: 200, count: 3 })).toMatchObject({ count: 3 })
    expect(bottle({ bottleSizeMl: 200, count: 30 })).toMatchObject({ count: 4 })
  })

  it('throws out the jar whose fruit is spent, whole', () => {
    const { filled } = proposed('discard', { jarIds: ['south'] })
    expect(filled).toMatchObject({ subject: 'jar', jarId: 'south', part: 'all' })
  })

  it('tastes the lot that came ready', () => {
    const { filled } = proposed('taste', { bottleLotId: 'plum-lot' })
    expect(filled).toMatchObject({ bottleLotId: 'plum-lot', jarId: undefined })
  })
})
