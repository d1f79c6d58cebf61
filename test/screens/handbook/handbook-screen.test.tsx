import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { screen, within } from '@testing-library/react'
import { describe, expect, it } from 'vitest'
import { composeSolution, describeSolution } from '../../../main/engine/index.ts'
import { chapters, dangers, steps } from '../../../renderer/screens/handbook/chapters.ts'
import { floats } from '../../../renderer/screens/handbook/floats.ts'
import { Term } from '../../../renderer/parts/term/term.tsx'
import { terms } from '../../../renderer/parts/term/terms.ts'
import { showApp, showPart } from '../show.tsx'

describe('the handbook', () => {
  it('is reached from every screen, and tells a jar’s way first', async () => {
    const { user } = showApp('/today')
    await user.click(await screen.findByRole('link', { name: 'Handbook' }))
    expect(await screen.findByRole('heading', { level: 1, name: 'Handbook' })).toBeTruthy()
    const told = screen.getAllByRole('heading', { level: 2 })
    expect(told.length).toBe(steps.length)
    const links = within(screen.getByRole('navigation', { name: 'Chapters' })).getAllByRole('link')
    expect(links.length).toBe(chapters.length)
  })

  it('says at what warmth spirit can be lit, in the cellar’s own degrees', async () => {
    showApp('/handbook/cautions')
    expect(
      await screen.findByText(/96\.0 % vol.*13(\.0)? °C.*40\.0 % vol.*26(\.0)? °C/),
    ).toBeTruthy()
    expect(screen.getAllByRole('term').length).toBe(dangers.length)
  })

  it('draws its floats by densities that the engine gives', () => {
    for (const { densityKgPerM3, strengthPctVol, sugarGPerL } of floats) {
      const litre = composeSolution({ volumeMl: 1000, strengthPctVol, sugarGPerL })
      expect(describeSolution(litre).densityKgPerM3).toBeCloseTo(densityKgPerM3, 0)
    }
  })
})

describe('“what is this?”', () => {
  it('explains a term beside it, and leads to all of them', async () => {
    const { user } = showPart(<Term id="delle" />)
    await user.click(screen.getByRole('button', { name: /What is this\? Delle number/ }))
    const answer = await screen.findByRole('dialog', { name: 'Delle number' })
    expect(within(answer).getByText(/four and a half times the strength/)).toBeTruthy()
    expect(within(answer).getByRole('link').getAttribute('href')).toBe('#/handbook/terms')
    await user.keyboard('{Escape}')
    expect(screen.queryByRole('dialog')).toBeNull()
  })

  it('stands beside every term somewhere, on a screen that shows what the term is of', () => {
    const root = join(import.meta.dirname, '../../../renderer')
    const sources = globSync('{screens,charts,parts}/**/*.{ts,tsx}', { cwd: root })
      .filter((file) => !/handbook|parts.term/.test(file))
      .map((file) => readFileSync(join(root, file), 'utf8'))
    const offered = new Set(
      sources.flatMap((source) =>
        [...source.matchAll(/<Term id="(\w+)"|\bterm="(\w+)"|\bterm: '(\w+)'/g)].map(
          ([, beside, ofSection, ofTool]) => beside ?? ofSection ?? ofTool,
        ),
      ),
    )
    const [, ofMoves = ''] = sources.flatMap(
      (source) => /termOf[^=]*= \{([^}]*)\}/.exec(source) ?? [],
    )
    for (const [, term = ''] of ofMoves.matchAll(/: '(\w+)'/g)) offered.add(term)
    expect(terms.filter((term) => !offered.has(term))).toEqual([])
  })
})
