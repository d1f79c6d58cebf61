import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { fruitLibrary } from '../../../../main/engine/index.ts'
import { explainSource } from '../../../../main/engine/fruit/sources.ts'
import { inPolish } from '../../../../renderer/app/words/pl/library.ts'
import type { Explanation } from '../../../../shared/schemas/bench.ts'

const engine = join(import.meta.dirname, '../../../../main/engine')
const fruits = [...fruitLibrary.values()]

async function explanations(): Promise<Explanation[]> {
  const files = ['solution', 'alcoholometry', 'readings'].flatMap((folder) =>
    readdirSync(join(engine, folder)).map((file) => join(engine, folder, file)),
  )
  const modules = await Promise.all(
    files.map(async (file) => (await import(file)) as Record<string, unknown>),
  )
  return modules.flatMap((module) =>
    Object.entries(module).flatMap(([name, value]) =>
      name.endsWith('Explained') ? [value as Explanation] : [],
    ),
  )
}

const untold = (texts: readonly string[]) => texts.filter((text) => inPolish(text) === text)

describe('the library in Polish', () => {
  it('has every preparation and caution of every fruit', () => {
    const told = fruits.flatMap(({ preparation, hazards }) => [preparation, ...hazards])
    expect(told.length).toBeGreaterThan(80)
    expect(untold(told.filter(Boolean))).toEqual([])
  })

  it('has a Polish name for every fruit', () => {
    expect(fruits.filter(({ namePl }) => namePl.trim() === '')).toEqual([])
  })

  it('has the meaning of every source that a fact names, with its record', () => {
    const codes = new Set(fruits.flatMap(({ sources }) => Object.values(sources)))
    expect(untold([...codes].map(explainSource))).toEqual([])
    expect(inPolish(explainSource('U:09316'))).toMatch(/^tablica żywności .*; rekord 09316$/)
    expect(inPolish(explainSource('like:plum'))).toBe('przejęte od podobnego owocu: plum')
  })

  it('explains every calculation of the Bench', async () => {
    const all = await explanations()
    expect(all.length).toBeGreaterThan(15)
    const told = all.flatMap(({ method, source, limits, uncertainty }) => [
      method,
      source,
      limits,
      uncertainty,
    ])
    expect(untold(told)).toEqual([])
  })

  it('leaves a maker’s own words alone', () => {
    expect(inPolish('My grandmother’s way: whole.')).toBe('My grandmother’s way: whole.')
  })
})
