/** What the instruments of Alder End show: the liquid as the ledger has it, with an honest error. */
import { apparentStrength, composeSolution, describeSolution } from '../engine/index.ts'
import type { JarContents } from '../../shared/schemas/cellar.ts'
import type { Reading } from '../../shared/schemas/readings.ts'
import type { Noise } from './seeded-noise.ts'

const tenths = (value: number) => Math.round(10 * value) / 10

/** Hydrometer and refractometer together; the cheap pair, half a division out either way. */
export function readTwoInstruments({ free }: JarContents, noise: Noise): Reading {
  const temperatureC = tenths(noise.between(18.5, 21.5))
  const { densityKgPerM3, apparentBrix } = describeSolution({ ...free, temperatureC })
  return {
    instrument: 'hydrometerAndRefractometer',
    densityKgPerM3: tenths(densityKgPerM3 + noise.around(0.5)),
    brix: tenths(apparentBrix + noise.around(0.15)),
    temperatureC,
  }
}

/** Density before, and after the spirit was boiled off and the sample made up with water. */
export function readBoilOff({ free }: JarContents, noise: Noise): Reading {
  const temperatureC = 20
  const before = describeSolution({ ...free, temperatureC })
  const gPerL = (grams: number) => (1000 * grams) / before.volumeMl
  const after = composeSolution({
    volumeMl: 250,
    strengthPctVol: 0,
    sugarGPerL: before.sugarGPerL,
    acidGPerL: gPerL(free.acidG),
    solublesGPerL: gPerL(free.solublesG),
  })
  return {
    instrument: 'boilOff',
    densityBeforeKgPerM3: tenths(before.densityKgPerM3 + noise.around(0.4)),
    densityAfterKgPerM3: tenths(describeSolution(after).densityKgPerM3 + noise.around(0.4)),
    temperatureC,
  }
}

/** An alcoholometer floats by density alone, so in anything sweet it shows far too little. */
export function readAlcoholometer({ liquid }: JarContents, noise: Noise): Reading {
  if (!liquid) throw new Error('the demo reads an alcoholometer in an empty jar')
  const temperatureC = tenths(noise.between(14, 19))
  const { strengthPctVol, sugarGPerL } = liquid
  const { readingPctVol = 0 } = apparentStrength({ strengthPctVol, sugarGPerL, temperatureC })
  return {
    instrument: 'alcoholometer',
    readingPctVol: tenths(Math.max(0, readingPctVol + noise.around(0.3))),
    temperatureC,
  }
}

/** A kitchen jug, read to the nearest 10 mL. */
export function readJug({ liquid }: JarContents, noise: Noise): Reading {
  if (!liquid) throw new Error('the demo measures an empty jar')
  return {
    instrument: 'measuringJug',
    volumeMl: 10 * Math.round((liquid.volumeMl * (1 + noise.around(0.012))) / 10),
    temperatureC: 18,
  }
}
