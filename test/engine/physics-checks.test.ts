import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { checksOf, missesOf } from '../references/check-tables.ts'
import { physicsChecks } from '../references/physics-checks.ts'

const all = Object.values(physicsChecks).flatMap((tables) => [...tables])

describe('physicsChecks', () => {
  it('has all 416 published values, each with its own name', () => {
    const ids = all.flatMap((table) => table.rows.map(([id]) => id))
    expect(ids).toHaveLength(416)
    expect(new Set(ids).size).toBe(416)
  })

  it('is run by a test of the engine, table by table and whole', () => {
    const folder = new URL('.', import.meta.url)
    const tests = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.test.ts') && !file.startsWith('physics-checks'))
      .map((file) => readFileSync(new URL(file, folder), 'utf8'))
      .join('\n')
    const notRun = Object.keys(physicsChecks).filter(
      (table) => !tests.includes(`checksOf(physicsChecks.${table})`),
    )
    expect(notRun).toEqual([])
  })

  it('has a number for every column and a positive tolerance in every row', () => {
    for (const table of all)
      for (const [id, ...numbers] of table.rows) {
        expect(numbers, id).toHaveLength(table.columns.length + 1)
        expect(numbers.every(Number.isFinite), id).toBe(true)
        expect(numbers.at(-1), id).toBeGreaterThan(0)
      }
  })
})

describe('missesOf', () => {
  it('tells a value that is off, and one that is not a number', () => {
    const [check] = checksOf(physicsChecks.trueStrength)
    expect(missesOf([check!], () => check!.expected + check!.tolerance * 1.01)).toHaveLength(1)
    expect(missesOf([check!], () => Number.NaN)).toHaveLength(1)
    expect(missesOf([check!], () => check!.expected)).toEqual([])
  })
})
