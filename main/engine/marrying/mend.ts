/**
 * What mends a jar, and how much of it?
 *
 * A marriage of all that is in the jar with the least of what may be added. First on a sample of
 * 100 ml: the same amounts in proportion. For a haze there is no arithmetic but doses by volume:
 * bentonite 0.5 to 1 g/L, swollen in about 15 times its weight of water; common practice, no source.
 * In: the jar's liquid, wishes, what may be added. Leaves out: fruit still in the jar.
 */
import type { MarryWishes, MendReply } from '../../../shared/schemas/marrying.ts'
import { amountThere, type BlendPart } from './blend-part.ts'
import type { SolveLinear } from './linear-program.ts'
import { marry, type Married } from './marry.ts'

export const trialSampleMl = 100

const bentoniteGPerL = { low: 0.5, high: 1 } as const
const bentoniteWaterMlPerG = 15

export interface MendQuestion {
  /** The jar's own liquid. */
  readonly jar: BlendPart
  readonly additions: readonly BlendPart[]
  readonly wishes: MarryWishes
}

export type Mended = Pick<MendReply, 'trial' | 'haze'> & Omit<Married, 'bottles' | 'restMl'>

export function mend({ jar, additions, wishes }: MendQuestion, solve: SolveLinear): Mended {
  const inJarMl = amountThere(jar)
  const {
    bottles: _,
    restMl: __,
    ...married
  } = marry(
    {
      parts: [{ ...jar, least: inJarMl }, ...additions],
      wishes,
      prefer: 'useUp',
      holds: 'composition',
      amount: 'least',
    },
    solve,
  )
  const added = married.amounts.filter(({ place }) => place !== jar.place)
  const share = inJarMl > 0 ? trialSampleMl / inJarMl : 0
  const litres = inJarMl / 1000
  const doses = {
    low: bentoniteGPerL.low * litres,
    high: bentoniteGPerL.high * litres,
  }
  return {
    ...married,
    amounts: added,
    trial: {
      sampleMl: trialSampleMl,
      // A trial takes ml of an opened bottle, not a part of one.
      amounts: added.map(({ place, unit, amount, volumeMl }) =>
        unit === 'bottles'
          ? { place, unit: 'ml' as const, amount: volumeMl * share }
          : { place, unit, amount: amount * share },
      ),
      volumeMl: (married.liquid?.volumeMl ?? 0) * share,
    },
    haze: {
      bentoniteG: doses,
      bentoniteWaterMl: {
        low: doses.low * bentoniteWaterMlPerG,
        high: doses.high * bentoniteWaterMlPerG,
      },
    },
  }
}
