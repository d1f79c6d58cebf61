/** The Bench's volume at 20 °C, and at 60 °F where the liquid has no sugar. */
import type { BenchReply, BenchRequestOf } from '../../../shared/schemas/bench.ts'
import { volumeAtSixtyFahrenheit } from '../alcoholometry/proof.ts'
import { expansionShare } from '../readings/instruments.ts'
import { exactly, propagate } from '../readings/propagate.ts'
import { liquidVolumeExplained } from '../solution/liquid-volume.ts'
import { volumeAt20, volumeAt20Explained } from '../solution/volume-at-20.ts'
import { answer, detail, jugMl, strongSpirit, taken } from './answer.ts'
import { thermometer } from './spirit.ts'

export function benchVolumeAt20(request: BenchRequestOf<'volumeAt20'>): BenchReply {
  const { volumeMl, temperatureC, strengthPctVol = 0, sugarGPerL = 0, fineness } = request
  const inputs = {
    volumeMl: jugMl(volumeMl, fineness?.volumeMl),
    temperatureC: thermometer(temperatureC, fineness),
  }
  const found = propagate(
    inputs,
    (jug) => {
      const at20 = volumeAt20({ ...jug, strengthPctVol, sugarGPerL })
      return { at20, change: at20 - jug.volumeMl }
    },
    ({ at20 }) => ({ at20: expansionShare * at20, change: expansionShare * at20 }),
  )
  const results = [
    answer('volumeAt20', 'volume', found.at20),
    detail('volumeChange', 'volume', found.change),
  ]
  if (sugarGPerL === 0) {
    const { at60F } = propagate(
      inputs,
      (jug) => ({ at60F: volumeAtSixtyFahrenheit({ ...jug, strengthPctVol }) }),
      (volume) => ({ at60F: expansionShare * volume.at60F }),
    )
    results.push(detail('volumeAt60F', 'volume', at60F))
  }
  return {
    inputs: taken({
      ...inputs,
      strengthPctVol: exactly(strengthPctVol),
      sugarGPerL: exactly(sugarGPerL),
    }),
    results,
    notes: strongSpirit(strengthPctVol),
    explanations: [volumeAt20Explained, liquidVolumeExplained],
  }
}
