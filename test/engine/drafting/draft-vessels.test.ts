import { describe, expect, it } from 'vitest'
import { jarsOf, largestUsualMl, sized } from '../../../main/engine/drafting/draft-vessels.ts'
import type { DraftVessel } from '../../../shared/schemas/drafts.ts'
import { plainDraft } from './seeded-drafts.ts'

const jar = (capacityMl: number, jarId?: string): DraftVessel => ({
  shape: 'jar',
  capacityMl,
  ...(jarId !== undefined && { jarId }),
})
const draft = (vessels: Partial<ReturnType<typeof plainDraft>['vessels']> = {}) => ({
  ...plainDraft('sour_cherry'),
  vessels: { steep: [], extracts: [], ...vessels },
})

describe('jarsOf', () => {
  it('names the jars that nobody chose, and shares the fruit evenly among them', () => {
    const { steep, shares, extract, married } = jarsOf(draft(), 2)
    expect(steep).toEqual([
      { jarId: 'draft-steep-1', role: 'steep', chosen: undefined },
      { jarId: 'draft-steep-2', role: 'steep', chosen: undefined },
    ])
    expect(shares).toEqual([0.5, 0.5])
    expect([extract(0), extract(2)]).toEqual([
      { jarId: 'draft-extract-1', role: 'extract', chosen: undefined },
      { jarId: 'draft-extract-3', role: 'extract', chosen: undefined },
    ])
    expect(married).toEqual({ jarId: 'draft-married', role: 'married', chosen: undefined })
  })

  it('shares the fruit among chosen jars by what they hold, however many were reckoned with', () => {
    const chosen = [jar(1000, 'small'), jar(3000)]
    const { steep, shares } = jarsOf(draft({ steep: chosen }), 5)
    expect(steep).toEqual([
      { jarId: 'small', role: 'steep', chosen: chosen[0] },
      { jarId: 'draft-steep-2', role: 'steep', chosen: chosen[1] },
    ])
    expect(shares).toEqual([0.25, 0.75])
  })

  it('pours all further extracts into the last jar chosen for them', () => {
    const { extract } = jarsOf(draft({ extracts: [jar(2000, 'a'), jar(2000)] }), 1)
    expect([0, 1, 2, 7].map((index) => extract(index).jarId)).toEqual([
      'a',
      'draft-extract-2',
      'draft-extract-2',
      'draft-extract-2',
    ])
  })
})

describe('sized', () => {
  const unchosen = (peakFillMl: number) =>
    sized({ jarId: 'draft-steep-1', role: 'steep', chosen: undefined }, peakFillMl)

  it('is the smallest usual size that holds it below the safe line', () => {
    expect(unchosen(950)).toEqual({
      jarId: 'draft-steep-1',
      role: 'steep',
      shape: 'jar',
      capacityMl: 1000,
      isUsualSize: true,
      peakFillMl: 950,
    })
    expect(unchosen(951).capacityMl).toBe(1500)
    expect(unchosen(0).capacityMl).toBe(500)
  })

  it('is a wide-mouthed jar up to five litres, then a demijohn, and never larger than there are', () => {
    expect(unchosen(4750)).toMatchObject({ shape: 'jar', capacityMl: 5000 })
    expect(unchosen(4751)).toMatchObject({ shape: 'demijohn', capacityMl: 7500 })
    expect(unchosen(90_000)).toMatchObject({ shape: 'demijohn', capacityMl: largestUsualMl })
    expect(largestUsualMl).toBe(54_000)
  })

  it('is what its maker chose, with the name it goes by in the draft', () => {
    const chosen: DraftVessel = { shape: 'barrel', capacityMl: 3000 } as never
    expect(sized({ jarId: 'draft-married', role: 'married', chosen }, 2500)).toEqual({
      shape: 'barrel',
      capacityMl: 3000,
      jarId: 'draft-married',
      role: 'married',
      isUsualSize: false,
      peakFillMl: 2500,
    })
  })
})
