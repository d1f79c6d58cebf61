/** What the Bench states is true often enough: seeded instruments over composed liqueurs. */
import { describe, expect, it } from 'vitest'
import { measure } from '../../../main/engine/bench/measure.ts'
import type { BenchRequest } from '../../../shared/schemas/bench.ts'
import {
  noiseOf,
  readBoilOff,
  readTwoInstruments,
  type Liqueur,
} from '../readings/composed-liqueurs.ts'

const cases = 1000
const quantities = ['strength', 'sugar'] as const

/** In how many of the cases each quantity lies within so many stated uncertainties of the truth. */
function within(
  seed: number,
  times: number,
  read: (liqueur: Liqueur, normal: () => number) => BenchRequest,
) {
  const noise = noiseOf(seed)
  const hits = { strength: 0, sugar: 0 }
  for (let i = 0; i < cases; i++) {
    const liqueur = noise.liqueur()
    const truth = { strength: liqueur.strengthPctVol, sugar: liqueur.sugarGPerL }
    const { results } = measure(read(liqueur, () => noise.normal()))
    for (const quantity of quantities) {
      const { value, uncertainty } = results.find((result) => result.quantity === quantity)!
      if (Math.abs(value - truth[quantity]) <= times * uncertainty!) hits[quantity] += 1
    }
  }
  return hits
}

const byTwoInstruments =
  (fineness?: { densityKgPerM3: number; brix: number }) =>
  (liqueur: Liqueur, normal: () => number): BenchRequest => {
    const read = readTwoInstruments(liqueur)
    return {
      instrument: 'hydrometerAndRefractometer',
      densityKgPerM3: read.densityKgPerM3 + 0.5 * normal(),
      brix: read.brixReading + 0.1 * normal(),
      temperatureC: 20,
      ...(fineness && { fineness }),
    }
  }

const byBoilOff = (liqueur: Liqueur, normal: () => number): BenchRequest => {
  const read = readBoilOff(liqueur)
  return {
    instrument: 'boilOff',
    densityBeforeKgPerM3: read.densityBeforeKgPerM3 + 0.5 * normal(),
    densityAfterKgPerM3: read.densityAfterKgPerM3 + 0.5 * normal(),
    temperatureC: 20,
  }
}

describe('the stated uncertainty', () => {
  it('as usual for home instruments holds 90 % of 1,000 readings by 0.5 kg/m³ and 0.1 °Bx', () => {
    const hits = within(11, 1, byTwoInstruments())
    expect(hits.strength).toBeGreaterThanOrEqual(900)
    expect(hits.sugar).toBeGreaterThanOrEqual(900)
  })

  it('as usual for home instruments holds 90 % of 1,000 boil-offs by 0.5 kg/m³', () => {
    const hits = within(12, 1, byBoilOff)
    expect(hits.strength).toBeGreaterThanOrEqual(900)
    expect(hits.sugar).toBeGreaterThanOrEqual(900)
  })

  it('twice, of just those instruments, holds 90 % of 1,000 readings', () => {
    const hits = within(13, 2, byTwoInstruments({ densityKgPerM3: 0.5, brix: 0.1 }))
    expect(hits.strength).toBeGreaterThanOrEqual(900)
    expect(hits.sugar).toBeGreaterThanOrEqual(900)
  })
})
