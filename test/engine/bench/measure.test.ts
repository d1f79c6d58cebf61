import { describe, expect, it } from 'vitest'
import { measure } from '../../../main/engine/bench/measure.ts'
import { DomainError } from '../../../main/engine/domain-error.ts'
import { strengthByBoilOff } from '../../../main/engine/readings/boil-off.ts'
import { strengthByTwoInstruments } from '../../../main/engine/readings/two-instruments.ts'
import { BenchReply, type BenchQuantity, type BenchRequest } from '../../../shared/schemas/bench.ts'
import { sampleRequests } from './sample-requests.ts'

const every = Object.values(sampleRequests)

const found = (request: BenchRequest, quantity: BenchQuantity) => {
  const result = measure(request).results.find((one) => one.quantity === quantity)
  if (!result) throw new Error(`${request.instrument} says nothing of ${quantity}`)
  return result
}
const codes = (request: BenchRequest) => measure(request).notes.map(({ code }) => code)

describe('measure', () => {
  it.each(every)('$instrument answers in the form of the contract, with an answer', (request) => {
    const reply = measure(request)
    expect(BenchReply.parse(reply)).toEqual(reply)
    expect(reply.results.some(({ isAnswer }) => isAnswer)).toBe(true)
  })

  it.each(every)('$instrument gives every result an uncertainty above 0', (request) => {
    for (const { quantity, uncertainty } of measure(request).results)
      expect(uncertainty, quantity).toBeGreaterThan(0)
  })

  it.each(every)('$instrument says what it took, and is unchanged by it', (request) => {
    const before = structuredClone(request)
    const { inputs } = measure(Object.freeze(request))
    expect(request).toEqual(before)
    const numbers = Object.entries(request).filter(([, value]) => typeof value === 'number')
    for (const [name, value] of numbers)
      expect(inputs, name).toContainEqual(expect.objectContaining({ name, value }))
  })

  it.each(every)('$instrument is less sure where all is read twice as coarsely', (request) => {
    const usual = measure(request)
    const coarse = Object.fromEntries(
      usual.inputs.flatMap(({ name, uncertainty }) =>
        uncertainty === undefined || name === 'densityAfterKgPerM3'
          ? []
          : [[name, 2 * uncertainty]],
      ),
    )
    const fineness = 'massG' in request && 'liquid' in request ? { scaleStepG: 0.4 } : coarse
    const again = measure({ ...request, fineness } as BenchRequest)
    for (const [index, { quantity, uncertainty }] of usual.results.entries()) {
      if (quantity === 'flask' || quantity === 'strengthReached') continue
      expect(again.results[index]?.uncertainty, quantity).toBeGreaterThan(uncertainty as number)
    }
  })

  it('reduces 1 L of 96 % to 40 % with 1470.5 ml of water, and says 71 ml are lost', () => {
    const request = sampleRequests.reduceByVolume
    expect(found(request, 'water').value).toBeCloseTo(1470.5, 1)
    expect(found(request, 'contraction').value).toBeCloseTo(70.5, 1)
    expect(measure(request).picture).toMatchObject({ kind: 'dilution', spiritMl: 1000 })
    expect(codes(request)).toEqual(['strongSpirit', 'straightRule'])
    expect(measure(request).notes[1]?.value).toBeCloseTo(41.19, 1)
  })

  it('makes the same spirit by volume, by weight and to a volume', () => {
    const byWeight = found(sampleRequests.reduceByWeight, 'water').value / 807
    const byVolume = found(sampleRequests.reduceByVolume, 'water').value / 807.42
    expect(byWeight).toBeCloseTo(byVolume, 5)
    const toVolume = { ...sampleRequests.reduceToVolume, resultMl: 2400 }
    expect(found(toVolume, 'spirit').value).toBeCloseTo(1000, 0)
  })

  it('reduces nothing to nothing: 100 % to 100 % is no water, of which no neighbour is known', () => {
    const request = { ...sampleRequests.reduceByVolume, strengthPctVol: 100, targetPctVol: 100 }
    expect(found(request, 'water').value).toBeCloseTo(0, 9)
  })

  it('agrees with the methods themselves but for the thermometer', () => {
    const fine = { temperatureC: 1e-9 }
    const boiled = strengthByBoilOff({ densityBeforeKgPerM3: 985.42, densityAfterKgPerM3: 1036.65 })
    const boilOff = found({ ...sampleRequests.boilOff, fineness: fine }, 'strength')
    expect(boilOff.value).toBeCloseTo(boiled.strengthPctVol, 9)
    expect(boilOff.uncertainty).toBeCloseTo(boiled.uncertaintyPctVol, 6)
    const both = strengthByTwoInstruments({ densityKgPerM3: 1000.47, brixReading: 20.41 })
    const two = found({ ...sampleRequests.hydrometerAndRefractometer, fineness: fine }, 'sugar')
    expect(two.value).toBeCloseTo(both.sugarGPerL, 9)
    expect(two.uncertainty).toBeCloseTo(both.uncertaintyGPerL, 6)
  })

  it('draws two lines that meet in the answer, one rising and one falling', () => {
    const { picture } = measure(sampleRequests.hydrometerAndRefractometer)
    if (picture?.kind !== 'crossing') throw new Error('no crossing lines')
    const [strength, sugar] = (['strength', 'sugar'] as const).map(
      (quantity) => found(sampleRequests.hydrometerAndRefractometer, quantity).value,
    )
    for (const [line, direction] of [
      [picture.density, 1],
      [picture.refraction, -1],
    ] as const) {
      const after = line.findIndex((point) => point.strengthPctVol > strength!)
      const [a, b] = [line[after - 1]!, line[after]!]
      const share = (strength! - a.strengthPctVol) / (b.strengthPctVol - a.strengthPctVol)
      expect(a.sugarGPerL + share * (b.sugarGPerL - a.sugarGPerL)).toBeCloseTo(sugar!, 0)
      for (const [i, point] of line.slice(1).entries())
        expect(direction * (point.sugarGPerL - line[i]!.sugarGPerL)).toBeGreaterThan(0)
    }
  })

  it('warns of what misleads, burns, or will not dissolve', () => {
    expect(codes(sampleRequests.boilOff)).toContain('boilOffCare')
    expect(codes(sampleRequests.alcoholometer)).toContain('sugarMisleads')
    expect(codes(sampleRequests.refractometer)).toContain('spiritMisleads')
    expect(codes(sampleRequests.glass)).toEqual(['notLegalAdvice'])
    expect(codes(sampleRequests.sweeten)).not.toContain('undissolved')
    const strong = { ...sampleRequests.sweeten, strengthPctVol: 60, targetSugarGPerL: 500 }
    expect(codes(strong)).toContain('undissolved')
    const cold = { ...sampleRequests.sweeten, targetSugarGPerL: 560, strengthPctVol: 50 }
    const leftAt = (temperatureC: number) =>
      measure({ ...cold, temperatureC }).notes.find(({ code }) => code === 'undissolved')?.value ??
      0
    expect(leftAt(2)).toBeGreaterThan(leftAt(40))
  })

  it('tells how far an alcoholometer stands off its scale in a sweet liqueur', () => {
    const request = { ...sampleRequests.apparentStrength, strengthPctVol: 30, sugarGPerL: 250 }
    expect(codes(request)).toEqual(['floatsOffScale'])
    expect(found(request, 'offScale').value).toBeCloseTo(58.6, 1)
    expect(found(sampleRequests.apparentStrength, 'shownStrength').value).toBeCloseTo(9.4, 1)
  })

  it('takes a compensated refractometer at its word, and corrects the other', () => {
    const compensated = { ...sampleRequests.refractometer, isCompensated: true }
    expect(found(compensated, 'brix').value).toBe(20)
    expect(found(sampleRequests.refractometer, 'brix').value).toBeCloseTo(20.38, 2)
  })

  it('gives a reading to record as raw as the book keeps it', () => {
    expect(measure(sampleRequests.boilOff).reading).toEqual(sampleRequests.boilOff)
    const { reading } = measure({ ...sampleRequests.hydrometer, temperatureC: 12 })
    if (reading?.instrument !== 'hydrometer') throw new Error('no reading')
    expect(reading.densityKgPerM3).toBeCloseTo(948.05, 9)
    expect(measure(sampleRequests.weighing).reading).toBeUndefined()
  })

  it('refuses what no liquid shows, with the range or by how much', () => {
    const refusal = (request: BenchRequest) => {
      try {
        measure(request)
        return undefined
      } catch (error) {
        return error instanceof DomainError ? error : undefined
      }
    }
    const hot = refusal({ ...sampleRequests.alcoholometer, temperatureC: 55 })
    expect(hot).toMatchObject({
      code: 'outOfRange',
      details: { quantity: 'temperature', value: 55, low: -20, high: 40, unit: '°C' },
    })
    const odd = { ...sampleRequests.hydrometerAndRefractometer, densityKgPerM3: 950, brix: 10 }
    expect(refusal(odd)).toMatchObject({ code: 'noSuchMixture' })
    expect(refusal(odd)?.details['nearestBrix']).toBeCloseTo(14.4, 1)
  })
})

describe('explanations', () => {
  const told = every.flatMap((request) => measure(request).explanations)

  it.each(every)('$instrument has one that names its source, limits and uncertainty', (request) => {
    const [first] = measure(request).explanations
    expect(first?.method.length).toBeGreaterThan(40)
    // A standard, a regulation, an author with a year: something that can be looked up.
    expect(first?.source).toMatch(/OIML|ICUMSA|CFR|CRC|Regulation|WHO|\(\d{4}/)
    expect(first?.limits.length).toBeGreaterThan(10)
    expect(first?.uncertainty.length).toBeGreaterThan(10)
  })

  it('have an id each, for translators, and one text for an id', () => {
    const texts = new Map(told.map((one) => [one.id, JSON.stringify(one)]))
    for (const one of told) expect(texts.get(one.id)).toBe(JSON.stringify(one))
    expect(new Set(texts.values()).size).toBe(texts.size)
  })
})
