/** What goes wrong with a request on its way: a value of another kind, a missing one, one too many. */
import fc from 'fast-check'
import { hostileTexts } from './hostile-texts.ts'

/** Where, counted through all places of the request, and what happens there. */
export interface Mutation {
  readonly at: number
  readonly what: 'replace' | 'remove' | 'add' | 'double' | 'nest'
  readonly by: unknown
}

const oddKeys = ['__proto__', 'constructor', 'toString', 'kind', 'id', '', '$ref', 'ключ'] as const

const numbers = [
  0,
  -0,
  -1,
  0.1,
  1e-320,
  1e308,
  -1e308,
  2 ** 31,
  2 ** 53,
  -(2 ** 53),
  NaN,
  Infinity,
  -Infinity,
] as const

const others = [
  null,
  true,
  false,
  '',
  [],
  {},
  [[]],
  [null],
  { length: 1e9 },
  '\u0000',
  'NaN',
  '1,5',
  '٣',
  '-0',
  '2026-02-30T00:00:00Z',
  '2026-13-01',
  '+275760-09-13T00:00:00.000Z',
  '-000001-01-01T00:00:00Z',
] as const

/** What only a structured clone carries: a page in Electron could send it, JSON cannot. */
const clonedOnly = [
  undefined,
  10n,
  new Date(NaN),
  new Map([['id', 'x']]),
  new Set([1]),
  /x/,
] as const

const hostileValue: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(...numbers),
  fc.constantFrom(...others),
  fc.constantFrom(...clonedOnly),
  fc.constantFrom(...hostileTexts),
  fc.constantFrom(200, 5000, 200_000).map((length) => 'x'.repeat(length)),
  fc.constantFrom(50, 400).map((length) => Array.from({ length }, () => ({}))),
  fc.jsonValue({ maxDepth: 3 }),
)

export const mutations: fc.Arbitrary<Mutation[]> = fc.array(
  fc.record({
    at: fc.nat(0x7fff_ffff),
    what: fc.constantFrom('replace', 'replace', 'replace', 'remove', 'add', 'double', 'nest'),
    by: hostileValue,
  }),
  { minLength: 1, maxLength: 3 },
)

type Holder = Record<string | number, unknown>

export function mutated(request: unknown, changes: readonly Mutation[]): unknown {
  const root: Holder = { request: structuredClone(request) }
  for (const { at, what, by: given } of changes) {
    // A copy: the same list put into itself would have no end.
    const by = structuredClone(given)
    const places = placesIn(root)
    const place = places[at % places.length]
    if (!place) continue
    const { holder, key } = place
    const there = holder[key]
    if (what === 'remove' && holder !== root) delete holder[key]
    else if (what === 'add') addTo(there, at, by)
    else if (what === 'double' && Array.isArray(there))
      holder[key] = [...(there as unknown[]), ...(there as unknown[])]
    else if (what === 'nest') holder[key] = nested(there, at % 3 === 0 ? 500 : 3)
    else holder[key] = by
  }
  return root['request']
}

function addTo(there: unknown, at: number, by: unknown) {
  if (Array.isArray(there)) there.push(by)
  else if (typeof there === 'object' && there !== null)
    // As JSON.parse makes it: a key of its own, even if it is called __proto__.
    Object.defineProperty(there, oddKeys[at % oddKeys.length] ?? '', {
      value: by,
      enumerable: true,
      configurable: true,
      writable: true,
    })
}

function nested(value: unknown, depth: number): unknown {
  let outer = value
  for (let level = 0; level < depth; level += 1) outer = level % 2 ? [outer] : { in: outer }
  return outer
}

function placesIn(root: Holder): { holder: Holder; key: string | number }[] {
  const found: { holder: Holder; key: string | number }[] = []
  const look = (holder: Holder) => {
    for (const key of Object.keys(holder)) {
      if (found.length > 500) return
      found.push({ holder, key })
      const there = holder[key]
      if (typeof there === 'object' && there !== null) look(there as Holder)
    }
  }
  look(root)
  return found
}
