/**
 * How fast does liquid pass in and out of a fruit?
 *
 * Method: first-order half-times by kinetic class at 20 °C, turned daily. No day-by-day series of
 * steeping was ever published to our knowledge: all are engineering estimates (code E), good to a
 * factor of 2 to 3. Sugar on raw fruit draws its juice at paces of their own, in hours there.
 * In: kinetic class and how the fruit was cut. Out: days.
 * Leaves out: temperature, piece size, and the lag of a jar that nobody turns.
 * @example halfTimesOf('thinSkin', 'whole').ethanol // 2
 */
import type { KineticClass } from '../../../shared/schemas/fruits.ts'
import type { Cut } from '../../../shared/schemas/moves.ts'

export interface DaysRange {
  readonly typical: number
  readonly low: number
  readonly high: number
}

export interface HalfTimeRow {
  readonly ethanol: DaysRange
  /** Sugar, acid and what tastes. */
  readonly extract: DaysRange
  readonly colour: DaysRange
  /** Juice leaving raw, living fruit under sugar. */
  readonly osmosis: DaysRange
  readonly source: string
}

const days = (typical: number, low: number, high: number): DaysRange => ({ typical, low, high })
const hours = (typical: number, low: number, high: number) =>
  days(typical / 24, low / 24, high / 24)

const osmosisCut = hours(12, 6, 24)
const osmosisWhole = hours(36, 18, 72)
const osmosisSliced = hours(24, 12, 48)

export const halfTimeTable: Readonly<Record<KineticClass, HalfTimeRow>> = {
  cutSoft: {
    ethanol: days(0.3, 0.1, 1),
    extract: days(0.6, 0.2, 2),
    colour: days(1, 0.3, 3),
    osmosis: osmosisCut,
    source: 'E',
  },
  softWhole: {
    ethanol: days(0.8, 0.3, 2.5),
    extract: days(1.5, 0.5, 4),
    colour: days(2, 1, 6),
    osmosis: osmosisWhole,
    source: 'E',
  },
  thinSkin: {
    ethanol: days(2, 0.7, 6),
    extract: days(4, 1.5, 10),
    colour: days(5, 2, 14),
    osmosis: osmosisWhole,
    source: 'E',
  },
  waxySkin: {
    ethanol: days(5, 2, 15),
    extract: days(9, 3, 25),
    colour: days(12, 4, 35),
    osmosis: osmosisWhole,
    source: 'E',
  },
  hardSlice: {
    ethanol: days(0.5, 0.15, 1.5),
    extract: days(1.2, 0.4, 4),
    colour: days(2, 0.7, 6),
    osmosis: osmosisSliced,
    source: 'E',
  },
  // Dry goods hold no living cells; their osmosis is never asked for and stands as cut tissue.
  dry: {
    ethanol: days(0.5, 0.1, 2),
    extract: days(1, 0.3, 5),
    colour: days(1, 0.3, 5),
    osmosis: osmosisCut,
    source: 'E',
  },
  driedFruit: {
    ethanol: days(2, 0.7, 5),
    extract: days(3, 1, 8),
    colour: days(3, 1, 8),
    osmosis: osmosisCut,
    source: 'E',
  },
}

/** Holes in a skin let three times as much through (1.5 to 10; estimate). */
export const prickingFactor = 3

/**
 * The row for a fruit cut in a given way. Cut, crushed or thawed flesh behaves as cut soft tissue
 * whatever its class; hard fruit is sliced in its own row already. Pricking helps where a skin is
 * what slows the liquid down. Dry and dried goods pass liquid the same however they are broken.
 */
export function halfTimeRowOf(kineticClass: KineticClass, cut: Cut): HalfTimeRow {
  const row = halfTimeTable[kineticClass]
  if (kineticClass === 'dry' || kineticClass === 'driedFruit') return row
  if (cut === 'crushed' || cut === 'frozen') return halfTimeTable.cutSoft
  if (cut === 'cut') return kineticClass === 'hardSlice' ? row : halfTimeTable.cutSoft
  const isSkinLimited = kineticClass === 'thinSkin' || kineticClass === 'waxySkin'
  return cut === 'pricked' && isSkinLimited ? pricked(row) : row
}

const faster = ({ typical, low, high }: DaysRange): DaysRange =>
  days(typical / prickingFactor, low / prickingFactor, high / prickingFactor)

function pricked(row: HalfTimeRow): HalfTimeRow {
  const { ethanol, extract, colour } = row
  return { ...row, ethanol: faster(ethanol), extract: faster(extract), colour: faster(colour) }
}

/** Typical half-times in days, as the steeping model takes them. */
export function halfTimesOf(
  kineticClass: KineticClass,
  cut: Cut,
): { ethanol: number; extract: number; osmosis: number } {
  const { ethanol, extract, osmosis } = halfTimeRowOf(kineticClass, cut)
  return { ethanol: ethanol.typical, extract: extract.typical, osmosis: osmosis.typical }
}
