/** The fruits as a draft reckons with them: this cellar's, with what its own batches have taught. */
import type { Fruit } from '../../shared/schemas/fruits.ts'
import { notFound } from './service-error.ts'
import { tissueFor } from './learned-fruit.ts'
import type { Session } from './session.ts'

export interface DraftFacts {
  readonly fruitOf: (fruitId: string) => Fruit
}

export function draftFacts(session: Session): DraftFacts {
  const known = new Map<string, Fruit>()
  return {
    fruitOf: (fruitId) => {
      const before = known.get(fruitId)
      if (before) return before
      const kept = session.fruits.find(fruitId)
      if (!kept) throw notFound('fruit', fruitId)
      const fruit = { ...kept, ...tissueFor(session, fruitId) }
      known.set(fruitId, fruit)
      return fruit
    },
  }
}
