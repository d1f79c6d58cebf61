/** The Bench's sweetening: how much sugar, what it makes, and whether it all dissolves. */
import type { BenchNote, BenchReply, BenchRequestOf } from '../../../shared/schemas/bench.ts'
import { usualFineness } from '../../../shared/fineness.ts'
import { sugarRoomMlPerG } from '../readings/instruments.ts'
import { exactly, measured, propagate } from '../readings/propagate.ts'
import { composeSolution } from '../solution/compose-solution.ts'
import { liquidVolumeExplained } from '../solution/liquid-volume.ts'
import { sucroseSolubility, sucroseSolubilityExplained } from '../solution/sucrose-solubility.ts'
import { sweeten, sweetenExplained } from '../solution/sweeten.ts'
import { answer, detail, jugMl, strongSpirit, taken } from './answer.ts'

export function benchSweeten(request: BenchRequestOf<'sweeten'>): BenchReply {
  const { volumeMl, strengthPctVol, sugarGPerL = 0, targetSugarGPerL, fineness } = request
  const sugarFine = sugarGPerL === 0 ? 0 : usualFineness.sugarGPerL
  const inputs = {
    volumeMl: jugMl(volumeMl, fineness?.volumeMl),
    strengthPctVol: measured(strengthPctVol, fineness?.strengthPctVol ?? usualFineness.labelPctVol),
    sugarGPerL: measured(sugarGPerL, fineness?.sugarGPerL ?? sugarFine),
    targetSugarGPerL: exactly(targetSugarGPerL),
  }
  const found = propagate(
    inputs,
    (liquid) => {
      const { sugarG, resultMl, resultPctVol, addedMl } = sweeten(liquid)
      return { sugarG, resultMl, resultPctVol, addedMl }
    },
    ({ sugarG, resultMl, resultPctVol }) => {
      const roomMl = sugarRoomMlPerG * sugarG
      return {
        sugarG: (targetSugarGPerL / 1000) * roomMl,
        resultMl: roomMl,
        addedMl: roomMl,
        resultPctVol: (resultPctVol * roomMl) / resultMl,
      }
    },
  )
  return {
    inputs: taken({ ...inputs, temperatureC: exactly(request.temperatureC) }),
    results: [
      answer('sugarToAdd', 'mass', found.sugarG),
      detail('result', 'volume', found.resultMl),
      detail('strengthAfter', 'strength', found.resultPctVol),
      detail('sugarRoom', 'volume', found.addedMl),
    ],
    notes: [...undissolved(request, found.sugarG.value), ...strongSpirit(strengthPctVol)],
    explanations: [sweetenExplained, sucroseSolubilityExplained, liquidVolumeExplained],
  }
}

/** By the guide of what the liquid's water holds at that temperature. */
function undissolved(request: BenchRequestOf<'sweeten'>, addedG: number): BenchNote[] {
  const { volumeMl, strengthPctVol, sugarGPerL = 0, temperatureC } = request
  const { ethanolG, waterG, sugarG } = composeSolution({ volumeMl, strengthPctVol, sugarGPerL })
  const ethanolMassFraction = ethanolG / (ethanolG + waterG)
  const solubleG = waterG * sucroseSolubility({ ethanolMassFraction, temperatureC })
  const leftG = sugarG + addedG - solubleG
  return leftG > 0 ? [{ code: 'undissolved', value: leftG, dimension: 'mass' }] : []
}
