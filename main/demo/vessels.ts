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

/** Fruit goes through a wide mouth; liquid stands behind a narrow one, or in a jar too small for fruit. */
const suits = {
  fruit: ({ shape }: Jar) => shape === 'jar' || shape === 'crock',
  liquid: ({ shape, capacityMl }: Jar) =>
    shape === 'demijohn' || shape === 'flask' || capacityMl <= 2000,
} as const

/** Liquid takes a fruit jar only where its other choice is this much larger. */
const reluctance = 4

/** How full a careful maker fills a vessel; the safe line is at 95 %. */
const fullest = 0.93

export interface Room {
  readonly jarId: string
  /** What a careful maker would put in. */
  readonly roomMl: number
}

/**
 * The empty vessel that fits the wished volume best; where all are too small, the largest that
 * takes at least `leastMl`; with none at all, one from next door.
 */
export async function emptyVessel(
  hand: CellarHand,
  use: keyof typeof suits,
  wanted: { wishMl: number; leastMl?: number },
): Promise<Room> {
  return (await vesselIfAny(hand, use, wanted)) ?? borrowed(hand, use, wanted.wishMl)
}

/** A crowded autumn: the house next door has one to lend, and never asks for it back. */
async function borrowed(hand: CellarHand, use: keyof typeof suits, wishMl: number): Promise<Room> {
  const { length } = await hand.ask('jars.list', {})
  const litres = 5 * Math.ceil(wishMl / fullest / 5000)
  const shape = use === 'fruit' ? 'crock' : 'demijohn'
  const jar = vessel(
    `lent-${length}`,
    `Lent ${shape} ${length - vessels.length + 1}`,
    shape,
    litres,
  )
  await hand.ask('jars.add', { jars: [jar] })
  return { jarId: jar.id, roomMl: fullest * jar.capacityMl }
}

/** The same, for who can do without. */
export async function vesselIfAny(
  hand: CellarHand,
  use: keyof typeof suits,
  { wishMl, leastMl = wishMl }: { wishMl: number; leastMl?: number },
): Promise<Room | undefined> {
  const isSuited = suits[use]
  const all = await hand.ask('jars.list', {})
  const rooms = all
    .filter(({ jar, contents }) => !contents && (use === 'liquid' || isSuited(jar)))
    .map(({ jar }) => ({
      jarId: jar.id,
      roomMl: fullest * jar.capacityMl,
      cost: jar.capacityMl * (isSuited(jar) ? 1 : reluctance),
    }))
  const [best] = rooms.filter(({ roomMl }) => roomMl >= wishMl).sort((a, b) => a.cost - b.cost)
  const [largest] = rooms.sort((a, b) => b.roomMl - a.roomMl)
  if (best) return best
  return largest && largest.roomMl >= leastMl ? largest : undefined
}
