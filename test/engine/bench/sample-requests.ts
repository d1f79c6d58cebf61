/** One plain use of every instrument of the Bench; a new instrument without one does not compile. */
import type { BenchInstrument, BenchRequestOf } from '../../../shared/schemas/bench.ts'

type Samples = { [I in BenchInstrument]: BenchRequestOf<I> }

export const sampleRequests: Samples = {
  reduceByVolume: {
    instrument: 'reduceByVolume',
    volumeMl: 1000,
    strengthPctVol: 96,
    targetPctVol: 40,
  },
  reduceByWeight: {
    instrument: 'reduceByWeight',
    massG: 807,
    strengthPctVol: 96,
    targetPctVol: 40,
  },
  reduceToVolume: {
    instrument: 'reduceToVolume',
    resultMl: 1000,
    strengthPctVol: 96,
    targetPctVol: 40,
  },
  alcoholometer: { instrument: 'alcoholometer', readingPctVol: 40, temperatureC: 10 },
  hydrometer: {
    instrument: 'hydrometer',
    densityKgPerM3: 948.05,
    temperatureC: 20,
    liquid: 'spirit',
  },
  refractometer: { instrument: 'refractometer', brix: 20, temperatureC: 25, isCompensated: false },
  volumeAt20: { instrument: 'volumeAt20', volumeMl: 1000, temperatureC: 10, strengthPctVol: 40 },
  proofToStrength: { instrument: 'proofToStrength', proof: 80 },
  strengthToProof: { instrument: 'strengthToProof', strengthPctVol: 40 },
  proofHydrometer: { instrument: 'proofHydrometer', proof: 80, temperatureC: 20 },
  densityToStrength: {
    instrument: 'densityToStrength',
    densityKgPerM3: 948.05,
    temperatureC: 20,
  },
  strengthToDensity: { instrument: 'strengthToDensity', strengthPctVol: 40, temperatureC: 20 },
  syrupOfBrix: { instrument: 'syrupOfBrix', brix: 50, temperatureC: 20 },
  syrupOfDensity: { instrument: 'syrupOfDensity', densityKgPerM3: 1229.65, temperatureC: 20 },
  syrupOfSugar: { instrument: 'syrupOfSugar', sugarGPerL: 614.83, temperatureC: 20 },
  apparentStrength: {
    instrument: 'apparentStrength',
    strengthPctVol: 40,
    sugarGPerL: 100,
    temperatureC: 20,
  },
  boilOff: {
    instrument: 'boilOff',
    densityBeforeKgPerM3: 985.42,
    densityAfterKgPerM3: 1036.65,
    temperatureC: 20,
  },
  hydrometerAndRefractometer: {
    instrument: 'hydrometerAndRefractometer',
    densityKgPerM3: 1000.47,
    brix: 20.41,
    temperatureC: 20,
  },
  weighing: {
    instrument: 'weighing',
    massG: 98.54,
    volumeMl: 100,
    temperatureC: 20,
    liquid: 'other',
  },
  weighingByWater: {
    instrument: 'weighingByWater',
    massG: 98.54,
    waterG: 99.72,
    waterTemperatureC: 20,
    temperatureC: 20,
    liquid: 'other',
  },
  sweeten: {
    instrument: 'sweeten',
    volumeMl: 1000,
    strengthPctVol: 40,
    targetSugarGPerL: 200,
    temperatureC: 20,
  },
  glass: { instrument: 'glass', volumeMl: 35, strengthPctVol: 40, sugarGPerL: 200 },
}
