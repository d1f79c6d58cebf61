/** Nobody can ask for without end: every text and list of every request has its greatest length. */
import { describe, expect, it } from 'vitest'
import { contract } from '../../main/hosts/browser/contract.ts'

/** What is read of a JSON Schema. */
interface Schema {
  readonly type?: string
  readonly enum?: readonly unknown[]
  readonly const?: unknown
  readonly format?: string
  readonly pattern?: string
  readonly maxLength?: number
  readonly maxItems?: number
  readonly prefixItems?: readonly Schema[]
  readonly items?: Schema | boolean
  readonly properties?: Readonly<Record<string, Schema>>
  readonly propertyNames?: Schema
  readonly additionalProperties?: Schema | boolean
  readonly anyOf?: readonly Schema[]
  readonly oneOf?: readonly Schema[]
  readonly allOf?: readonly Schema[]
}

/** A pattern from end to end, in which nothing may be repeated for ever. */
const isBoundedPattern = (pattern: string) =>
  /^\^.*\$$/.test(pattern) && !/[*+]|\{\d+,\}/.test(pattern.replaceAll(/\[[^\]]*\]|\\./g, ''))

const formats = ['date', 'date-time', 'time']

function isEndless(schema: Schema): boolean {
  const { type, format = '', pattern = '', maxLength, maxItems, prefixItems } = schema
  if (schema.enum ?? schema.const !== undefined) return false
  if (type === 'array') return maxItems === undefined && prefixItems === undefined
  if (type !== 'string' || maxLength !== undefined) return false
  return !formats.includes(format) && !isBoundedPattern(pattern)
}

function endlessIn(at: string, schema: Schema | boolean | undefined): string[] {
  if (schema === undefined || typeof schema === 'boolean') return []
  const { items, properties = {}, propertyNames, additionalProperties } = schema
  const ways = [schema.anyOf, schema.oneOf, schema.allOf, schema.prefixItems]
  return [
    ...(isEndless(schema) ? [at] : []),
    ...ways.flatMap((each) => each ?? []).flatMap((each) => endlessIn(at, each)),
    ...endlessIn(`${at}[]`, items),
    ...endlessIn(`${at}{}`, additionalProperties),
    ...(propertyNames ? endlessIn(`${at}{names}`, { type: 'string', ...propertyNames }) : []),
    ...Object.entries(properties).flatMap(([name, each]) => endlessIn(`${at}.${name}`, each)),
  ]
}

describe('a request', () => {
  it.each(Object.entries(contract().channels))('of %s has an end', (name, { request }) => {
    expect([...new Set(endlessIn(name, request as Schema))]).toEqual([])
  })

  it.each<[Schema, number]>([
    [{ type: 'string' }, 1],
    [{ type: 'string', pattern: '^[a-z]+$' }, 1],
    [{ type: 'string', pattern: 'a{1,4}$' }, 1],
    [{ type: 'string', pattern: '^[a-z+*]{1,64}$' }, 0],
    [{ type: 'array', items: { type: 'string', maxLength: 3 } }, 1],
    [{ type: 'object', properties: { a: { anyOf: [{ type: 'string' }] } } }, 1],
    [{ type: 'object', propertyNames: {}, additionalProperties: { type: 'number' } }, 1],
    [{ type: 'string', enum: ['a'] }, 0],
  ])('%j would be told', (schema, count) => {
    expect(endlessIn('it', schema)).toHaveLength(count)
  })
})
