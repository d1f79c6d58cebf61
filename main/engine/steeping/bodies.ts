/** The three bodies of a jar, and what they come to when nothing more happens. */
import { addMatter, noMatter, type Matter } from '../../../shared/matter.ts'
import { liquidVolumeMl } from '../solution/liquid-volume.ts'
import { sucroseSolubility } from '../solution/sucrose-solubility.ts'

/** Liquid that pours, fruit with what it holds, undissolved sugar. */
export interface Bodies {
  readonly free: Matter
  readonly held: Matter
  readonly bed: Matter
}

export const emptyBodies: Bodies = Object.freeze({ free: noMatter, held: noMatter, bed: noMatter })

export const wholeOf = ({ free, held, bed }: Bodies): Matter =>
  addMatter(addMatter(free, held), bed)

/** Everything liquid in the jar once it has come to rest. */
export function restingLiquid(bodies: Bodies, temperatureC = 20): Matter {
  const total = wholeOf(bodies)
  const bedRestG = restingBedG(bodies, total, temperatureC)
  return { ...total, sugarG: total.sugarG - bedRestG, pulpG: 0 }
}

/** Sugar at the bottom that the jar's water and spirit together will never dissolve. */
export function restingBedG({ bed }: Bodies, total: Matter, temperatureC: number): number {
  const solubleG = total.waterG * gramsPerGramOfWater(total, temperatureC)
  return Math.min(bed.sugarG, Math.max(0, total.sugarG - solubleG))
}

function gramsPerGramOfWater({ ethanolG, waterG }: Matter, temperatureC: number): number {
  const liquidG = ethanolG + waterG
  return sucroseSolubility({
    ethanolMassFraction: liquidG === 0 ? 0 : ethanolG / liquidG,
    temperatureC,
  })
}

/** Share of all liquid that ends up inside fruit that can hold so much. */
export function heldShare(total: Matter, bedRestG: number, holdMl: number): number {
  const volumeMl = liquidVolumeMl({ ...total, sugarG: total.sugarG - bedRestG })
  return volumeMl <= holdMl ? 1 : holdMl / volumeMl
}
