import { describe, expect, it } from 'vitest'
import { startAdding } from '../../../../renderer/parts/moves/drafts/adding.ts'
import { startBottling } from '../../../../renderer/parts/moves/drafts/bottling.ts'
import { startDraft } from '../../../../renderer/parts/moves/drafts/draft.ts'
import { startMarrying } from '../../../../renderer/parts/moves/drafts/marrying.ts'
import { remedyOf } from '../../../../renderer/parts/moves/nearest.ts'
import { firstRefused } from '../../../../renderer/parts/moves/refused-moves.ts'
import type { Refusal } from '../../../../shared/schemas/errors.ts'
import { extract, logContext } from './log-context-fixture.ts'

const notEnough = (place: string, nearest: number, unit: Refusal['unit'] = 'ml'): Refusal => ({
  code: 'notEnough',
  place,
  unit,
  asked: 9999,
  available: nearest,
  nearest,
})

describe('remedyOf', () => {
  it('shares 1.5 L of spirit between two jars that asked for 1 L each', () => {
    const draft = { ...startAdding('pourSpirit', logContext()), amount: 1000 }
    const remedy = remedyOf(draft, { refusal: notEnough('lot:spirit', 500), before: 1 })
    expect(remedy?.amount).toEqual({ value: 750, unit: 'ml' })
    expect(remedy?.draft).toMatchObject({ amount: 750 })
  })

  it('never offers more than there is: 333.33 becomes 333.3', () => {
    const draft = { ...startAdding('sugar', logContext()), amount: 500, jarIds: ['north'] }
    const remedy = remedyOf(draft, { refusal: notEnough('lot:sugar', 333.39, 'g'), before: 0 })
    expect(remedy?.amount?.value).toBe(333.3)
  })

  it('fills fewer bottles', () => {
    const draft = { ...startBottling(logContext()), count: 9 }
    const refusal = notEnough('jar:north', 3, 'bottles')
    expect(remedyOf(draft, { refusal, before: 0 })?.draft).toMatchObject({ count: 3 })
  })

  it('takes less of the one part that has too little', () => {
    const draft = startMarrying(logContext({ jars: [extract] }))
    const remedy = remedyOf(draft, { refusal: notEnough('jar:extract', 880), before: 0 })
    expect(remedy?.draft).toMatchObject({ volumeMlByJar: { extract: 880 } })
  })

  it('moves the date to when the matter was there', () => {
    const from = '2026-09-02T08:00:00.000Z'
    const refusal: Refusal = { code: 'beforeItExisted', place: 'lot:spirit', from }
    const remedy = remedyOf(startDraft('pourSpirit', logContext()), { refusal, before: 0 })
    expect(remedy?.at).toBe(from)
    expect(remedy?.draft.at).toBe(from)
  })

  it('offers nothing where no number mends it', () => {
    const draft = startAdding('pourSpirit', logContext())
    expect(
      remedyOf(draft, { refusal: { code: 'wrongGoods', place: 'lot:sugar' }, before: 0 }),
    ).toBeUndefined()
    expect(remedyOf(draft, { refusal: notEnough('lot:spirit', 0), before: 0 })).toBeUndefined()
  })
})

describe('firstRefused', () => {
  const pour = (jarId: string) =>
    ({ kind: 'pourSpirit', at: '', batchId: 'b', jarId, lotId: 'spirit', volumeMl: 1000 }) as const

  it('counts the moves before it that take from the same place', () => {
    const moves = [pour('north'), pour('south'), pour('west')]
    const refusals = [
      { index: 2, refusal: notEnough('lot:spirit', 0) },
      { index: 1, refusal: notEnough('lot:spirit', 500) },
    ]
    expect(firstRefused(refusals, moves)).toEqual({ refusal: refusals[1]?.refusal, before: 1 })
  })
})
