import { describe } from 'vitest'
import { densityOfSpirit } from '../../../main/engine/alcoholometry/density-of-spirit.ts'
import {
  strengthOfProof,
  trueProof,
  volumeAtSixtyFahrenheit,
} from '../../../main/engine/alcoholometry/proof.ts'
import {
  reduce,
  reduceByWeight,
  reduceToVolume,
} from '../../../main/engine/alcoholometry/reduce.ts'
import { strengthOfDensity } from '../../../main/engine/alcoholometry/strength-of-density.ts'
import {
  massFractionOfStrength,
  strengthOfMassFraction,
} from '../../../main/engine/alcoholometry/strength.ts'
import { trueStrength } from '../../../main/engine/alcoholometry/true-strength.ts'
import { namesWhatItRefuses } from '../refusal-tables.ts'

const toForty = { strengthPctVol: 96, targetPctVol: 40 }
const litre = { volumeMl: 1000, ...toForty }
const fraction = 'mass fraction of ethanol'

describe('alcoholometry', () => {
  namesWhatItRefuses({
    densityOfSpirit: [
      [() => densityOfSpirit({ massFraction: 1.1, temperatureC: 20 }), fraction, 1.1, 'of 1'],
      [() => densityOfSpirit({ massFraction: 0.4, temperatureC: 41 }), 'temperature', 41, '°C'],
    ],
    strengthOfMassFraction: [[() => strengthOfMassFraction(-0.1), fraction, -0.1, 'of 1']],
    massFractionOfStrength: [[() => massFractionOfStrength(101), 'strength', 101, '% vol']],
    trueStrength: [
      [
        () => trueStrength({ readingPctVol: 101, temperatureC: 20 }),
        'alcoholometer reading',
        101,
        '% vol',
      ],
      [() => trueStrength({ readingPctVol: 40, temperatureC: -21 }), 'temperature', -21, '°C'],
    ],
    strengthOfDensity: [
      [() => strengthOfDensity({ densityKgPerM3: 950, temperatureC: 41 }), 'temperature', 41, '°C'],
      [
        () => strengthOfDensity({ densityKgPerM3: 700, temperatureC: 20 }),
        'density of spirit',
        700,
        'kg/m³',
      ],
    ],
    strengthOfProof: [[() => strengthOfProof(201), 'proof', 201, 'proof']],
    trueProof: [
      [() => trueProof({ readingProof: 80, temperatureF: 200 }), 'temperature', 200, '°F'],
    ],
    volumeAtSixtyFahrenheit: [
      [
        () => volumeAtSixtyFahrenheit({ volumeMl: 0, strengthPctVol: 40, temperatureC: 20 }),
        'volume',
        0,
        'mL',
      ],
      [
        () => volumeAtSixtyFahrenheit({ volumeMl: 1, strengthPctVol: 40, temperatureC: 41 }),
        'temperature',
        41,
        '°C',
      ],
    ],
    reduce: [
      [() => reduce({ ...litre, volumeMl: 0 }), 'volume', 0, 'mL'],
      [() => reduce({ ...litre, strengthPctVol: 101 }), 'strength', 101, '% vol'],
      [() => reduce({ ...litre, targetPctVol: 97 }), 'target strength', 97, '% vol'],
    ],
    reduceByWeight: [[() => reduceByWeight({ massG: 0, ...toForty }), 'mass', 0, 'g']],
    reduceToVolume: [[() => reduceToVolume({ resultMl: -1, ...toForty }), 'volume', -1, 'mL']],
  })
})
