/** Where the liquid that a curve shows will come to rest: of one jar, or of all poured together. */
import type { Banded, BatchForecast, JarForecast } from '../../shared/schemas/steeping.ts'

export interface RestingValues {
  readonly strengthPctVol: Banded
  readonly sugarGPerL: Banded
}

/**
 * Of a whole batch it is the mean of its jars by volume, which pouring together gives but for the
 * small contraction. Undefined while some of the batch's liquid is not on fruit: that does not move.
 */
export function restingValues(
  forecast: BatchForecast | undefined,
  key: string,
  jarIdsNow: readonly string[],
): RestingValues | undefined {
  if (!forecast) return undefined
  if (key !== 'whole') return forecast.jars.find(({ jarId }) => jarId === key)?.resting
  const { jars } = forecast
  const isAll = jarIdsNow.every((id) => jars.some(({ jarId }) => jarId === id))
  if (jars.length === 0 || !isAll) return undefined
  return {
    strengthPctVol: meanByVolume(jars, ({ resting }) => resting.strengthPctVol),
    sugarGPerL: meanByVolume(jars, ({ resting }) => resting.sugarGPerL),
  }
}

function meanByVolume(jars: readonly JarForecast[], of: (jar: JarForecast) => Banded): Banded {
  const total = jars.reduce((sum, jar) => sum + jar.resting.volumeMl.value, 0)
  const mean = (end: keyof Banded) =>
    jars.reduce((sum, jar) => sum + of(jar)[end] * jar.resting.volumeMl.value, 0) / total
  return { value: mean('value'), low: mean('low'), high: mean('high') }
}
