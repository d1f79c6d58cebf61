/** What stands in the form of Marry, and the question that it makes. */
import type {
  BottleWish,
  MarryRequest,
  MarryWishes,
  PartLimits,
  Wish,
} from '../../../shared/schemas/marrying.ts'

export type Sense = 'any' | 'exactly' | 'atLeast' | 'atMost'
export type AmountKind = 'most' | 'volume' | 'bottles'
export type WishedFor = 'strengthPctVol' | 'sugarGPerL' | 'acidGPerL'

export interface WishEntry {
  readonly sense: Sense
  readonly value: number | undefined
}

export interface BottleEntry {
  readonly sizeMl: number | undefined
  readonly count: number | undefined
}

export interface Entries {
  /** By place; a place that is not here does not go in. */
  readonly parts: Readonly<Record<string, PartLimits>>
  readonly wishes: Readonly<Record<WishedFor, WishEntry>>
  readonly amount: AmountKind
  readonly volumeMl: number | undefined
  readonly bottles: readonly BottleEntry[]
  readonly prefer: MarryRequest['prefer']
  readonly holds: MarryRequest['holds']
  readonly toJarId: string | undefined
}

export const wishedFor = ['strengthPctVol', 'sugarGPerL', 'acidGPerL'] as const

export const startEntries: Entries = {
  parts: {},
  wishes: {
    strengthPctVol: { sense: 'exactly', value: 30 },
    sugarGPerL: { sense: 'exactly', value: 200 },
    acidGPerL: { sense: 'any', value: 8 },
  },
  amount: 'most',
  volumeMl: 3000,
  bottles: [{ sizeMl: 500, count: undefined }],
  prefer: 'useUp',
  holds: 'composition',
  toJarId: undefined,
}

export function wishOf({ sense, value }: WishEntry): Wish | undefined {
  if (value === undefined) return undefined
  switch (sense) {
    case 'any':
      return undefined
    case 'exactly':
      return { low: value, high: value }
    case 'atLeast':
      return { low: value }
    case 'atMost':
      return { high: value }
  }
}

/** Undefined while nothing goes in, or the amount is not said. */
export function requestOf(entries: Entries): MarryRequest | undefined {
  const parts = Object.entries(entries.parts).map(([place, limits]) => ({
    place,
    ...given(limits),
  }))
  const amount = amountWish(entries)
  // Water alone is no blend to ask about.
  if (parts.every(({ place }) => place.startsWith('outside:')) || !amount) return undefined
  const wishes: MarryWishes = { ...amount }
  for (const name of wishedFor) {
    const wish = wishOf(entries.wishes[name])
    if (wish) wishes[name] = wish
  }
  const { prefer, holds, toJarId } = entries
  return { parts, wishes, prefer, holds, ...(toJarId !== undefined && { toJarId }) }
}

function amountWish({ amount, volumeMl, bottles }: Entries): MarryWishes | undefined {
  switch (amount) {
    case 'most':
      return {}
    case 'volume':
      return volumeMl === undefined ? undefined : { volumeMl: { low: volumeMl, high: volumeMl } }
    case 'bottles': {
      const told = bottles.flatMap(({ sizeMl, count }): BottleWish[] =>
        sizeMl === undefined ? [] : [{ sizeMl, ...(count !== undefined && { count }) }],
      )
      return told.length === 0 ? undefined : { bottles: told }
    }
  }
}

const given = ({ least, most, keepBack }: PartLimits): PartLimits => ({
  ...(least !== undefined && { least }),
  ...(most !== undefined && { most }),
  ...(keepBack !== undefined && { keepBack }),
})

export function withPart(entries: Entries, place: string, limits: PartLimits | undefined): Entries {
  const { [place]: _, ...others } = entries.parts
  return { ...entries, parts: limits ? { ...others, [place]: limits } : others }
}
