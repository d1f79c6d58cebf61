/** The Bench's instruments for spirit without sugar: alcoholometer, density tables, proof. */
import type { BenchNote, BenchReply, BenchRequestOf } from '../../../shared/schemas/bench.ts'
import { usualFineness } from '../../../shared/fineness.ts'
import { densityOfSpirit, densityOfSpiritExplained } from '../alcoholometry/density-of-spirit.ts'
import {
  fahrenheitOfCelsius,
  massFractionOfProof,
  proofExplained,
  proofOfStrength,
  strengthOfProof,
  trueProof,
} from '../alcoholometry/proof.ts'
import {
  massFractionOfDensity,
  strengthOfDensityExplained,
} from '../alcoholometry/strength-of-density.ts'
import { massFractionOfStrength, strengthOfMassFraction } from '../alcoholometry/strength.ts'
import { trueStrength, trueStrengthExplained } from '../alcoholometry/true-strength.ts'
import { correctionPctVol, rootSumSquare, spiritDensityKgPerM3 } from '../readings/instruments.ts'
import { measured, propagate } from '../readings/propagate.ts'
import { apparentStrength } from '../solution/apparent-strength.ts'
import { answer, detail, strongSpirit, taken } from './answer.ts'

export function benchAlcoholometer(request: BenchRequestOf<'alcoholometer'>): BenchReply {
  const { readingPctVol, temperatureC, fineness } = request
  const inputs = {
    readingPctVol: measured(
      readingPctVol,
      fineness?.readingPctVol ?? usualFineness.alcoholometerPctVol,
    ),
    temperatureC: thermometer(temperatureC, fineness),
  }
  const found = propagate(
    inputs,
    (shown) => {
      const strengthPctVol = trueStrength(shown)
      const massFraction = massFractionOfStrength(strengthPctVol)
      const densityAt20 = densityOfSpirit({ massFraction, temperatureC: 20 })
      return { strengthPctVol, densityAt20, massPct: 100 * massFraction }
    },
    () => ({ strengthPctVol: correctionPctVol }),
  )
  const strengthPctVol = found.strengthPctVol.value
  return {
    inputs: taken(inputs),
    results: [
      answer('strength', 'strength', found.strengthPctVol),
      detail('densityAt20', 'density', found.densityAt20),
      detail('massShare', 'massShare', found.massPct),
    ],
    notes: [...strongSpirit(strengthPctVol), ...sugarMisleads(strengthPctVol)],
    explanations: [trueStrengthExplained, densityOfSpiritExplained],
    reading: { instrument: 'alcoholometer', readingPctVol, temperatureC },
  }
}

/** What as little as 10 g/L of sugar would hide. */
export function sugarMisleads(strengthPctVol: number): BenchNote[] {
  if (strengthPctVol < 5 || strengthPctVol > 95) return []
  const { readingPctVol } = apparentStrength({ strengthPctVol, sugarGPerL: 10 })
  if (readingPctVol === undefined) return []
  return [{ code: 'sugarMisleads', value: strengthPctVol - readingPctVol, dimension: 'strength' }]
}

export function benchDensityToStrength(request: BenchRequestOf<'densityToStrength'>): BenchReply {
  const { densityKgPerM3, temperatureC, fineness } = request
  const fine = fineness?.densityKgPerM3 ?? usualFineness.hydrometerKgPerM3
  const inputs = {
    densityKgPerM3: measured(densityKgPerM3, fine),
    temperatureC: thermometer(temperatureC, fineness),
  }
  const found = propagate(
    {
      ...inputs,
      densityKgPerM3: measured(densityKgPerM3, rootSumSquare(fine, spiritDensityKgPerM3)),
    },
    strengthAndShare,
  )
  return {
    inputs: taken(inputs),
    results: [
      answer('strength', 'strength', found.strengthPctVol),
      detail('massShare', 'massShare', found.massPct),
      detail('densityAt20', 'density', found.densityAt20),
    ],
    notes: strongSpirit(found.strengthPctVol.value),
    explanations: [strengthOfDensityExplained, densityOfSpiritExplained],
  }
}

/** What the density of a spirit tells. */
export function strengthAndShare(shown: { densityKgPerM3: number; temperatureC: number }) {
  const massFraction = massFractionOfDensity(shown)
  return {
    strengthPctVol: strengthOfMassFraction(massFraction),
    massPct: 100 * massFraction,
    densityAt20: densityOfSpirit({ massFraction, temperatureC: 20 }),
  }
}

export function benchStrengthToDensity(request: BenchRequestOf<'strengthToDensity'>): BenchReply {
  const { strengthPctVol, temperatureC, fineness } = request
  const inputs = {
    strengthPctVol: measured(strengthPctVol, fineness?.strengthPctVol ?? usualFineness.labelPctVol),
    temperatureC: thermometer(temperatureC, fineness),
  }
  const found = propagate(
    inputs,
    (known) => {
      const massFraction = massFractionOfStrength(known.strengthPctVol)
      return {
        density: densityOfSpirit({ massFraction, temperatureC: known.temperatureC }),
        densityAt20: densityOfSpirit({ massFraction, temperatureC: 20 }),
        massPct: 100 * massFraction,
      }
    },
    () => ({ density: spiritDensityKgPerM3, densityAt20: spiritDensityKgPerM3 }),
  )
  return {
    inputs: taken(inputs),
    results: [
      answer('density', 'density', found.density),
      detail('densityAt20', 'density', found.densityAt20),
      detail('massShare', 'massShare', found.massPct),
    ],
    notes: strongSpirit(strengthPctVol),
    explanations: [densityOfSpiritExplained],
  }
}

export function benchProofToStrength(request: BenchRequestOf<'proofToStrength'>): BenchReply {
  const { proof, fineness } = request
  const inputs = { proof: measured(proof, fineness?.proof ?? 2 * usualFineness.labelPctVol) }
  const found = propagate(inputs, (known) => ({
    strengthPctVol: strengthOfProof(known.proof),
    massPct: 100 * massFractionOfProof(known.proof),
  }))
  return {
    inputs: taken(inputs),
    results: [
      answer('strength', 'strength', found.strengthPctVol),
      detail('massShare', 'massShare', found.massPct),
    ],
    notes: strongSpirit(found.strengthPctVol.value),
    explanations: [proofExplained],
  }
}

export function benchStrengthToProof(request: BenchRequestOf<'strengthToProof'>): BenchReply {
  const { strengthPctVol, fineness } = request
  const inputs = {
    strengthPctVol: measured(strengthPctVol, fineness?.strengthPctVol ?? usualFineness.labelPctVol),
  }
  const found = propagate(inputs, (known) => ({
    proof: proofOfStrength(known.strengthPctVol),
    massPct: 100 * massFractionOfStrength(known.strengthPctVol),
  }))
  return {
    inputs: taken(inputs),
    results: [
      answer('proof', 'proof', found.proof),
      detail('massShare', 'massShare', found.massPct),
    ],
    notes: strongSpirit(strengthPctVol),
    explanations: [proofExplained],
  }
}

export function benchProofHydrometer(request: BenchRequestOf<'proofHydrometer'>): BenchReply {
  const { proof, temperatureC, fineness } = request
  const inputs = {
    proof: measured(proof, fineness?.proof ?? 2 * usualFineness.alcoholometerPctVol),
    temperatureC: thermometer(temperatureC, fineness),
  }
  const found = propagate(
    inputs,
    (shown) => {
      const temperatureF = fahrenheitOfCelsius(shown.temperatureC)
      const corrected = trueProof({ readingProof: shown.proof, temperatureF })
      return { proof: corrected, strengthPctVol: strengthOfProof(corrected) }
    },
    () => ({ proof: 2 * correctionPctVol, strengthPctVol: correctionPctVol }),
  )
  const strengthPctVol = found.strengthPctVol.value
  return {
    inputs: taken(inputs),
    results: [
      answer('proof', 'proof', found.proof),
      answer('strength', 'strength', found.strengthPctVol),
    ],
    notes: [...strongSpirit(strengthPctVol), ...sugarMisleads(strengthPctVol)],
    explanations: [proofExplained, trueStrengthExplained],
  }
}

export const thermometer = (
  temperatureC: number,
  fineness: { temperatureC?: number | undefined } | undefined,
) => measured(temperatureC, fineness?.temperatureC ?? usualFineness.thermometerC)
