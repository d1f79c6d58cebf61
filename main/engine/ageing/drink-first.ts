/**
 * Which lots lose by waiting, the one that loses most first?
 *
 * Method: opened bottles by when they are at their best no longer, then lots that fade, the longest
 * first, then those that will within half a year, then red ones that are ready and lose two fifths
 * of the colour they have in a quarter of a year while a quarter of it is still there; half a year
 * and both shares are estimates. In: lots, ms. Out: each lot once, by its first reason.
 * Leaves out: lots that are young and sound, and what the maker likes.
 * @example drinkFirst([], 0) // []
 */
import { msPerMonth } from './storage.ts'
import type { FirstToDrink, WaitingLot } from './stock-question.ts'

const soonMonths = 6
const losesAShare = 0.4
const worthKeeping = 0.25

type Reason = FirstToDrink['because']
const order: readonly Reason[] = ['opened', 'fading', 'fadingSoon', 'colour']

/** The reason, and what it is sorted by among its like: the least first. */
interface Urge {
  readonly told: Omit<FirstToDrink, 'bottleLotId'>
  readonly rank: number
}

export function drinkFirst(lots: readonly WaitingLot[], nowMs: number): FirstToDrink[] {
  return lots
    .flatMap(({ bottleLotId, ...lot }) => {
      const urge = urgeOf(lot, nowMs)
      return urge ? [{ rank: urge.rank, first: { bottleLotId, ...urge.told } }] : []
    })
    .sort(
      (a, b) =>
        order.indexOf(a.first.because) - order.indexOf(b.first.because) ||
        a.rank - b.rank ||
        (a.first.bottleLotId < b.first.bottleLotId ? -1 : 1),
    )
    .map(({ first }) => first)
}

function urgeOf(
  { window, openedBestByMs, colour }: Omit<WaitingLot, 'bottleLotId'>,
  nowMs: number,
): Urge | undefined {
  const { phase, fadingAtMs } = window
  if (openedBestByMs.length > 0) {
    const byMs = Math.min(...openedBestByMs.map(({ likely }) => likely))
    return { told: { because: 'opened', byMs }, rank: byMs }
  }
  if (phase === 'fading') return { told: { because: 'fading' }, rank: fadingAtMs.likely }
  if (phase === 'ready' && fadingAtMs.likely < nowMs + soonMonths * msPerMonth)
    return { told: { because: 'fadingSoon', byMs: fadingAtMs.likely }, rank: fadingAtMs.likely }
  if (phase !== 'ready' || !colour || colour.now < worthKeeping) return undefined
  const lost = 1 - colour.inAQuarter / colour.now
  return lost >= losesAShare ? { told: { because: 'colour' }, rank: -lost } : undefined
}
