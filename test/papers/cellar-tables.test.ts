import { describe, expect, it } from 'vitest'
import { cellarTables } from '../../main/papers/cellar-tables/cellar-tables.ts'
import { paperWords } from '../../main/papers/words/paper-words.ts'
import type { RecordedMove } from '../../shared/schemas/moves.ts'
import type { Language } from '../../shared/language.ts'

const reading: RecordedMove = {
  id: 'r',
  seq: 1,
  groupId: 'g',
  recordedAt: '2026-02-01T00:00:00.000Z',
  version: 1,
  move: {
    kind: 'read',
    at: '2026-02-01T00:00:00.000Z',
    batchId: 'b',
    jarId: 'stair',
    reading: { instrument: 'hydrometer', densityKgPerM3: 1020, temperatureC: 20 },
  },
}
const tasting: RecordedMove = {
  ...reading,
  id: 't',
  move: {
    kind: 'taste',
    at: '2026-02-02T00:00:00.000Z',
    batchId: 'b',
    scores: {},
    verdict: 'young',
  },
}

const tablesIn = (language: Language) =>
  cellarTables({
    words: paperWords({ language }).tables,
    currency: 'EUR',
    batches: [],
    jars: [
      {
        jar: { id: 'stair', name: 'Stair jar', shape: 'jar', capacityMl: 3000, isRetired: true },
        contents: undefined,
      },
    ],
    shelves: [],
    pantry: [
      {
        id: 'spirit',
        goods: { kind: 'spirit', strengthPctVol: 96 },
        boughtAt: '2026-01-02T03:04:05.000Z',
        boughtMassG: 1000,
        massG: 800,
      },
    ],
    bottleLots: [],
    moves: [reading, tasting],
    interpretations: new Map([['r', { doubts: ['outOfRange', 'noSuchMixture'] }]]),
    fruitName: (id) => id,
  })

describe('cellarTables', () => {
  it('tells in Polish what it tells in English: other heads, the same places', () => {
    const [en, pl] = [tablesIn('en'), tablesIn('pl')]
    expect(pl.map(({ name }) => name)).toEqual(en.map(({ name }) => name))
    for (const [at, table] of en.entries()) {
      const heads = pl[at]?.head ?? []
      expect(heads).toHaveLength(table.head.length)
      // What has no word in it may be the same.
      const wordless = /^± /
      expect(
        heads.filter((head, place) => head === table.head[place] && !wordless.test(head)),
      ).toEqual([])
    }
  })

  it.each(['en', 'pl'] as const)('names no two columns of a table alike in %s', (language) => {
    for (const { head } of tablesIn(language)) expect(new Set(head).size).toBe(head.length)
  })

  it('writes goods and answers in the language too', () => {
    const cells = tablesIn('pl').flatMap(({ rows }) => [...rows()].flat())
    expect(cells).toContain('Spirytus 96 % obj.')
    expect(cells).toContain('nie')
    expect(cells).toContain('słój')
    expect(cells).toContain('spirytus')
  })

  it.each([
    ['en', ['Took a reading', 'Tasted', 'hydrometer', 'young']],
    ['pl', ['Zapisano odczyt', 'Skosztowano', 'areometr', 'młoda']],
  ] as const)('has words and no codes for what was done and read, in %s', (language, told) => {
    const cells = tablesIn(language).flatMap(({ rows }) => [...rows()].flat())
    expect(cells).toEqual(expect.arrayContaining([...told]))
    const { doubt } = paperWords({ language }).tables
    expect(cells).toContain(`${doubt.outOfRange}; ${doubt.noSuchMixture}`)
    expect(cells.filter((cell) => cell === 'read' || cell === 'outOfRange')).toEqual([])
  })
})
