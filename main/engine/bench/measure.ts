/** Any instrument of the Bench by its name; throws a DomainError for what cannot be. */
import type { BenchReply, BenchRequest } from '../../../shared/schemas/bench.ts'
import { benchHydrometer, benchWeighing, benchWeighingByWater } from './density.ts'
import { benchGlass } from './glass.ts'
import { benchApparentStrength, benchBoilOff, benchTwoInstruments } from './liqueur.ts'
import { benchReduce, benchReduceByWeight, benchReduceToVolume } from './reduction.ts'
import {
  benchAlcoholometer,
  benchDensityToStrength,
  benchProofHydrometer,
  benchProofToStrength,
  benchStrengthToDensity,
  benchStrengthToProof,
} from './spirit.ts'
import { benchSweeten } from './sweetening.ts'
import {
  benchRefractometer,
  benchSyrupOfBrix,
  benchSyrupOfDensity,
  benchSyrupOfSugar,
} from './syrup.ts'
import { benchVolumeAt20 } from './volume.ts'

export function measure(request: BenchRequest): BenchReply {
  switch (request.instrument) {
    case 'reduceByVolume':
      return benchReduce(request)
    case 'reduceByWeight':
      return benchReduceByWeight(request)
    case 'reduceToVolume':
      return benchReduceToVolume(request)
    case 'alcoholometer':
      return benchAlcoholometer(request)
    case 'hydrometer':
      return benchHydrometer(request)
    case 'refractometer':
      return benchRefractometer(request)
    case 'volumeAt20':
      return benchVolumeAt20(request)
    case 'proofToStrength':
      return benchProofToStrength(request)
    case 'strengthToProof':
      return benchStrengthToProof(request)
    case 'proofHydrometer':
      return benchProofHydrometer(request)
    case 'densityToStrength':
      return benchDensityToStrength(request)
    case 'strengthToDensity':
      return benchStrengthToDensity(request)
    case 'syrupOfBrix':
      return benchSyrupOfBrix(request)
    case 'syrupOfDensity':
      return benchSyrupOfDensity(request)
    case 'syrupOfSugar':
      return benchSyrupOfSugar(request)
    case 'apparentStrength':
      return benchApparentStrength(request)
    case 'boilOff':
      return benchBoilOff(request)
    case 'hydrometerAndRefractometer':
      return benchTwoInstruments(request)
    case 'weighing':
      return benchWeighing(request)
    case 'weighingByWater':
      return benchWeighingByWater(request)
    case 'sweeten':
      return benchSweeten(request)
    case 'glass':
      return benchGlass(request)
  }
}
