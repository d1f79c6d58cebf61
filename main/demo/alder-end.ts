/** Alder End: an invented house at the edge of an orchard, whose cellar book is the demo. */
import type { Dispatch } from '../service/service.ts'
import { cellarHand } from './cellar-hand.ts'
import { vessels } from './vessels.ts'

export async function fillDemo(dispatch: Dispatch, _now: Date): Promise<void> {
  const hand = cellarHand(dispatch)
  await hand.ask('cellar.changeSettings', { currency: 'EUR', units: 'metric' })
  await hand.ask('jars.add', { jars: [...vessels] })
}
