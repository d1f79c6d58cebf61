/** The twelve vessels of Alder End, and which of them stands empty when one is needed. */
import type { Jar, JarShape } from '../../shared/schemas/cellar.ts'
import type { CellarHand } from './cellar-hand.ts'

const vessel = (id: string, name: string, shape: JarShape, litres: number): Jar => ({
  id,
  name,
  shape,
  capacityMl: 1000 * litres,
  isRetired: false,
})

export const vessels: readonly Jar[] = [
  vessel('thimble', 'Thimble', 'jar', 1.5),
  vessel('blue-lid', 'Blue lid', 'jar', 2),
  vessel('window', 'Window jar', 'jar', 3),
  vessel('red-lid', 'Red lid', 'jar', 3),
  vessel('stair', 'Stair jar', 'jar', 4),
  vessel('chipped', 'Chipped rim', 'jar', 5),
  vessel('orchard', 'Orchard jar', 'jar', 5),
  vessel('crock', 'Old crock', 'crock', 10),
  vessel('flask', 'Flask', 'flask', 2.5),
  vessel('green', 'Green demijohn', 'demijohn', 5),
  vessel('small-wicker', 'Little wicker', 'demijohn', 5),
  vessel('wicker', 'Wicker demijohn', 'demijohn', 10),
]

/** Fruit goes through a wide mouth; liquid stands best behind a narrow one. */
const liked = {
  fruit: ['jar', 'crock'],
  liquid: ['demijohn', 'flask'],
} as const satisfies Record<string, readonly JarShape[]>

/** How full a careful maker fills a vessel; the safe line is at 95 %. */
const fullest = 0.93

/** The smallest empty vessel that takes the volume, of a liked shape where there is one. */
export async function emptyVessel(
  hand: CellarHand,
  use: keyof typeof liked,
  volumeMl: number,
): Promise<string> {
  const shapes: readonly JarShape[] = liked[use]
  const isLiked = ({ shape }: Jar) => shapes.includes(shape)
  const [found] = (await hand.ask('jars.list', {}))
    .filter(({ jar, contents }) => !contents && fullest * jar.capacityMl >= volumeMl)
    .map(({ jar }) => jar)
    .filter((jar) => use === 'liquid' || isLiked(jar))
    .sort((a, b) => Number(isLiked(b)) - Number(isLiked(a)) || a.capacityMl - b.capacityMl)
  if (!found) throw new Error(`Alder End has no empty vessel for ${volumeMl.toFixed(0)} mL`)
  return found.id
}
