/**
 * A maker's fruit as it is kept: where a fact is not what it was in the row that the copy was made
 * from, its source becomes the maker. Names, which need no source, may be anything.
 */
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import { isSourceCode } from './sources.ts'

/** The fruit with its sources told anew. Without a row to compare, known codes are believed. */
export function keptFruit(asked: Fruit, from: Fruit | undefined): Fruit {
  const was = from && factsOf(from)
  const sources: Record<string, string> = {}
  for (const [field, fact] of factsOf(asked)) {
    const told = (from ?? asked).sources[field]
    const isAsBefore = was ? was.get(field) === fact : true
    sources[field] = isAsBefore && told !== undefined && isSourceCode(told) ? told : 'own'
  }
  return { ...asked, sources }
}

const unsourced = new Set(['id', 'nameEn', 'namePl', 'latin', 'kind', 'sources'])

/** Each fact under the name its source goes by, written out so that it can be compared. */
function factsOf(fruit: Fruit): Map<string, string> {
  const { composition, hazards, drainedRangeLPerKg, pressedRangeLPerKg, ...others } = fruit
  const facts = new Map<string, string>()
  const put = (field: string, value: unknown) => facts.set(field, written(value))
  for (const [part, value] of Object.entries(composition)) put(`composition.${part}`, value)
  hazards.forEach((hazard, index) => put(`hazards.${index}`, hazard))
  for (const [field, value] of Object.entries(others))
    if (!unsourced.has(field) && value !== undefined) put(field, value)
  put('drainedLPerKg', [fruit.drainedLPerKg, drainedRangeLPerKg])
  put('pressedLPerKg', [fruit.pressedLPerKg, pressedRangeLPerKg])
  return facts
}

/** JSON with keys in one order: the same fact is the same text. */
const written = (value: unknown): string =>
  JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  )
