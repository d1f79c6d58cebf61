import { describe, expect, it } from 'vitest'
import { solveDraft } from '../../../main/engine/index.ts'
import { facts, plainDraft } from './seeded-drafts.ts'

const cherries = plainDraft('sour_cherry')

describe('solveDraft', () => {
  it('fills ten bottles of sour cherry at 30 % vol and 200 g/L', () => {
    const wishes = { bottles: 10, strengthPctVol: 30, sugarGPerL: 200 }
    const { outcome, unmet } = solveDraft({ spec: cherries, pins: [], wishes }, facts)
    expect(unmet).toEqual([])
    expect(outcome.bottles).toBe(10)
    expect(outcome.remainderMl).toBeLessThan(1)
    expect(outcome.finished?.strengthPctVol).toBeCloseTo(30, 1)
    expect(outcome.finished?.sugarGPerL).toBeCloseTo(200, 0)
    expect(outcome.warnings.filter(({ code }) => code === 'outsideWindow')).toEqual([])
  })

  it('meets acidity too, by more or less fruit', () => {
    const wishes = { volumeMl: 3000, strengthPctVol: 30, sugarGPerL: 200, acidGPerL: 6 }
    const { outcome, unmet } = solveDraft({ spec: cherries, pins: [], wishes }, facts)
    expect(unmet).toEqual([])
    expect(outcome.finished?.acidGPerL).toBeCloseTo(6, 1)
  })

  it('holds what is pinned, to the gram and the millilitre', () => {
    const wishes = { strengthPctVol: 28, sugarGPerL: 220 }
    const pins = ['fruit', 'spirit', 'layeringSugar'] as const
    const { spec, unmet } = solveDraft({ spec: cherries, pins: [...pins], wishes }, facts)
    expect(unmet).toEqual([])
    expect(spec.fruits).toEqual(cherries.fruits)
    expect(spec.spirits).toEqual(cherries.spirits)
    expect(spec.layeringSugarG).toBe(cherries.layeringSugarG)
  })

  it('says that a liqueur cannot be stronger than its spirit, and meets the other wishes', () => {
    const spec = { ...cherries, spirits: [{ strengthPctVol: 40, volumeMl: 2000 }], steepWaterMl: 0 }
    const wishes = { volumeMl: 3000, strengthPctVol: 45, sugarGPerL: 100 }
    const { unmet } = solveDraft({ spec, pins: [], wishes }, facts)
    const strength = unmet.find(({ wish }) => wish === 'strengthPctVol')
    expect(strength).toMatchObject({ reason: 'strongerThanSpirit', wanted: 45, limit: 40 })
    expect(strength?.nearest).toBeLessThan(40)
  })

  it('says where sugar no longer dissolves, and comes near', () => {
    const wishes = { bottles: 10, strengthPctVol: 20, sugarGPerL: 1100 }
    const { unmet, outcome } = solveDraft({ spec: cherries, pins: [], wishes }, facts)
    const sugar = unmet.find(({ wish }) => wish === 'sugarGPerL')
    expect(sugar).toMatchObject({ reason: 'sweeterThanSaturation', wanted: 1100 })
    expect(sugar?.limit).toBeGreaterThan(600)
    expect(sugar?.limit).toBeLessThan(750)
    expect(sugar?.nearest).toBeGreaterThan((sugar?.limit ?? 0) * 0.97)
    expect(outcome.bottles).toBe(10)
  })

  it('tells apart what pins forbid from what nothing allows', () => {
    const pins = ['fruit', 'spirit', 'steepWater', 'layeringSugar', 'drawSugar', 'finishWater']
    const wishes = { strengthPctVol: 20, sugarGPerL: 280 }
    const solving = { spec: cherries, pins: pins as never, wishes }
    const { unmet } = solveDraft(solving, facts)
    expect(unmet.map(({ wish, reason }) => [wish, reason])).toContainEqual([
      'strengthPctVol',
      'heldByPins',
    ])
  })
})
