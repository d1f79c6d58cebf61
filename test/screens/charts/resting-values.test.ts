import { describe, expect, it } from 'vitest'
import { restingValues } from '../../../renderer/charts/resting-values.ts'
import { jarForecast } from '../batch/steeping-fixture.ts'

const banded = (value: number, give: number) => ({
  value,
  low: value - give,
  high: value + give,
})
const jar = (jarId: string, strength: number, volumeMl: number) =>
  jarForecast({
    jarId,
    resting: {
      strengthPctVol: banded(strength, 1),
      sugarGPerL: banded(180, 10),
      volumeMl: banded(volumeMl, 20),
    },
  })

describe('restingValues', () => {
  const forecast = { jars: [jar('north', 30, 1000), jar('south', 36, 2000)] }

  it('is a jar’s own', () => {
    expect(restingValues(forecast, 'south', ['north', 'south'])?.strengthPctVol.value).toBe(36)
  })

  it('is the mean by volume of all jars: 1 L at 30 and 2 L at 36 rest at 34 ± 1', () => {
    const whole = restingValues(forecast, 'whole', ['north', 'south'])
    expect(whole?.strengthPctVol).toEqual({ value: 34, low: 33, high: 35 })
  })

  it('is not known of a whole batch some of whose liquid stands off the fruit', () => {
    expect(restingValues(forecast, 'whole', ['north', 'south', 'extract'])).toBeUndefined()
    expect(restingValues(undefined, 'whole', [])).toBeUndefined()
  })
})
