/**
 * How long the red of each fruit lasts: anthocyanins only. Browns and yellows are not modelled, so
 * quince, walnut, citrus, ginger and all others that are not named here have no colour model.
 */

/** Classes of the craft reference, by how well the anthocyanins keep. */
export type ColourStability = 'stable' | 'medium' | 'labile'

/**
 * Weeks at 20 °C in the dark until half is left. Stable: from liqueurs at 30 °C (Sokół-Łętowska et
 * al. 2018) and sour cherry juice at 20 °C (Bonerz et al. 2007). Labile: blackcurrant juice at 21 °C
 * was found at 3. Medium is an estimate between the two.
 */
export const halfLifeWeeksAt20C = {
  stable: { typical: 14, low: 9, high: 20 },
  medium: { typical: 7, low: 3, high: 12 },
  labile: { typical: 4, low: 2, high: 8 },
} as const

const named = {
  stable: ['sour_cherry', 'aronia', 'sloe'],
  medium: ['raspberry', 'blackberry', 'redcurrant', 'bilberry'],
  labile: ['strawberry', 'blackcurrant'],
} as const

/** Red fruits without figures of their own, taken as like one that has: an estimate. */
const like = [
  'sweet_cherry',
  'cornelian_cherry',
  'damson',
  'plum',
  'elderberry',
  'cranberry',
  'lingonberry',
  'blueberry',
  'haskap',
  'mulberry',
  'grape',
  'pomegranate',
] as const

const stabilities: ReadonlyMap<string, ColourStability> = new Map([
  ...named.stable.map((id) => [id, 'stable'] as const),
  ...named.medium.map((id) => [id, 'medium'] as const),
  ...named.labile.map((id) => [id, 'labile'] as const),
  ...like.map((id) => [id, 'medium'] as const),
])

/** Undefined where the fruit has no anthocyanins to speak of. */
export const colourStabilityOf = (fruitId: string): ColourStability | undefined =>
  stabilities.get(fruitId)

/** For a test that holds the list against the library. */
export const redFruitIds: readonly string[] = [...stabilities.keys()]
