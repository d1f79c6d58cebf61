import { describe, expect, it } from 'vitest'
import type { DraftSpec, DraftWarning } from '../../../shared/schemas/drafts.ts'
import { outcomeOf } from '../../../main/engine/index.ts'
import { facts, plainDraft } from './seeded-drafts.ts'

const cherries = plainDraft('sour_cherry')
const warned = (change: Partial<DraftSpec>) => outcomeOf({ ...cherries, ...change }, facts)

const ofCode = <Code extends DraftWarning['code']>(
  { warnings }: { warnings: readonly DraftWarning[] },
  code: Code,
) => warnings.filter((warning): warning is DraftWarning & { code: Code } => warning.code === code)

const inJar = (capacityMl: number) => ({
  vessels: { steep: [{ shape: 'jar', capacityMl } as const], extracts: [] },
})

describe('a jar filled too far', () => {
  it('is told once, by the first move that does it, at its stage', () => {
    // 2 kg of cherries, with the gaps between them, are more than two litres before any sugar.
    const outcome = warned(inJar(2000))
    const over = ofCode(outcome, 'overBrim')
    expect(over).toHaveLength(1)
    expect(outcome.moves[over[0]?.moveIndex ?? -1]?.kind).toBe('charge')
    expect(over[0]).toMatchObject({ jarId: 'draft-steep-1', limitMl: 2000, stage: 0 })
    const later = ofCode(warned(inJar(3000)), 'overBrim')
    expect(later).toMatchObject([{ stage: 1, limitMl: 3000 }])
    expect(ofCode(warned(inJar(2000)), 'overSafeFill')).toEqual([])
  })

  it('is told of its safe line where it stays below the brim', () => {
    const peakMl = outcomeOf(cherries, facts).vessels[0]?.peakFillMl ?? 0
    const capacityMl = peakMl / 0.97
    const [safe, ...others] = ofCode(warned(inJar(capacityMl)), 'overSafeFill')
    expect(others).toEqual([])
    expect(safe).toMatchObject({ jarId: 'draft-steep-1', limitMl: 0.95 * capacityMl })
    expect(safe?.fillMl).toBeGreaterThan(0.95 * capacityMl)
    // As full as it gets is not too full where that is the line itself.
    expect(ofCode(warned(inJar(peakMl / 0.95)), 'overSafeFill')).toEqual([])
  })

  it('forgets the safe line of a jar that a later move fills over its brim', () => {
    // Sugar brings it over the safe line, spirit over the brim.
    const fills = outcomeOf(cherries, facts)
    const layered = fills.stages[0]?.vessels[0]?.peakFillMl ?? 0
    const outcome = warned(inJar(layered / 0.97))
    expect(ofCode(outcome, 'overSafeFill')).toEqual([])
    expect(ofCode(outcome, 'overBrim')).toMatchObject([{ stage: 1 }])
  })

  it('is told of each jar by itself', () => {
    const small = { shape: 'jar', capacityMl: 500 } as const
    const outcome = warned({
      vessels: { steep: [small, { ...small, jarId: 'other' }], extracts: [small] },
    })
    expect(ofCode(outcome, 'overBrim').map(({ jarId }) => jarId)).toEqual([
      'draft-steep-1',
      'other',
      'draft-extract-1',
    ])
  })
})

describe('cautions on paper', () => {
  it('are of a jar at a stage, with the number and its limit', () => {
    const long = ofCode(warned({ layeringDays: 6 }), 'sugarOnlyTooLong')
    expect(long).toMatchObject([{ jarId: 'draft-steep-1', stage: 0 }])
    expect(long[0]?.value).toBeGreaterThan(long[0]?.limit ?? Number.POSITIVE_INFINITY)
    expect(ofCode(warned({ layeringDays: 1 }), 'sugarOnlyTooLong')).toEqual([])
  })

  it('tell what is too weak for its fruit, and what may ferment', () => {
    const weak = warned({ spirits: [{ strengthPctVol: 20, volumeMl: 1500 }], steepWaterMl: 0 })
    expect(ofCode(weak, 'weakForFruit').length).toBeGreaterThan(0)
    expect(ofCode(weak, 'mayFerment').length).toBeGreaterThan(0)
    expect(ofCode(warned({}), 'weakForFruit')).toEqual([])
    expect(ofCode(warned({}), 'mayFerment')).toEqual([])
  })

  it('tell fruit that stands bare', () => {
    const bare = warned({ spirits: [{ strengthPctVol: 96, volumeMl: 200 }], steepWaterMl: 0 })
    expect(ofCode(bare, 'uncovered')).not.toEqual([])
  })

  it('tell stones that steep too long, and whose fruit has none', () => {
    const spec = plainDraft('damson')
    const stones = outcomeOf({ ...spec, steepWeeks: 20 }, facts)
    expect(ofCode(stones, 'stonesTooLong')).toMatchObject([{ jarId: 'draft-steep-1' }])
    expect(ofCode(warned({ steepWeeks: 5 }), 'stonesTooLong')).toEqual([])
    const quince = outcomeOf({ ...plainDraft('quince'), steepWeeks: 20 }, facts)
    expect(ofCode(quince, 'stonesTooLong')).toEqual([])
  })

  it('leave the last crystals of a stage’s sugar out', () => {
    const much = warned({ finishSugarG: 4000, settleDays: 1 })
    expect(ofCode(much, 'sugarUndissolved')).not.toEqual([])
    expect(ofCode(warned({ finishSugarG: 50 }), 'sugarUndissolved')).toEqual([])
  })
})

describe('a move that cannot be', () => {
  it('is told with its place in the list, and why', () => {
    // Dried fruit drinks up the spoonful: nothing is left to draw off or to filter.
    const outcome = warned({
      fruits: [{ fruitId: 'raisin', massG: 500, refuseShare: 0, cut: 'whole' }],
      spirits: [{ strengthPctVol: 96, volumeMl: 1 }],
      steepWaterMl: 0,
      layeringSugarG: 0,
      layeringDays: 0,
      sugarDraws: [],
    })
    const refused = ofCode(outcome, 'refused')
    expect(
      refused.map(({ moveIndex, refusal }) => [outcome.moves[moveIndex]?.kind, refusal]),
    ).toEqual([
      ['drawOff', { code: 'nothingThere', place: 'jar:draft-steep-1' }],
      ['filter', { code: 'nothingThere', place: 'jar:draft-extract-1' }],
      ['filter', { code: 'nothingThere', place: 'jar:draft-extract-1' }],
    ])
    expect(outcome).toMatchObject({ bottles: 0, bottledMl: 0, remainderMl: 0 })
    expect(outcome).not.toHaveProperty('finished')
    expect(outcome).not.toHaveProperty('bottledAt')
  })
})
