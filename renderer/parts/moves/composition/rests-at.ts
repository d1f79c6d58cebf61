/** Whether a jar is still on its way to somewhere else than where it stands. */
import type { JarContents, Liquid } from '../../../../shared/schemas/cellar.ts'

/** Where fruit or sugar will bring the liquid, when that differs by more than anyone could taste. */
export function restsAt({ liquid, resting }: JarContents): Liquid | undefined {
  if (!resting) return undefined
  if (!liquid) return resting
  const isThere =
    Math.abs(resting.strengthPctVol - liquid.strengthPctVol) < 0.3 &&
    Math.abs(resting.sugarGPerL - liquid.sugarGPerL) < 3
  return isThere ? undefined : resting
}
