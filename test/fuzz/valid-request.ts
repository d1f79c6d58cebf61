/** Requests as a channel's published JSON Schema allows them, as fast-check draws them. */
import fc from 'fast-check'
import { hostileTexts } from './hostile-texts.ts'
import { nameIn, oneOf, type KnownValues } from './known-values.ts'

/** As much of JSON Schema as Zod writes for the contract's requests. */
export interface JsonSchema {
  readonly type?: string
  readonly const?: unknown
  readonly enum?: readonly unknown[]
  readonly anyOf?: readonly JsonSchema[]
  readonly oneOf?: readonly JsonSchema[]
  readonly properties?: Readonly<Record<string, JsonSchema>>
  readonly required?: readonly string[]
  readonly additionalProperties?: JsonSchema | boolean
  readonly propertyNames?: JsonSchema
  readonly items?: JsonSchema
  readonly minItems?: number
  readonly maxItems?: number
  readonly pattern?: string
  readonly format?: string
  readonly minLength?: number
  readonly maxLength?: number
  readonly minimum?: number
  readonly maximum?: number
  readonly exclusiveMinimum?: number
  readonly exclusiveMaximum?: number
}

export interface Surroundings {
  readonly known: KnownValues
  /** Every path drawn lies in it: a channel may make the folder it is given. */
  readonly folder: string
  readonly now: () => Date
}

const idPattern = '^[A-Za-z0-9_-]{1,64}$'

/** What a move of this kind makes, and must not be there yet. */
const madeBy: Readonly<Record<string, string>> = {
  buy: 'lotId',
  bottle: 'bottleLotId',
  bringIn: 'bottleLotId',
  openBottle: 'openedId',
}

const any = fc.nat(0x7fff_ffff)

export function validRequest(
  schema: JsonSchema,
  area: string,
  around: Surroundings,
): fc.Arbitrary<unknown> {
  const { known } = around

  function valueOf(of: JsonSchema, name: string): fc.Arbitrary<unknown> {
    if ('const' in of) return fc.constant(of.const)
    if (of.enum) return fc.constantFrom(...of.enum)
    const choices = of.anyOf ?? of.oneOf
    if (choices) return orKnown(name, fc.oneof(...choices.map((each) => valueOf(each, name))), of)
    switch (of.type) {
      case 'object':
        return orKnown(name, objectOf(of, name), of)
      case 'array':
        return arrayOf(of, name)
      case 'string':
        return textOf(of, name)
      case 'number':
      case 'integer':
        return numberOf(of)
      case 'boolean':
        return fc.boolean()
      case 'null':
        return fc.constant(null)
      default:
        throw new Error(`the fuzzer cannot draw ${name}: ${JSON.stringify(of)}`)
    }
  }

  function objectOf(of: JsonSchema, name: string): fc.Arbitrary<unknown> {
    const { properties = {}, required = [], additionalProperties } = of
    if (typeof additionalProperties === 'object') return dictionaryOf(of, additionalProperties)
    const makes = madeBy[String(properties['kind']?.const)]
    const model = Object.fromEntries(
      Object.entries(properties).map(([key, each]) => [
        key,
        valueOf(each, key === makes ? 'newId' : nameIn(name, key)),
      ]),
    )
    const drawn = fc.record(model, { requiredKeys: [...required], noNullPrototype: true })
    return 'batchId' in properties ? fc.tuple(any, drawn).map(atHome) : drawn
  }

  /** A jar holds one batch: any other would be refused, nearly always. */
  function atHome([choice, drawn]: [number, Record<string, unknown>]) {
    const batchId = known.batchIn(drawn['fromJarId'] ?? drawn['jarId'])
    return batchId === undefined || choice % 5 === 0 ? drawn : { ...drawn, batchId }
  }

  function dictionaryOf({ propertyNames, required }: JsonSchema, each: JsonSchema) {
    const names = propertyNames?.enum as string[] | undefined
    if (!names) return fc.dictionary(fc.string(), valueOf(each, ''), { maxKeys: 4 })
    const model = Object.fromEntries(names.map((name) => [name, valueOf(each, name)]))
    return fc.record(model, { requiredKeys: [...(required ?? [])], noNullPrototype: true })
  }

  function arrayOf({ items = {}, minItems = 0, maxItems = 100 }: JsonSchema, name: string) {
    const each = valueOf(items, oneOf(name))
    const least = Math.max(minItems, 1)
    const few = (maxLength: number) => fc.array(each, { minLength: minItems, maxLength })
    // One refused move refuses all of a request.
    return fc.oneof(few(Math.min(maxItems, least)), few(Math.min(maxItems, least + 2)))
  }

  /** Half of the time something that the book or an earlier call has, where there is one. */
  function orKnown(name: string, fresh: fc.Arbitrary<unknown>, of: JsonSchema) {
    return fc
      .tuple(any, fresh, fc.array(fc.tuple(any, any), { maxLength: 3 }))
      .map(([choice, made, turns]) => {
        if (choice % 2 === 0) return made
        const found = known.pick(name, choice >> 1, (value) => couldBe(value, of))
        if (found === undefined) return made
        const again = turned(structuredClone(found), turns) as Record<string, unknown>
        return 'batchId' in again ? atHome([choice >> 2, again]) : again
      })
  }

  function textOf(of: JsonSchema, name: string): fc.Arbitrary<unknown> {
    if (name === 'folder' || name === 'file') return pathIn(around.folder)
    if (name === 'locale') return fc.constantFrom('en-GB', 'pl-PL', 'ar-EG', 'de', 'zh-Hant-TW')
    if (of.format === 'date-time') return instant()
    if (of.format === 'date') return instant().map((at) => String(at).slice(0, 10))
    if (of.pattern === undefined) return freeText(of, name)
    if (name === 'place')
      return fc.tuple(any, freshId).map(([choice, fresh]) => placeOf(choice, fresh))
    const pattern = new RegExp(of.pattern)
    const fits = (value: unknown) => typeof value === 'string' && pattern.test(value)
    const fresh = of.pattern === idPattern ? freshId : fc.stringMatching(pattern)
    const freshOneIn = name === 'key' || name === 'newId' ? 1.1 : 6
    return fc.tuple(any, fresh).map(([choice, made]) => {
      if (choice % 100 < 100 / freshOneIn) return made
      return known.pick(name, choice >> 3, fits) ?? made
    })
  }

  function placeOf(choice: number, fresh: string): string {
    const kind = (['jar', 'lot', 'bottles', 'outside'] as const)[choice % 4] ?? 'jar'
    const names = { jar: 'jarId', lot: 'lotId', bottles: 'bottleLotId', outside: 'none' }
    return `${kind}:${(known.pick(names[kind], choice >> 2) as string | undefined) ?? fresh}`
  }

  function instant(): fc.Arbitrary<unknown> {
    const lately = fc
      .tuple(any, fc.oneof(fc.integer({ min: -900, max: 3 }), fc.constant(0)), fc.nat(86_399))
      .map(
        ([choice, days, seconds]) =>
          (choice % 4 === 0 ? known.pick('at', choice >> 2) : undefined) ??
          new Date(around.now().getTime() + days * 86_400_000 - seconds * 1000).toISOString(),
      )
    const far = fc.constantFrom(
      '0001-01-01T00:00:00Z',
      '9999-12-31T23:59:59.999Z',
      '1970-01-01T00:00:00Z',
      '2024-02-29T23:59:59Z',
    )
    return fc.oneof({ weight: 30, arbitrary: lately }, { weight: 1, arbitrary: far })
  }

  return valueOf(schema, oneOf(area))
}

/** Names few things, so that the same id comes again. */
const freshId = fc.oneof(
  fc.nat(400).map((serial) => `made-${serial}`),
  fc.stringMatching(/^[A-Za-z0-9_-]{1,64}$/),
)

function freeText({ minLength = 0, maxLength = 200 }: JsonSchema, name: string) {
  const plain = fc.constantFrom('Sloe', 'North shelf', 'Zażółć gęślą jaźń', 'by the window', name)
  const hostile = fc.constantFrom(...hostileTexts)
  const odd = fc.string({ unit: 'binary', minLength, maxLength: Math.min(maxLength, 40) })
  const long = fc.constant('long '.repeat(maxLength / 5 + 1))
  return fc
    .oneof(
      { weight: 5, arbitrary: plain },
      { weight: 3, arbitrary: hostile },
      { weight: 2, arbitrary: odd },
      { weight: 1, arbitrary: long },
    )
    .map((text) => text.slice(0, maxLength))
}

/** Amounts as a cellar has them, spread evenly over the orders of magnitude, and the very ends. */
function numberOf(of: JsonSchema): fc.Arbitrary<number> {
  const isWhole = of.type === 'integer'
  const step = isWhole ? 1 : 1e-6
  const low = of.minimum ?? (of.exclusiveMinimum === undefined ? -1e6 : of.exclusiveMinimum + step)
  const high = of.maximum ?? (of.exclusiveMaximum === undefined ? 1e7 : of.exclusiveMaximum - step)
  const within = (value: number) => {
    const held = Math.min(high, Math.max(low, value))
    return isWhole ? Math.round(held) : held
  }
  const span = high - low
  const share = any.map((drawn) => drawn / 0x7fff_ffff)
  return fc.oneof(
    { weight: 6, arbitrary: share.map((drawn) => within(low + span ** drawn)) },
    { weight: 6, arbitrary: share.map((drawn) => within(low + span * drawn)) },
    { weight: 6, arbitrary: share.map((drawn) => within(10 ** (4 * drawn - 0.5))) },
    { weight: 1, arbitrary: fc.constantFrom(low, high, within(0), within(1)) },
  )
}

const pathIn = (folder: string): fc.Arbitrary<string> =>
  fc
    .constantFrom(
      '',
      '/backups',
      '/cellar.ratafia',
      '/none',
      '/../here',
      '/notes.zip',
      '/a b/ü',
      '/backups/..',
      '/\u202e',
      '/x'.repeat(200),
    )
    .map((path) => folder + path)

/** Its keys are those that the schema knows: a guess that saves calls, not a proof. */
function couldBe(value: unknown, of: JsonSchema): boolean {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false
  const keys = Object.keys(value)
  return (of.anyOf ?? of.oneOf ?? [of]).some(
    ({ properties, required = [] }) =>
      properties &&
      keys.every((key) => key in properties) &&
      required.every((key) => key in value) &&
      Object.entries(properties).every(
        ([key, { const: fixed }]) =>
          fixed === undefined || (value as Record<string, unknown>)[key] === fixed,
      ),
  )
}

/** The same thing with a few of its numbers changed. */
function turned(value: unknown, turns: readonly (readonly [number, number])[]): unknown {
  const numbers: { in: Record<string, unknown>; key: string }[] = []
  const look = (found: unknown) => {
    if (typeof found !== 'object' || found === null) return
    for (const [key, each] of Object.entries(found))
      if (typeof each === 'number') numbers.push({ in: found as Record<string, unknown>, key })
      else look(each)
  }
  look(value)
  for (const [which, by] of turns) {
    const found = numbers[which % numbers.length]
    if (!found) return value
    const was = found.in[found.key] as number
    const next = (was * (by % 200)) / 100
    found.in[found.key] = Number.isInteger(was) ? Math.round(next) : next
  }
  return value
}
