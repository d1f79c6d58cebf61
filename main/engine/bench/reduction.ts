/**
 * The Bench's dilution: how much water, how much it makes, how sure the strength then is, and what
 * the straight rule V1 · C1 = V2 · C2 would have made of it.
 */
import type { BenchNote, BenchReply, BenchRequestOf } from '../../../shared/schemas/bench.ts'
import { usualFineness } from '../../../shared/fineness.ts'
import { densityOfSpiritExplained } from '../alcoholometry/density-of-spirit.ts'
import {
  reduce,
  reduceByWeight,
  reduceExplained,
  reduceToVolume,
  type Reduction,
} from '../alcoholometry/reduce.ts'
import { reductionShare } from '../readings/instruments.ts'
import { exactly, measured, propagate, type Measured } from '../readings/propagate.ts'
import { composeSolution } from '../solution/compose-solution.ts'
import { densityOfWater } from '../solution/density-of-water.ts'
import { describeSolution } from '../solution/describe-solution.ts'
import { answer, detail, jugMl, strongSpirit, taken } from './answer.ts'

/** % vol; the straight rule is worth a word where it errs by more. */
const noticeablePctVol = 0.1

const waterGPerMl = densityOfWater(20) / 1000

export function benchReduce(request: BenchRequestOf<'reduceByVolume'>): BenchReply {
  const { volumeMl, targetPctVol, fineness } = request
  const inputs = {
    volumeMl: jugMl(volumeMl, fineness?.volumeMl),
    strengthPctVol: strengthOf(request),
    targetPctVol: exactly(targetPctVol),
  }
  const found = propagate(inputs, (values) => ({ ...reduce(values) }), ownError)
  return {
    ...shared(found, inputs.volumeMl, inputs.strengthPctVol, targetPctVol),
    inputs: taken(inputs),
    results: [
      answer('water', 'volume', found.waterMl),
      detail('waterMass', 'mass', found.waterG),
      detail('result', 'volume', found.resultMl),
      detail('contraction', 'volume', found.contractionMl),
      reached(found, inputs.volumeMl, inputs.strengthPctVol),
    ],
  }
}

export function benchReduceByWeight(request: BenchRequestOf<'reduceByWeight'>): BenchReply {
  const { massG, targetPctVol, fineness } = request
  const inputs = {
    massG: measured(massG, fineness?.massG ?? usualFineness.scaleG),
    strengthPctVol: strengthOf(request),
    targetPctVol: exactly(targetPctVol),
  }
  const found = propagate(inputs, (values) => ({ ...reduceByWeight(values) }), ownError)
  const spiritMl = measured(
    found.spiritMl.value,
    (found.spiritMl.value * inputs.massG.uncertainty) / massG,
  )
  return {
    ...shared(found, found.spiritMl, inputs.strengthPctVol, targetPctVol),
    inputs: taken(inputs),
    results: [
      answer('waterMass', 'mass', found.waterG),
      detail('water', 'volume', found.waterMl),
      detail('result', 'volume', found.resultMl),
      detail('resultMass', 'mass', found.resultG),
      detail('contraction', 'volume', found.contractionMl),
      reached(found, spiritMl, inputs.strengthPctVol),
    ],
  }
}

export function benchReduceToVolume(request: BenchRequestOf<'reduceToVolume'>): BenchReply {
  const { resultMl, targetPctVol, fineness } = request
  const inputs = {
    resultMl: exactly(resultMl),
    strengthPctVol: strengthOf(request),
    targetPctVol: exactly(targetPctVol),
  }
  const found = propagate(inputs, (values) => ({ ...reduceToVolume(values) }), ownError)
  const jug = jugMl(resultMl, fineness?.resultMl)
  const spiritMl = measured(
    found.spiritMl.value,
    (found.spiritMl.value * jug.uncertainty) / resultMl,
  )
  return {
    ...shared(found, found.spiritMl, inputs.strengthPctVol, targetPctVol),
    inputs: taken({ ...inputs, resultMl: jug }),
    results: [
      answer('spirit', 'volume', found.spiritMl),
      answer('water', 'volume', found.waterMl),
      detail('waterMass', 'mass', found.waterG),
      detail('contraction', 'volume', found.contractionMl),
      reached(found, spiritMl, inputs.strengthPctVol),
    ],
  }
}

const strengthOf = (request: {
  strengthPctVol: number
  fineness?: { strengthPctVol?: number | undefined } | undefined
}): Measured =>
  measured(request.strengthPctVol, request.fineness?.strengthPctVol ?? usualFineness.labelPctVol)

type Reduced = Readonly<Record<keyof Reduction, Measured>>

function ownError<Found extends Reduction>({ resultMl }: Found) {
  const ownMl = reductionShare * resultMl
  return { waterMl: ownMl, waterG: ownMl, resultMl: ownMl, contractionMl: ownMl }
}

function shared(
  { waterMl, resultMl, contractionMl }: Reduced,
  spiritMl: Measured,
  strength: Measured,
  targetPctVol: number,
): Pick<BenchReply, 'notes' | 'explanations' | 'picture'> {
  return {
    notes: [
      ...strongSpirit(strength.value),
      ...straightRule(spiritMl.value, strength.value, targetPctVol),
    ],
    explanations: [reduceExplained, densityOfSpiritExplained],
    picture: {
      kind: 'dilution',
      spiritMl: spiritMl.value,
      spiritPctVol: strength.value,
      waterMl: waterMl.value,
      resultMl: resultMl.value,
      resultPctVol: targetPctVol,
      contractionMl: contractionMl.value,
    },
  }
}

/** The strength that this spirit and this water, measured as well as the spirit was, then have. */
function reached({ waterMl }: Reduced, spiritMl: Measured, strengthPctVol: Measured) {
  const water = measured(waterMl.value, (waterMl.value * spiritMl.uncertainty) / spiritMl.value)
  const found = propagate({ spiritMl, strengthPctVol, waterMl: water }, mixed)
  return detail('strengthReached', 'strength', found.strengthPctVol)
}

function mixed(pour: { spiritMl: number; strengthPctVol: number; waterMl: number }) {
  const { spiritMl, strengthPctVol, waterMl } = pour
  const spirit = composeSolution({ volumeMl: spiritMl, strengthPctVol, sugarGPerL: 0 })
  const waterG = spirit.waterG + Math.max(waterMl, 0) * waterGPerMl
  return { strengthPctVol: describeSolution({ ...spirit, waterG }).strengthPctVol }
}

function straightRule(spiritMl: number, strengthPctVol: number, targetPctVol: number): BenchNote[] {
  const waterMl = spiritMl * (strengthPctVol / targetPctVol - 1)
  const value = mixed({ spiritMl, strengthPctVol, waterMl }).strengthPctVol
  if (Math.abs(value - targetPctVol) < noticeablePctVol) return []
  return [{ code: 'straightRule', value, dimension: 'strength' }]
}
