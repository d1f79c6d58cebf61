import { describe, expect, it } from 'vitest'
import { matterKinds } from '../../../shared/matter.ts'
import { DraftOutcome, type DraftSpec } from '../../../shared/schemas/drafts.ts'
import { balance, fold, fruitLibrary, outcomeOf, scaledDraft } from '../../../main/engine/index.ts'
import { facts, plainDraft } from './seeded-drafts.ts'

const cherries = plainDraft('sour_cherry')

const recorded = (spec: DraftSpec) =>
  outcomeOf(spec, facts).moves.map((move, index) => ({
    id: `m${index}`,
    seq: index + 1,
    groupId: 'g',
    recordedAt: move.at,
    version: 1,
    move,
  }))

describe('outcomeOf', () => {
  it('tells the stages in order, with what flowed into each', () => {
    const spec = { ...cherries, isPressed: true, finishSugarG: 200, finishWaterMl: 100 }
    const { stages, bottles, warnings } = outcomeOf(spec, facts)
    expect(stages.map(({ key, ordinal }) => `${key} ${ordinal}`)).toEqual([
      'layered 1',
      'steeping 1',
      'sugarDraw 1',
      'pressed 1',
      'married 1',
      'filtered 1',
      'bottled 1',
    ])
    expect(stages[0]?.inflows).toEqual([
      { what: 'fruit', massG: 2000, fruitId: 'sour_cherry' },
      { what: 'sugar', massG: 500 },
    ])
    expect(stages[4]?.inflows.map(({ what }) => what)).toEqual([
      'extract',
      'extract',
      'extract',
      'water',
      'sugar',
    ])
    expect(stages.at(-1)?.bottles).toBe(bottles)
    expect(warnings.filter(({ code }) => code === 'refused')).toEqual([])
  })

  it('is the ledger: its moves folded alone leave nothing missing and the same liqueur', () => {
    const folded = fold(recorded(cherries), facts)
    expect(folded.refused).toEqual([])
    const { missing } = balance(folded.cellar)
    for (const kind of matterKinds) expect(Math.abs(missing[kind])).toBeLessThan(1e-6)
    const bottles = [...folded.cellar.bottles.values()][0]
    expect(bottles?.filledCount).toBe(outcomeOf(cherries, facts).bottles)
  })

  it('answers for every fruit of the library by its contract', () => {
    for (const { id } of fruitLibrary.values()) {
      const outcome = outcomeOf(plainDraft(id, 500), facts)
      expect(DraftOutcome.safeParse(outcome).error).toBeUndefined()
    }
  })

  it('marks the jar that overflows, at the move that overflows it', () => {
    const small = { shape: 'jar', capacityMl: 3000 } as const
    const spec = { ...cherries, vessels: { steep: [small], extracts: [] } }
    const { warnings, moves } = outcomeOf(spec, facts)
    const [over] = warnings.filter((warning) => warning.code === 'overBrim')
    if (over?.code !== 'overBrim') throw new Error('no jar overflows')
    expect(moves[over.moveIndex]?.kind).toBe('pourSpirit')
    expect(over.limitMl).toBe(3000)
    expect(over.fillMl).toBeGreaterThan(3000)
  })

  it('says so when a vessel is filled above its safe line only', () => {
    const peakMl = outcomeOf(cherries, facts).vessels[0]?.peakFillMl ?? 0
    const tight = { shape: 'jar', capacityMl: peakMl / 0.97 } as const
    const spec = { ...cherries, vessels: { steep: [tight], extracts: [] } }
    const codes = outcomeOf(spec, facts).warnings.map(({ code }) => code)
    expect(codes).toContain('overSafeFill')
    expect(codes).not.toContain('overBrim')
  })

  it('shares more fruit than a demijohn holds among several', () => {
    const { vessels, warnings } = outcomeOf(plainDraft('sour_cherry', 60_000), facts)
    const steeping = vessels.filter(({ role }) => role === 'steep')
    expect(steeping.length).toBeGreaterThan(1)
    const steepIds = new Set(steeping.map(({ jarId }) => jarId))
    const overfull = warnings.filter((w) => w.code === 'overBrim' && steepIds.has(w.jarId))
    expect(overfull).toEqual([])
  })

  it('warns when a draft leaves the windows of the library', () => {
    const { warnings } = outcomeOf({ ...cherries, steepWeeks: 40, finishSugarG: 900 }, facts)
    const left = warnings.flatMap((w) => (w.code === 'outsideWindow' ? w.window : []))
    expect(left).toContain('steepingWeeks')
    expect(left).toContain('finishedSugarGPerL')
  })

  it('adds up the prices it is given, and says when some are missing', () => {
    const fruits = cherries.fruits.map((fruit) => ({ ...fruit, priceMinorPerKg: 400 }))
    const some = outcomeOf({ ...cherries, fruits }, facts)
    expect(some).toMatchObject({ costMinor: 800, isWholeCost: false })
    const whole = {
      ...cherries,
      fruits,
      spirits: cherries.spirits.map((spirit) => ({ ...spirit, priceMinorPerL: 1000 })),
      sweetenerPriceMinorPerKg: 100,
      bottlePriceMinor: 50,
    }
    const outcome = outcomeOf(whole, facts)
    expect(outcome.isWholeCost).toBe(true)
    expect(outcome.costMinor).toBe(800 + 1128 + 100 + outcome.bottles * 50)
  })

  it('pours all extracts into one jar when only one is chosen', () => {
    const jar = { jarId: 'big', shape: 'demijohn', capacityMl: 10_000 } as const
    const vessels = { steep: [], extracts: [jar] }
    const { moves, stages } = outcomeOf({ ...cherries, finishSugarG: 50, vessels }, facts)
    expect(moves.some(({ kind }) => kind === 'marry')).toBe(false)
    expect(stages.find(({ key }) => key === 'married')?.vessels[0]?.jarId).toBe('big')
  })
})

describe('scaledDraft', () => {
  const sameLiqueur = (spec: DraftSpec) => {
    const before = outcomeOf(cherries, facts)
    const { finished } = outcomeOf(spec, facts)
    expect(finished?.strengthPctVol).toBeCloseTo(before.finished?.strengthPctVol ?? 0, 6)
    expect(finished?.sugarGPerL).toBeCloseTo(before.finished?.sugarGPerL ?? 0, 6)
  }

  it('makes the same liqueur of other fruit', () => {
    const scaled = scaledDraft(cherries, { by: 'fruit', massG: 5000 }, facts)
    expect(scaled.fruits[0]?.massG).toBeCloseTo(5000, 6)
    expect(scaled.spirits[0]?.volumeMl).toBeCloseTo(2.5 * 1128, 6)
    sameLiqueur(scaled)
  })

  it('fills exactly so many bottles', () => {
    const scaled = scaledDraft(cherries, { by: 'bottles', count: 12 }, facts)
    const after = outcomeOf(scaled, facts)
    expect([after.bottles, Math.round(after.remainderMl)]).toEqual([12, 0])
    sameLiqueur(scaled)
  })

  it('multiplies every amount, keeps times and strengths, and looks for vessels of its own', () => {
    const spec = {
      ...cherries,
      fruits: [
        ...cherries.fruits,
        { fruitId: 'quince', massG: 500, refuseShare: 0.2, cut: 'cut' as const },
      ],
      finishWaterMl: 30,
      finishSugarG: 20,
      finishSpiritMl: 10,
      vessels: { steep: [{ shape: 'jar' as const, capacityMl: 3000 }], extracts: [] },
    }
    const scaled = scaledDraft(spec, { by: 'fruit', massG: 5000 }, facts)
    expect(scaled).toEqual({
      ...spec,
      fruits: spec.fruits.map((fruit) => ({ ...fruit, massG: 2 * fruit.massG })),
      spirits: spec.spirits.map((spirit) => ({ ...spirit, volumeMl: 2 * spirit.volumeMl })),
      layeringSugarG: 1000,
      steepWaterMl: 2 * spec.steepWaterMl,
      sugarDraws: [{ sugarG: 1000, days: 10 }],
      finishWaterMl: 60,
      finishSugarG: 40,
      finishSpiritMl: 20,
      vessels: { steep: [], extracts: [] },
    })
  })

  it('fills a jar to its safe line', () => {
    const scaled = scaledDraft(cherries, { by: 'jar', capacityMl: 10_000 }, facts)
    const [jar] = outcomeOf(scaled, facts).vessels
    expect(jar?.capacityMl).toBe(10_000)
    expect(jar?.peakFillMl).toBeCloseTo(9500, 0)
    sameLiqueur(scaled)
  })
})
