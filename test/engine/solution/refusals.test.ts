import { describe } from 'vitest'
import { composeLitre, composeSolution } from '../../../main/engine/solution/compose-solution.ts'
import { densityOfSucrose } from '../../../main/engine/solution/density-of-sucrose.ts'
import { densityOfWater } from '../../../main/engine/solution/density-of-water.ts'
import { describeSolution } from '../../../main/engine/solution/describe-solution.ts'
import { energyOf } from '../../../main/engine/solution/energy.ts'
import { legalCategory } from '../../../main/engine/solution/legal-category.ts'
import { liquidVolumeMl } from '../../../main/engine/solution/liquid-volume.ts'
import {
  brixOfRefractiveIndex,
  refractiveIndex,
  refractiveIndexOfBrix,
} from '../../../main/engine/solution/refraction.ts'
import { standardDrinks } from '../../../main/engine/solution/standard-drinks.ts'
import { sucroseSolubility } from '../../../main/engine/solution/sucrose-solubility.ts'
import { sweeten } from '../../../main/engine/solution/sweeten.ts'
import { massFractionOfSyrup } from '../../../main/engine/solution/syrup-of-density.ts'
import { namesWhatItRefuses } from '../refusal-tables.ts'

const liqueur = { strengthPctVol: 30, sugarGPerL: 200 }
const spirit = { ethanolG: 400, waterG: 600, sugarG: 0 }
const glass = { volumeMl: 35, ...liqueur }
const labelled = { ...liqueur, densityKgPerM3: 1040 }
const sweetened = { volumeMl: 1000, strengthPctVol: 40, targetSugarGPerL: 200 }
const syrup = 'temperature of syrup'

describe('solution', () => {
  namesWhatItRefuses({
    densityOfWater: [[() => densityOfWater(101), 'temperature of water', 101, '°C']],
    densityOfSucrose: [
      [
        () => densityOfSucrose({ massFraction: -0.1, temperatureC: 20 }),
        'mass fraction of sucrose',
        -0.1,
        'of 1',
      ],
      [() => densityOfSucrose({ massFraction: 0.5, temperatureC: 81 }), syrup, 81, '°C'],
    ],
    massFractionOfSyrup: [
      [() => massFractionOfSyrup({ densityKgPerM3: 1100, temperatureC: -1 }), syrup, -1, '°C'],
      [
        () => massFractionOfSyrup({ densityKgPerM3: 900, temperatureC: 20 }),
        'density of syrup',
        900,
        'kg/m³',
      ],
    ],
    sucroseSolubility: [
      [
        () => sucroseSolubility({ ethanolMassFraction: 2, temperatureC: 20 }),
        'mass fraction of ethanol',
        2,
        'of 1',
      ],
      [
        () => sucroseSolubility({ ethanolMassFraction: 0.3, temperatureC: 91 }),
        'temperature',
        91,
        '°C',
      ],
    ],
    liquidVolumeMl: [
      [() => liquidVolumeMl(spirit, 41), 'temperature', 41, '°C'],
      [() => liquidVolumeMl({ ...spirit, ethanolG: -1 }), 'ethanol', -1, 'g'],
      [() => liquidVolumeMl({ ...spirit, waterG: -2 }), 'water', -2, 'g'],
      [() => liquidVolumeMl({ ...spirit, sugarG: -3 }), 'sugar', -3, 'g'],
      [() => liquidVolumeMl({ ...spirit, acidG: -4 }), 'acid', -4, 'g'],
      [() => liquidVolumeMl({ ...spirit, solublesG: -5 }), 'other solubles', -5, 'g'],
    ],
    describeSolution: [
      [() => describeSolution({ ...spirit, temperatureC: 41 }), 'temperature', 41, '°C'],
      [() => describeSolution({ ethanolG: 0, waterG: 0, sugarG: 5 }), 'ethanol and water', 0, 'g'],
    ],
    composeSolution: [
      [() => composeSolution({ ...glass, volumeMl: 0 }), 'volume', 0, 'mL'],
      [() => composeSolution({ ...glass, temperatureC: -21 }), 'temperature', -21, '°C'],
    ],
    composeLitre: [
      [() => composeLitre({ ...liqueur, strengthPctVol: 101 }), 'strength', 101, '% vol'],
      [() => composeLitre({ ...liqueur, sugarGPerL: -1 }), 'sugar', -1, 'g/L'],
      [() => composeLitre({ ...liqueur, acidGPerL: -1 }), 'acid', -1, 'g/L'],
      [() => composeLitre({ ...liqueur, solublesGPerL: -1 }), 'other solubles', -1, 'g/L'],
    ],
    refraction: [
      [() => refractiveIndex({ ethanolG: 0, waterG: 0, sugarG: 5 }), 'ethanol and water', 0, 'g'],
      [() => brixOfRefractiveIndex(2), 'refractive index', 2, '(ratio)'],
      [() => refractiveIndexOfBrix(86), 'refractometer reading', 86, '°Bx'],
    ],
    sweeten: [[() => sweeten({ ...sweetened, sugarGPerL: 250 }), 'target sugar', 200, 'g/L']],
    energyOf: [
      [() => energyOf({ ...glass, volumeMl: 0 }), 'volume', 0, 'mL'],
      [() => energyOf({ ...glass, strengthPctVol: 101 }), 'strength', 101, '% vol'],
      [() => energyOf({ ...glass, sugarGPerL: 1601 }), 'sugar', 1601, 'g/L'],
      [() => energyOf({ ...glass, acidGPerL: -1 }), 'acid', -1, 'g/L'],
    ],
    standardDrinks: [
      [() => standardDrinks({ volumeMl: 0, strengthPctVol: 40 }), 'volume', 0, 'mL'],
      [() => standardDrinks({ volumeMl: 35, strengthPctVol: 101 }), 'strength', 101, '% vol'],
    ],
    legalCategory: [
      [() => legalCategory({ ...labelled, strengthPctVol: -1 }), 'strength', -1, '% vol'],
      [() => legalCategory({ ...labelled, sugarGPerL: -1 }), 'sugar', -1, 'g/L'],
      [() => legalCategory({ ...labelled, densityKgPerM3: 600 }), 'density', 600, 'kg/m³'],
    ],
  })
})
