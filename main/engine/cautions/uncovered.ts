/** How much liquid is missing until loose fruit is covered: what its gaps take, less what pours. */
import type { JarState } from '../ledger/cellar-state.ts'
import { describeJar, freeVolumeMl } from '../ledger/jar-liquid.ts'

/** The liquid needed, and what there is; undefined where no fruit steeps, or it is covered. */
export function uncoveredBy(
  jarId: string,
  jar: JarState,
): { freeMl: number; gapsMl: number } | undefined {
  if (!jar.fruit || jar.stage !== 'steeping') return undefined
  const { heldMl, pulpMl } = describeJar(jarId, jar)
  const gapsMl = Math.max(0, jar.fruit.bulkMl - heldMl - pulpMl)
  const freeMl = freeVolumeMl(jar)
  // A tenth of the gaps is what bulk density cannot tell.
  return freeMl < 0.9 * gapsMl ? { freeMl, gapsMl } : undefined
}
