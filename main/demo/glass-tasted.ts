/** What a glass is like: the kind's own character, its age, and the mood of the evening. */
import { fruitOf } from '../engine/index.ts'
import type { MoveOf, TasteAxis } from '../../shared/schemas/moves.ts'
import type { HouseKind } from './house-kinds.ts'
import type { Noise } from './seeded-noise.ts'

export type Glass = Pick<MoveOf<'taste'>, 'glass' | 'scores' | 'verdict'> & {
  readonly note: string
}

const glasses = ['Tulip', 'Small tumbler', 'The chipped one', 'Thimble glass'] as const

/** Skins, stones and shells that bite; the others hardly do. */
const bitterness: Partial<Record<string, number>> = {
  walnut: 7,
  rowan: 6.5,
  'orange-peel': 5,
  sloe: 4.5,
  damson: 3.5,
  'cornelian-cherry': 2.5,
  'japanese-quince': 2.5,
}

const words = {
  young: ['Spirit first, fruit after.', 'Raw at the edges. Wait.', 'Loud, not yet long.'],
  ready: ['All of a piece.', 'Nothing sticks out.', 'As it should be. Where is the other bottle?'],
  fading: ['Browner, and quieter than last year.', 'More raisin than fruit. Drink it.', 'Tired.'],
} as const

export function glassTasted(kind: HouseKind, ageMonths: number, noise: Noise): Glass {
  const fruit = fruitOf(kind.ingredients[0].fruitId)
  const fadesAfter = 12 * (fruit.drinkByYears?.typical ?? 5)
  const ripeness = Math.min(1, ageMonths / kind.restMonths)
  const decline = Math.max(0, ageMonths / fadesAfter - 0.7)
  const mood = noise.around(0.12)
  const verdict = verdictAt(ripeness + mood, decline + mood)
  const score = (expected: number) =>
    Math.round(2 * Math.min(10, Math.max(0, expected + noise.around(0.6)))) / 2
  const scores: Record<TasteAxis, number> = {
    aroma: score(5 + 3 * ripeness - 4 * decline),
    fruit: score(6.5 + 1.5 * ripeness - 5 * decline),
    sweetness: score(1.5 + kind.finished.sugarGPerL / 42),
    sourness: score(1 + 2.2 * (fruit.composition.acidPct ?? 0) - ripeness),
    bitterness: score((bitterness[kind.id] ?? 1) - 1.2 * ripeness),
    heat: score((kind.finished.strengthPctVol / 5) * (1.3 - 0.4 * ripeness)),
    length: score(4 + 3 * ripeness - 2 * decline),
    clarity: score(6.5 + 2.5 * ripeness),
    colour: score(9 - 4 * decline),
  }
  return { glass: noise.pick(glasses), scores, verdict, note: noise.pick(words[verdict]) }
}

function verdictAt(ripeness: number, decline: number): keyof typeof words {
  if (ripeness < 0.85) return 'young'
  return decline > 0.3 ? 'fading' : 'ready'
}
