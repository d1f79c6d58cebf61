import { describe, expect, it } from 'vitest'
import { KineticClass } from '../../../shared/schemas/fruits.ts'
import { Cut } from '../../../shared/schemas/moves.ts'
import {
  halfTimeRowOf,
  halfTimesOf,
  halfTimeTable,
  prickingFactor,
} from '../../../main/engine/fruit/half-times.ts'

const everyClass = KineticClass.options
const fleshy = everyClass.filter((each) => each !== 'dry' && each !== 'driedFruit')
const columns = ['ethanol', 'extract', 'colour', 'osmosis'] as const

describe('halfTimeTable', () => {
  it.each(everyClass)('%s has its ranges in order and colour never ahead of spirit', (each) => {
    const row = halfTimeTable[each]
    for (const column of columns) {
      expect(row[column].low).toBeGreaterThan(0)
      expect(row[column].low).toBeLessThan(row[column].typical)
      expect(row[column].typical).toBeLessThan(row[column].high)
    }
    expect(row.extract.typical).toBeGreaterThan(row.ethanol.typical)
    expect(row.colour.typical).toBeGreaterThanOrEqual(row.extract.typical)
  })

  it('has the estimates of the craft reference for thin-skinned and waxy whole fruit', () => {
    const { thinSkin, waxySkin } = halfTimeTable
    expect(thinSkin.ethanol).toEqual({ typical: 2, low: 0.7, high: 6 })
    expect(thinSkin.extract).toEqual({ typical: 4, low: 1.5, high: 10 })
    expect(waxySkin.colour).toEqual({ typical: 12, low: 4, high: 35 })
  })
})

describe('halfTimesOf', () => {
  it('gives the example of its docstring', () => {
    expect(halfTimesOf('thinSkin', 'whole').ethanol).toBe(2)
  })

  it.each(fleshy)('%s crushed or frozen lets liquid through like cut soft fruit', (each) => {
    expect(halfTimeRowOf(each, 'crushed')).toBe(halfTimeTable.cutSoft)
    expect(halfTimeRowOf(each, 'frozen')).toBe(halfTimeTable.cutSoft)
  })

  it('keeps hard slices hard when they are cut, and soft fruit soft', () => {
    expect(halfTimeRowOf('hardSlice', 'cut')).toBe(halfTimeTable.hardSlice)
    for (const each of fleshy.filter((one) => one !== 'hardSlice'))
      expect(halfTimeRowOf(each, 'cut')).toBe(halfTimeTable.cutSoft)
  })

  it.each(['thinSkin', 'waxySkin'] as const)('%s pricked is three times as fast', (each) => {
    const whole = halfTimesOf(each, 'whole')
    const pricked = halfTimesOf(each, 'pricked')
    expect(pricked.ethanol).toBeCloseTo(whole.ethanol / prickingFactor, 12)
    expect(pricked.extract).toBeCloseTo(whole.extract / prickingFactor, 12)
    expect(pricked.osmosis).toBe(whole.osmosis)
    expect(pricked.ethanol).toBeGreaterThan(halfTimesOf(each, 'crushed').ethanol)
  })

  it('leaves dry goods and skinless berries as they are, however they are handled', () => {
    for (const cut of Cut.options) {
      expect(halfTimeRowOf('dry', cut)).toBe(halfTimeTable.dry)
      expect(halfTimeRowOf('driedFruit', cut)).toBe(halfTimeTable.driedFruit)
    }
    expect(halfTimeRowOf('softWhole', 'pricked')).toBe(halfTimeTable.softWhole)
  })
})
