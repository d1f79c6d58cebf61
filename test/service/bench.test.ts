import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { sampleRequests } from '../engine/bench/sample-requests.ts'
import { trial, type Trial } from './with-service.ts'

let t: Trial
beforeEach(async () => {
  t = await trial()
})
afterEach(() => t.service.close())

describe('bench.measure', () => {
  it.each(Object.values(sampleRequests))(
    'answers $instrument with no batch at all',
    async (asked) => {
      const reply = await t.ask('bench.measure', asked)
      expect(reply.results.some(({ isAnswer }) => isAnswer)).toBe(true)
      expect(reply.explanations.length).toBeGreaterThan(0)
    },
  )

  it('refuses a temperature outside the table as data: quantity, value and range', async () => {
    const error = await t.refusal('bench.measure', {
      ...sampleRequests.alcoholometer,
      temperatureC: 55,
    })
    expect(error).toEqual({
      code: 'outOfRange',
      message: 'temperature is 55 °C, must be -20 to 40 °C',
      details: { quantity: 'temperature', value: 55, low: -20, high: 40, unit: '°C' },
    })
  })

  it('refuses two readings that no mixture has, and says by how much', async () => {
    const refraction = await t.refusal('bench.measure', {
      ...sampleRequests.hydrometerAndRefractometer,
      densityKgPerM3: 950,
      brix: 10,
    })
    expect(refraction.code).toBe('noSuchMixture')
    expect(refraction.details['nearestBrix']).toBeCloseTo(14.4, 1)
    const densities = await t.refusal('bench.measure', {
      ...sampleRequests.boilOff,
      densityBeforeKgPerM3: 1060,
      densityAfterKgPerM3: 1040,
    })
    expect(densities.code).toBe('noSuchMixture')
    expect(densities.details['excessKgPerM3']).toBeCloseTo(20, 0)
  })

  it('refuses a density so cold that many strengths share it', async () => {
    const error = await t.refusal('bench.measure', {
      ...sampleRequests.densityToStrength,
      densityKgPerM3: 977,
      temperatureC: -15,
    })
    expect(error).toMatchObject({ code: 'ambiguous', details: { temperatureC: -15 } })
  })

  it('refuses what is no number, a fineness of nothing, and a fineness it does not ask for', async () => {
    const asked = sampleRequests.alcoholometer
    for (const wrong of [
      { ...asked, readingPctVol: '40' },
      { ...asked, readingPctVol: Number.NaN },
      { ...asked, fineness: { readingPctVol: 0 } },
      { ...asked, fineness: { brix: 1 } },
      { ...asked, instrument: 'divining rod' },
    ])
      expect(await t.service.dispatch('bench.measure', wrong)).toMatchObject({
        ok: false,
        error: { code: 'badInput' },
      })
  })

  it('is a read: nobody is told of a change, and the book stays empty', async () => {
    let told = 0
    t.service.onChange(() => (told += 1))
    await t.ask('bench.measure', sampleRequests.boilOff)
    expect(told).toBe(0)
    expect((await t.ask('cellar.check', {})).moveCount).toBe(0)
  })
})
