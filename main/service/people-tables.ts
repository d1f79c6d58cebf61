/** The tables for people in an export, from the book as it was at one instant. */
import { allBatches, batchNames } from '../cellar/batch-store.ts'
import { allJars } from '../cellar/jar-store.ts'
import type { BookAtInstant, PeopleTable } from '../cellar/open-export/make-export.ts'
import { readSettings } from '../cellar/setting-store.ts'
import { allShelves } from '../cellar/shelf-store.ts'
import { describeJar, settledJar } from '../engine/index.ts'
import { cellarTables, tableText } from '../papers/cellar-tables/cellar-tables.ts'
import { paperWords } from '../papers/words/paper-words.ts'
import type { Interpretation } from '../../shared/schemas/readings.ts'
import { cellarFruits } from './cellar-fruits.ts'
import { batchSummary, bottleLot, interpretationOf, pantryLot } from './describe.ts'

export function peopleTables({ book, folded, at }: BookAtInstant): PeopleTable[] {
  const { cellar, steps, refused } = folded
  const nowMs = at.getTime()
  const fruits = cellarFruits(book)
  const names = batchNames(book)
  const interpretations = new Map<string, Interpretation>()
  for (const step of steps) {
    const meant = interpretationOf(step)
    if (meant) interpretations.set(step.recorded.id, meant)
  }
  const settings = readSettings(book)
  const words = paperWords(settings)
  const told = {
    words: words.tables,
    currency: settings.currency,
    batches: allBatches(book).map((batch) =>
      batchSummary({ ledger: { folded } }, batch, { nowMs, next: undefined }),
    ),
    jars: allJars(book).map((jar) => {
      const state = cellar.jars.get(jar.id)
      const contents = state && describeJar(jar.id, settledJar(state, Math.max(nowMs, state.atMs)))
      return { jar, contents }
    }),
    shelves: allShelves(book),
    pantry: [...cellar.lots].map(([id, lot]) => pantryLot(id, lot)),
    bottleLots: [...cellar.bottles].map(([id, lot]) =>
      bottleLot(id, lot, names.get(lot.batchId) ?? ''),
    ),
    moves: [...steps, ...refused]
      .map(({ recorded }) => recorded)
      .sort((a, b) => Date.parse(a.move.at) - Date.parse(b.move.at) || a.seq - b.seq),
    interpretations,
    fruitName: (fruitId: string) => {
      const fruit = fruits.find(fruitId)
      return fruit ? words.fruitName(fruit) : fruitId
    },
  }
  return cellarTables(told).map((table) => ({
    name: table.name,
    rows: table.rowCount,
    text: tableText(table),
  }))
}
