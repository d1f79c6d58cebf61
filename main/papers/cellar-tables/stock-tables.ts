/** What there is now: batches, vessels with what stands in them, the pantry, bottles by place. */
import type { Liquid } from '../../../shared/schemas/cellar.ts'
import type { Cell } from '../csv.ts'
import { cellarNames, pricedIn, rounded, type CellarTable, type CellarTold } from './cellar-told.ts'

const liquidHead = ({ columns }: CellarTold['words']) => [
  columns.volumeMl,
  columns.strengthPctVol,
  columns.sugarGPerL,
  columns.acidGPerL,
]

const liquidCells = (liquid: Liquid | undefined): Cell[] => [
  rounded(liquid?.volumeMl),
  rounded(liquid?.strengthPctVol, 2),
  rounded(liquid?.sugarGPerL, 1),
  rounded(liquid?.acidGPerL, 1),
]

export function batchTable(told: CellarTold): CellarTable {
  const names = cellarNames(told)
  const { columns } = told.words
  return {
    name: 'batches',
    head: [
      columns.batch,
      columns.openedUtc,
      columns.stage,
      columns.fruit,
      ...liquidHead(told.words),
      columns.vessels,
      columns.fullBottles,
      columns.moves,
      columns.note,
      columns.batchId,
    ],
    rowCount: told.batches.length,
    rows: () =>
      told.batches.map(
        ({ batch, stage, fruitIds, liquid, jars, bottleLots, moveCount }): Cell[] => [
          batch.name,
          batch.openedAt,
          told.words.stage[stage],
          fruitIds.map(told.fruitName).join('; '),
          ...liquidCells(liquid),
          jars.map(({ jarId }) => names.jar(jarId)).join('; '),
          bottleLots.reduce((sum, { count }) => sum + count, 0),
          moveCount,
          batch.note,
          batch.id,
        ],
      ),
  }
}

export function vesselTable(told: CellarTold): CellarTable {
  const names = cellarNames(told)
  const { columns } = told.words
  return {
    name: 'vessels',
    head: [
      columns.vessel,
      columns.shape,
      columns.capacityMl,
      columns.inUse,
      columns.batchInIt,
      ...liquidHead(told.words),
      columns.heldMl,
      columns.filledMl,
      columns.fruit,
      columns.vesselId,
    ],
    rowCount: told.jars.length,
    rows: () =>
      told.jars.map(({ jar, contents }): Cell[] => [
        jar.name,
        told.words.shape[jar.shape],
        jar.capacityMl,
        jar.isRetired ? told.words.no : told.words.yes,
        names.batch(contents?.batchId),
        ...liquidCells(contents?.liquid),
        rounded(contents?.heldMl),
        rounded(contents?.fillMl),
        contents?.fruits.map(({ fruitId }) => told.fruitName(fruitId)).join('; '),
        jar.id,
      ]),
  }
}

export function pantryTable(told: CellarTold): CellarTable {
  const names = cellarNames(told)
  const { columns } = told.words
  const price = pricedIn(told.currency)
  return {
    name: 'pantry',
    head: [
      columns.goods,
      columns.kind,
      columns.boughtUtc,
      columns.boughtG,
      columns.leftG,
      columns.boughtMl,
      columns.leftMl,
      told.words.price(told.currency),
      columns.lotId,
    ],
    rowCount: told.pantry.length,
    rows: () =>
      told.pantry.map((lot): Cell[] => [
        names.goods(lot.goods),
        told.words.goodsKind[lot.goods.kind],
        lot.boughtAt,
        rounded(lot.boughtMassG, 1),
        rounded(lot.massG, 1),
        rounded(lot.boughtVolumeMl),
        rounded(lot.volumeMl),
        price(lot.priceMinor),
        lot.id,
      ]),
  }
}

/** One row a place: bottles of a lot may stand on several shelves; a lot that is gone has one row. */
export function bottleTable(told: CellarTold): CellarTable {
  const names = cellarNames(told)
  const { columns } = told.words
  const rows = told.bottleLots.flatMap((lot) =>
    (lot.places.length === 0 ? [{ shelfId: null, count: 0 }] : lot.places).map(
      ({ shelfId, count }): Cell[] => [
        lot.name,
        names.batch(lot.batchId),
        lot.bottledAt,
        lot.bottleSizeMl,
        lot.filledCount,
        names.shelf(shelfId),
        count,
        rounded(lot.liquid?.strengthPctVol, 2),
        rounded(lot.liquid?.sugarGPerL, 1),
        lot.id,
      ],
    ),
  )
  return {
    name: 'bottles',
    head: [
      columns.bottles,
      columns.batch,
      columns.bottledUtc,
      columns.sizeMl,
      columns.filled,
      columns.shelf,
      columns.fullThere,
      columns.strengthPctVol,
      columns.sugarGPerL,
      columns.lotId,
    ],
    rowCount: rows.length,
    rows: () => rows,
  }
}
