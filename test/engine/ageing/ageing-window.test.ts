import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  ageingWindow,
  fruitOf,
  type AgeingLot,
  type AgeingWindowFound,
  type Stay,
} from '../../../main/engine/index.ts'

const dayMs = 86_400_000
const monthMs = (365.25 / 12) * dayMs

const cherry: AgeingLot = {
  fruits: [{ fruit: fruitOf('sour_cherry'), share: 1 }],
  strengthPctVol: 30,
  sugarGPerL: 200,
  acidGPerL: 8,
  bottledAtMs: 0,
  stays: [],
  verdicts: [],
  nowMs: 0,
}

const months = ({ early, likely, late }: AgeingWindowFound['readyAtMs']) =>
  [early, likely, late].map((ms) => ms / monthMs)

const stayed = (temperatureC: number, light: Stay['light'] = 'dark'): Stay[] => [
  { fromMs: 0, temperatureC, light },
]

describe('ageingWindow', () => {
  it('is the usual one of its fruit where nothing else is known', () => {
    const { phase, readyAtMs, fadingAtMs, because } = ageingWindow(cherry)
    expect(phase).toBe('young')
    // Six months (3 to 12) and four years (2 to 8), as the library says.
    const [early, likely, late] = months(readyAtMs)
    expect(early).toBeCloseTo(3, 1)
    expect(likely).toBeCloseTo(6, 1)
    expect(late).toBeCloseTo(12, 0)
    const [fadesEarly, fades, fadesLate] = months(fadingAtMs)
    expect(fadesEarly).toBeCloseTo(24, 0)
    expect(fades).toBeCloseTo(48, 0)
    expect(fadesLate).toBeCloseTo(96, 0)
    expect(because).toEqual(['noHistory'])
  })

  it('goes through its phases with time', () => {
    const phaseAfter = (m: number) => ageingWindow({ ...cherry, nowMs: m * monthMs }).phase
    expect([1, 5, 7, 40, 55].map(phaseAfter)).toEqual([
      'young',
      'young',
      'ready',
      'ready',
      'fading',
    ])
  })

  it('lies 2.6 times nearer at 25 °C than at 15 °C', () => {
    // exp(68 kJ/mol / R (1/288.15 - 1/298.15)) = 2.592
    const usual = ageingWindow({ ...cherry, stays: stayed(15) })
    const warm = ageingWindow({ ...cherry, stays: stayed(25) })
    expect(usual.readyAtMs.likely / warm.readyAtMs.likely).toBeCloseTo(2.592, 2)
    expect(usual.fadingAtMs.likely / warm.fadingAtMs.likely).toBeCloseTo(2.592, 2)
    expect(warm.because).toEqual(['warm'])
    expect(ageingWindow({ ...cherry, stays: stayed(8) }).because).toEqual(['cool'])
  })

  it('adds up what it stood in', () => {
    const moved = ageingWindow({
      ...cherry,
      stays: [...stayed(25), { fromMs: monthMs, temperatureC: 15, light: 'dark' }],
    })
    expect(moved.readyAtMs.likely / monthMs).toBeCloseTo(6 - 1.592, 1)
  })

  it('takes the stay it was bottled in from the last one that began before', () => {
    const before: Stay[] = [
      { fromMs: -5 * monthMs, temperatureC: 35, light: 'daylight' },
      { fromMs: -monthMs, temperatureC: 20, light: 'dark' },
    ]
    expect(ageingWindow({ ...cherry, stays: before })).toEqual(
      ageingWindow({ ...cherry, stays: stayed(20) }),
    )
  })

  it('fades three times as fast in daylight, and rests as long', () => {
    const dark = ageingWindow({ ...cherry, stays: stayed(15) })
    const light = ageingWindow({ ...cherry, stays: stayed(15, 'daylight') })
    expect(light.fadingAtMs.likely / dark.fadingAtMs.likely).toBeCloseTo(1 / 3, 1)
    expect(light.readyAtMs.likely / dark.readyAtMs.likely).toBeCloseTo(1, 1)
    expect(light.because).toEqual(['light'])
  })

  it('fades sooner when weak, later when strong or sweet, and rests longer when strong or tart', () => {
    const of = (change: Partial<AgeingLot>) => ageingWindow({ ...cherry, ...change })
    const usual = of({})
    expect(of({ strengthPctVol: 15 }).fadingAtMs.likely).toBeLessThan(usual.fadingAtMs.likely)
    expect(of({ strengthPctVol: 15 }).because).toEqual(['weak', 'noHistory'])
    expect(of({ strengthPctVol: 55 }).fadingAtMs.likely).toBeGreaterThan(usual.fadingAtMs.likely)
    expect(of({ strengthPctVol: 55 }).readyAtMs.likely).toBeGreaterThan(usual.readyAtMs.likely)
    expect(of({ sugarGPerL: 400 }).fadingAtMs.likely).toBeGreaterThan(usual.fadingAtMs.likely)
    expect(of({ acidGPerL: 20 }).readyAtMs.likely).toBeGreaterThan(usual.readyAtMs.likely)
    expect(of({ strengthPctVol: 55, sugarGPerL: 300, acidGPerL: 12 }).because).toEqual([
      'strong',
      'sweet',
      'noHistory',
    ])
  })

  it('mixes fruits by share, in logarithms', () => {
    const mixed = ageingWindow({
      ...cherry,
      fruits: [
        { fruit: fruitOf('lemon_peel'), share: 1 },
        { fruit: fruitOf('green_walnut'), share: 1 },
      ],
    })
    // 1 and 12 months; 1 and 10 years.
    expect(mixed.readyAtMs.likely / monthMs).toBeCloseTo(Math.sqrt(12), 0)
    expect(mixed.fadingAtMs.likely / monthMs).toBeCloseTo(12 * Math.sqrt(10), -1)
  })

  it('has a window for own fruits without ranges, for honey, and for spirit and sugar', () => {
    const own = (kind: string) =>
      ageingWindow({ ...cherry, fruits: [{ fruit: { id: 'mine', kind }, share: 1 }] })
    expect(own('nut').readyAtMs.likely).toBeGreaterThan(own('berry').readyAtMs.likely)
    expect(own('whatever').readyAtMs.likely / monthMs).toBeGreaterThan(3)
    const honey = ageingWindow({ ...cherry, fruits: [], honeyShare: 500 })
    expect(honey.readyAtMs.likely / monthMs).toBeCloseTo(6, 1)
    expect(ageingWindow({ ...cherry, fruits: [] })).toEqual(honey)
  })

  it('is ready before it fades, whatever ranges a maker gave', () => {
    const range = (typical: number) => ({ typical, low: typical, high: typical })
    const odd = ageingWindow({
      ...cherry,
      fruits: [
        {
          fruit: { id: 'mine', kind: 'odd', restMonths: range(48), drinkByYears: range(0) },
          share: 1,
        },
      ],
    })
    expect(odd.readyAtMs.likely).toBeLessThan(odd.fadingAtMs.likely)
    expect(odd.readyAtMs.early).toBeGreaterThan(0)
  })
})

describe('verdicts', () => {
  const tasted = (m: number, verdict: 'young' | 'ready' | 'fading') => ({
    atMs: m * monthMs,
    verdict,
  })
  const after = (...verdicts: ReturnType<typeof tasted>[]) =>
    ageingWindow({ ...cherry, stays: stayed(15), verdicts, nowMs: 10 * monthMs })
  const width = ({ early, late }: AgeingWindowFound['readyAtMs']) => Math.log(late / early)

  it('are believed at once, even against the usual window', () => {
    // Usually ready after 6 (3 to 12) months.
    expect(after(tasted(10, 'young'))).toMatchObject({ phase: 'young', because: ['tastedYoung'] })
    expect(after(tasted(2, 'ready')).readyAtMs.late / monthMs).toBeLessThan(2.3)
    // Usually fading after 48 (24 to 96) months.
    expect(after(tasted(10, 'fading')).phase).toBe('fading')
  })

  it('narrow the band', () => {
    const untasted = after()
    expect(width(after(tasted(7, 'ready')).readyAtMs)).toBeLessThan(width(untasted.readyAtMs))
    const both = after(tasted(5, 'young'), tasted(7, 'ready'))
    expect(width(both.readyAtMs)).toBeLessThan(0.5 * width(untasted.readyAtMs))
    expect(both.readyAtMs.early / monthMs).toBeGreaterThan(4.8)
    expect(both.readyAtMs.late / monthMs).toBeLessThan(7.2)
    const faded = after(tasted(40, 'ready'), tasted(50, 'fading'))
    expect(width(faded.fadingAtMs)).toBeLessThan(0.5 * width(untasted.fadingAtMs))
  })

  it('say nothing where they tell what is known anyhow', () => {
    const untasted = after()
    const told = after(tasted(0.5, 'young'))
    expect(told.readyAtMs.likely / untasted.readyAtMs.likely).toBeCloseTo(1, 2)
    expect(told.because).toEqual([])
  })

  it('from the jar, before it was bottled, count as from the day it was bottled', () => {
    const early = after(tasted(-3, 'young'))
    expect(early.readyAtMs.likely / after().readyAtMs.likely).toBeCloseTo(1, 3)
    expect(after(tasted(-1, 'ready')).readyAtMs.late / monthMs).toBeLessThan(0.1)
  })

  it('that contradict each other meet half way, in any order', () => {
    const torn = [tasted(4, 'ready'), tasted(9, 'young')]
    const { readyAtMs } = after(...torn)
    expect(readyAtMs.likely / monthMs).toBeGreaterThan(4)
    expect(readyAtMs.likely / monthMs).toBeLessThan(9)
    expect(after(...torn.toReversed())).toEqual(after(...torn))
  })

  it('by the hundred are no trouble', () => {
    const many = Array.from({ length: 300 }, (_, i) =>
      tasted(6 + i / 10, i % 2 ? 'ready' : 'young'),
    )
    const { readyAtMs } = after(...many)
    expect(Number.isFinite(readyAtMs.likely)).toBe(true)
  })
})

const temperature = fc.double({ min: 0, max: 36, noNaN: true })
const light = fc.constantFrom('dark', 'dim', 'daylight' as const)
const stay: fc.Arbitrary<Stay> = fc.record({
  fromMs: fc.double({ min: -12, max: 80, noNaN: true }).map((m) => m * monthMs),
  temperatureC: temperature,
  light,
})
const verdict = fc.record({
  atMs: fc.double({ min: -3, max: 120, noNaN: true }).map((m) => m * monthMs),
  verdict: fc.constantFrom('young', 'ready', 'fading' as const),
})
const fruits = fc.array(
  fc.record({
    fruit: fc
      .constantFrom('sour_cherry', 'lemon_peel', 'green_walnut', 'quince', 'strawberry', 'sloe')
      .map(fruitOf),
    share: fc.double({ min: 0, max: 5, noNaN: true }),
  }),
  { maxLength: 4 },
)
const lot: fc.Arbitrary<AgeingLot> = fc.record({
  fruits,
  honeyShare: fc.constantFrom(0, 1),
  strengthPctVol: fc.double({ min: 8, max: 75, noNaN: true }),
  sugarGPerL: fc.double({ min: 0, max: 600, noNaN: true }),
  acidGPerL: fc.double({ min: 0, max: 40, noNaN: true }),
  bottledAtMs: fc.constant(0),
  stays: fc.array(stay, { maxLength: 3 }),
  verdicts: fc.array(verdict, { maxLength: 4 }),
  nowMs: fc.double({ min: 0, max: 200, noNaN: true }).map((m) => m * monthMs),
})

/** Of the grid: a hundredth of the age. */
const hair = 1.01
const ends = ['early', 'likely', 'late'] as const

function expectNotLater(
  a: AgeingWindowFound,
  b: AgeingWindowFound,
  which: 'readyAtMs' | 'fadingAtMs',
) {
  for (const end of ends)
    expect(a[which][end]).toBeLessThanOrEqual(b[which][end] * hair + dayMs / 10)
}

describe('ageingWindow, for any lot', () => {
  it('keeps early, likely and late in order, ready before fading, and the phase with them', () => {
    fc.assert(
      fc.property(lot, (any) => {
        const { phase, readyAtMs, fadingAtMs } = ageingWindow(any)
        for (const band of [readyAtMs, fadingAtMs]) {
          expect(band.early).toBeLessThanOrEqual(band.likely)
          expect(band.likely).toBeLessThanOrEqual(band.late)
          expect(band.early).toBeGreaterThan(any.bottledAtMs)
        }
        for (const end of ends) expect(readyAtMs[end]).toBeLessThan(fadingAtMs[end])
        expect(phase === 'young').toBe(any.nowMs < readyAtMs.likely)
        expect(phase === 'fading').toBe(any.nowMs >= fadingAtMs.likely)
      }),
      { numRuns: 500 },
    )
  })

  it('never lengthens with warmth while it was not tasted', () => {
    fc.assert(
      fc.property(lot, fc.double({ min: 0.1, max: 4, noNaN: true }), (any, by) => {
        const cool = { ...any, verdicts: [] }
        const stays = any.stays.map((s) => ({ ...s, temperatureC: s.temperatureC + by }))
        const [warm, usual] = [ageingWindow({ ...cool, stays }), ageingWindow(cool)]
        expectNotLater(warm, usual, 'fadingAtMs')
        expectNotLater(warm, usual, 'readyAtMs')
      }),
    )
  })

  it('never lengthens with light while it was not tasted', () => {
    const brighter = { dark: 'dim', dim: 'daylight', daylight: 'daylight' } as const
    fc.assert(
      fc.property(lot, (any) => {
        const untasted = { ...any, verdicts: [] }
        const stays = any.stays.map((s) => ({ ...s, light: brighter[s.light] }))
        const [bright, usual] = [ageingWindow({ ...untasted, stays }), ageingWindow(untasted)]
        expectNotLater(bright, usual, 'fadingAtMs')
        expectNotLater(bright, usual, 'readyAtMs')
      }),
    )
  })

  it('never lengthens where one place of all its time is warmer or lighter, tasted or not', () => {
    fc.assert(
      fc.property(lot, temperature, (any, temperatureC) => {
        const at = (t: number, l: Stay['light']) =>
          ageingWindow({ ...any, stays: [{ fromMs: 0, temperatureC: t, light: l }] })
        const usual = at(temperatureC, 'dim')
        for (const other of [at(temperatureC + 3, 'dim'), at(temperatureC, 'daylight')]) {
          expectNotLater(other, usual, 'readyAtMs')
          expectNotLater(other, usual, 'fadingAtMs')
        }
      }),
    )
  })

  it('is never ready earlier for a verdict of young, nor later for one of fading', () => {
    fc.assert(
      fc.property(lot, verdict, (any, next) => {
        const before = ageingWindow(any)
        const told = ageingWindow({ ...any, verdicts: [...any.verdicts, next] })
        // One of ready moves both borders apart, and either may drag the other along.
        if (next.verdict === 'young') expectNotLater(before, told, 'readyAtMs')
        if (next.verdict === 'fading') expectNotLater(told, before, 'readyAtMs')
        if (next.verdict === 'young') expectNotLater(before, told, 'fadingAtMs')
        if (next.verdict === 'fading') expectNotLater(told, before, 'fadingAtMs')
      }),
      { numRuns: 300 },
    )
  })

  it('fades no earlier for being stronger or sweeter', () => {
    fc.assert(
      fc.property(lot, fc.double({ min: 0, max: 100, noNaN: true }), (any, by) => {
        const usual = ageingWindow(any)
        const sweeter = ageingWindow({ ...any, sugarGPerL: any.sugarGPerL + by })
        const stronger = ageingWindow({ ...any, strengthPctVol: any.strengthPctVol + by / 5 })
        expectNotLater(usual, sweeter, 'fadingAtMs')
        expectNotLater(usual, stronger, 'fadingAtMs')
      }),
    )
  })

  it('is the same for the same lot, and leaves it as it was', () => {
    fc.assert(
      fc.property(lot, (any) => {
        Object.freeze(any.stays)
        Object.freeze(any.verdicts)
        expect(ageingWindow(any)).toEqual(ageingWindow(structuredClone(any)))
      }),
      { numRuns: 50 },
    )
  })
})
