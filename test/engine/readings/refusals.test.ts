import { describe } from 'vitest'
import { strengthByBoilOff } from '../../../main/engine/readings/boil-off.ts'
import {
  densityByWeighing,
  flaskByWater,
} from '../../../main/engine/readings/density-by-weighing.ts'
import { densityOfHydrometer } from '../../../main/engine/readings/hydrometer.ts'
import { readHydrometer, readRefractometer } from '../../../main/engine/readings/one-instrument.ts'
import { brixAt20 } from '../../../main/engine/readings/refractometer.ts'
import { strengthAtSugar, sugarAtStrength } from '../../../main/engine/readings/solve-one.ts'
import { strengthByTwoInstruments } from '../../../main/engine/readings/two-instruments.ts'
import { namesWhatItRefuses } from '../refusal-tables.ts'

const boiled = { densityBeforeKgPerM3: 985.42, densityAfterKgPerM3: 1036.65 }
const two = { densityKgPerM3: 1000.47, brixReading: 20.41 }
const flask = { massG: 98.5, volumeMl: 100 }
const floating = { readingKgPerM3: 950, temperatureC: 20 }
const sighting = { see: () => 1, seen: 1, margin: 0 }
const known = { expectedSugarGPerL: 100 }
const prism = 'temperature of the prism'

describe('readings', () => {
  namesWhatItRefuses({
    strengthByBoilOff: [
      [() => strengthByBoilOff({ ...boiled, temperatureC: 41 }), 'temperature', 41, '°C'],
      [
        () => strengthByBoilOff({ ...boiled, densityUncertaintyKgPerM3: 0 }),
        'density uncertainty',
        0,
        'kg/m³',
      ],
      [
        () => strengthByBoilOff({ ...boiled, densityBeforeKgPerM3: 1451 }),
        'density before',
        1451,
        'kg/m³',
      ],
      [
        () => strengthByBoilOff({ ...boiled, densityAfterKgPerM3: 699 }),
        'density after',
        699,
        'kg/m³',
      ],
    ],
    strengthByTwoInstruments: [
      [() => strengthByTwoInstruments({ ...two, temperatureC: 41 }), 'temperature', 41, '°C'],
      [() => strengthByTwoInstruments({ ...two, brixTemperatureC: 41 }), prism, 41, '°C'],
      [() => strengthByTwoInstruments({ ...two, densityKgPerM3: 699 }), 'density', 699, 'kg/m³'],
      [
        () => strengthByTwoInstruments({ ...two, brixReading: 86 }),
        'refractometer reading',
        86,
        '°Bx',
      ],
      [
        () => strengthByTwoInstruments({ ...two, densityUncertaintyKgPerM3: 0 }),
        'density uncertainty',
        0,
        'kg/m³',
      ],
      [
        () => strengthByTwoInstruments({ ...two, brixUncertainty: 21 }),
        'refractometer uncertainty',
        21,
        '°Bx',
      ],
    ],
    densityOfHydrometer: [
      [
        () => densityOfHydrometer({ ...floating, readingKgPerM3: 599 }),
        'hydrometer reading',
        599,
        'kg/m³',
      ],
      [() => densityOfHydrometer({ ...floating, temperatureC: 41 }), 'temperature', 41, '°C'],
      [
        () => densityOfHydrometer({ ...floating, graduatedAtC: 31 }),
        'graduation temperature',
        31,
        '°C',
      ],
    ],
    densityByWeighing: [
      [() => densityByWeighing({ ...flask, volumeMl: 0 }), 'volume', 0, 'mL'],
      [
        () => densityByWeighing({ ...flask, volumeUncertaintyMl: -1 }),
        'volume uncertainty',
        -1,
        'mL',
      ],
      [() => densityByWeighing({ ...flask, massG: 0 }), 'mass', 0, 'g'],
      [() => densityByWeighing({ ...flask, scaleStepG: 0 }), 'scale step', 0, 'g'],
    ],
    flaskByWater: [[() => flaskByWater({ massG: 0, temperatureC: 20 }), 'mass', 0, 'g']],
    brixAt20: [
      [() => brixAt20({ brixReading: -1, temperatureC: 20 }), 'refractometer reading', -1, '°Bx'],
      [() => brixAt20({ brixReading: 20, temperatureC: 31 }), prism, 31, '°C'],
    ],
    readHydrometer: [
      [
        () => readHydrometer({ densityKgPerM3: 1000, temperatureC: 41 }, known),
        'temperature',
        41,
        '°C',
      ],
    ],
    readRefractometer: [
      [() => readRefractometer({ brix: 20, temperatureC: -1 }, known), 'temperature', -1, '°C'],
      [
        () => readRefractometer({ brix: 86, temperatureC: 20 }, known),
        'refractometer reading',
        86,
        '°Bx',
      ],
    ],
    solveOne: [
      [() => strengthAtSugar({ ...sighting, sugarGPerL: 1601 }), 'sugar', 1601, 'g/L'],
      [() => sugarAtStrength({ ...sighting, strengthPctVol: 101 }), 'strength', 101, '% vol'],
    ],
  })
})
