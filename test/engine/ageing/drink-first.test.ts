import { describe, expect, it } from 'vitest'
import { drinkFirst, type MsBand, type WaitingLot } from '../../../main/engine/index.ts'

const monthMs = (365.25 / 12) * 86_400_000
const at = (month: number): MsBand => ({
  early: (month - 1) * monthMs,
  likely: month * monthMs,
  late: (month + 1) * monthMs,
})

/** Now is month 0. */
const lot = (
  bottleLotId: string,
  readyMonth: number,
  fadingMonth: number,
  more: Partial<WaitingLot> = {},
): WaitingLot => ({
  bottleLotId,
  window: {
    phase: readyMonth > 0 ? 'young' : fadingMonth > 0 ? 'ready' : 'fading',
    readyAtMs: at(readyMonth),
    fadingAtMs: at(fadingMonth),
    because: [],
  },
  openedBestByMs: [],
  ...more,
})

describe('drinkFirst', () => {
  it('puts opened bottles first, then fading, soon fading, and paling lots', () => {
    const found = drinkFirst(
      [
        lot('sound', -3, 20),
        lot('paling', -3, 30, { colour: { now: 0.6, inAQuarter: 0.3 } }),
        lot('soon', -12, 4),
        lot('fading', -30, -2),
        lot('opened', -3, 30, { openedBestByMs: [at(5), at(2)] }),
        lot('young', 4, 30, { colour: { now: 0.9, inAQuarter: 0.3 } }),
      ],
      0,
    )
    expect(found).toEqual([
      { bottleLotId: 'opened', because: 'opened', byMs: 2 * monthMs },
      { bottleLotId: 'fading', because: 'fading' },
      { bottleLotId: 'soon', because: 'fadingSoon', byMs: 4 * monthMs },
      { bottleLotId: 'paling', because: 'colour' },
    ])
  })

  it('sorts like by like: the nearest, the longest faded, the fastest paling', () => {
    const ids = (lots: WaitingLot[]) => drinkFirst(lots, 0).map(({ bottleLotId }) => bottleLotId)
    expect(ids([lot('b', -9, 5), lot('a', -9, 1)])).toEqual(['a', 'b'])
    expect(ids([lot('b', -30, -1), lot('a', -30, -9)])).toEqual(['a', 'b'])
    const paling = (id: string, inAQuarter: number) =>
      lot(id, -3, 30, { colour: { now: 0.8, inAQuarter } })
    expect(ids([paling('b', 0.4), paling('a', 0.3)])).toEqual(['a', 'b'])
    expect(ids([lot('b', -9, 3), lot('a', -9, 3)])).toEqual(['a', 'b'])
  })

  it('leaves alone what keeps its colour, and what has none left to lose', () => {
    const red = (now: number, inAQuarter: number) =>
      lot('red', -3, 30, { colour: { now, inAQuarter } })
    expect(drinkFirst([red(0.8, 0.6)], 0)).toEqual([])
    expect(drinkFirst([red(0.1, 0.02)], 0)).toEqual([])
  })
})
