/** The colour a fruit's liqueur is drawn in where no batch gives it one of its own. */
import { useCallback } from 'react'
import { useFruits } from './use-names.ts'

const byFruit: Readonly<Record<string, string>> = {
  sour_cherry: '#8e1f36',
  sweet_cherry: '#7b1b2f',
  cornelian_cherry: '#a5283a',
  raspberry: '#b42b4c',
  strawberry: '#c8434a',
  blackcurrant: '#41163a',
  blackberry: '#4a1838',
  elderberry: '#3a1432',
  bilberry: '#3d1a45',
  blueberry: '#47224f',
  aronia: '#42142c',
  sloe: '#6d1f3c',
  damson: '#5a2048',
  plum: '#6b2740',
  green_walnut: '#3d2413',
  coffee: '#2f1a10',
}

const byKind: Readonly<Record<string, string>> = {
  berry: '#94294a',
  stoneFruit: '#b3552f',
  pome: '#c79a3a',
  citrus: '#d8922a',
  hip: '#b8472b',
  root: '#c8a04e',
  flower: '#cdb65e',
  spice: '#8a5a2b',
}

const amber = '#b07a35'

export function useFruitColour(): (fruitId: string | undefined) => string {
  const fruits = useFruits()
  return useCallback(
    (fruitId) => byFruit[fruitId ?? ''] ?? byKind[fruits.get(fruitId ?? '')?.kind ?? ''] ?? amber,
    [fruits],
  )
}
