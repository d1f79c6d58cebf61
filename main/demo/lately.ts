/** The last weeks at Alder End: bottles that stand open today, and some put where the sun shines. */
import { msPerDay } from '../../shared/spans-of-time.ts'
import { carry, uncork, type Laid } from './bottle-years.ts'
import { atHour } from './days.ts'
import type { Diary } from './diary.ts'
import { countOf } from './shelves.ts'

/** Days before today, and which of the fullest lots is opened then. */
const uncorked = [
  [24, 0],
  [10, 1],
  [3, 2],
] as const

export function planLately(diary: Diary, laid: readonly Laid[], nowMs: number): void {
  const ago = (days: number, hour: number, lotIs: number, deed: typeof uncork) =>
    diary.at(atHour(nowMs - days * msPerDay, hour), async (ms) => {
      const one = fullest(laid)[lotIs]
      if (one) await deed(one.bottling, one.shelved, ms)
    })
  ago(40, 10, 1, (bottling, shelved, ms) => carry(bottling, shelved, ms, 'sill'))
  for (const [days, lotIs] of uncorked) ago(days, 20, lotIs, uncork)
}

const fullest = (laid: readonly Laid[]): Laid[] =>
  laid
    .filter(({ shelved }) => countOf(shelved) > 0)
    .sort((a, b) => countOf(b.shelved) - countOf(a.shelved))
