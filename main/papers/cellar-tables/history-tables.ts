/** What was done: every move flat, what instruments said, what was tasted. */
import { TasteAxis, type Move, type MoveOf } from '../../../shared/schemas/moves.ts'
import type { Cell } from '../csv.ts'
import {
  cellarNames,
  pricedIn,
  rounded,
  type CellarNames,
  type CellarTable,
  type CellarTold,
} from './cellar-told.ts'

const text = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined)
const number = (value: unknown): number | undefined =>
  typeof value === 'number' ? value : undefined

/** Fields have one meaning in every kind of move, so one row tells any of them. */
export function moveTable(told: CellarTold): CellarTable {
  const names = cellarNames(told)
  const { columns } = told.words
  const price = pricedIn(told.currency)
  return {
    name: 'moves',
    head: [
      columns.whenUtc,
      columns.what,
      columns.batch,
      columns.vessel,
      columns.fromVessel,
      columns.toVessel,
      columns.goods,
      columns.bottles,
      columns.massG,
      columns.volumeMl,
      columns.count,
      told.words.price(told.currency),
      columns.note,
      columns.recordedUtc,
      columns.version,
      columns.moveId,
    ],
    rowCount: told.moves.length,
    *rows() {
      for (const { id, recordedAt, version, move } of told.moves) {
        const fields = flat(move)
        yield [
          move.at,
          told.words.move[move.kind],
          names.batch(text(fields['batchId'])),
          names.jar(text(fields['jarId'])),
          names.jar(text(fields['fromJarId'])) ?? partsOf(move, names),
          names.jar(text(fields['toJarId'])),
          move.kind === 'buy' ? names.goods(move.goods) : names.pantryLot(text(fields['lotId'])),
          names.bottleLot(text(fields['bottleLotId'])),
          number(fields['massG']),
          number(fields['volumeMl']),
          number(fields['count']),
          price(number(fields['priceMinor'])),
          move.note,
          recordedAt,
          version,
          id,
        ]
      }
    },
  }
}

/** What is thrown away or found is told one level further in. */
function flat(move: Move): Readonly<Record<string, unknown>> {
  if (move.kind === 'discard') return { ...move, ...move.from }
  if (move.kind === 'correct') return { ...move, ...move.found }
  return move
}

const partsOf = (move: Move, names: CellarNames): string | undefined =>
  move.kind === 'marry' ? move.parts.map(({ jarId }) => names.jar(jarId)).join('; ') : undefined

const ofKind = <K extends Move['kind']>({ moves }: CellarTold, kind: K) =>
  moves.flatMap(({ id, move }) => (move.kind === kind ? [{ id, move: move as MoveOf<K> }] : []))

/** The raw numbers of an instrument, and what they mean. */
export function readingTable(told: CellarTold): CellarTable {
  const names = cellarNames(told)
  const { columns } = told.words
  const readings = ofKind(told, 'read')
  return {
    name: 'readings',
    head: [
      columns.whenUtc,
      columns.batch,
      columns.vessel,
      columns.instrument,
      columns.readPctVol,
      columns.readKgPerM3,
      columns.readBoiledKgPerM3,
      columns.readBrix,
      columns.readMl,
      columns.atC,
      columns.strengthPctVol,
      columns.strengthUncertaintyPctVol,
      columns.sugarGPerL,
      columns.sugarUncertaintyGPerL,
      columns.doubts,
      columns.note,
      columns.moveId,
    ],
    rowCount: readings.length,
    rows: () =>
      readings.map(({ id, move }): Cell[] => {
        const raw: Readonly<Record<string, unknown>> = move.reading
        const meant = told.interpretations.get(id)
        return [
          move.at,
          names.batch(move.batchId),
          names.jar(move.jarId),
          told.words.instrument[move.reading.instrument],
          number(raw['readingPctVol']),
          number(raw['densityKgPerM3']) ?? number(raw['densityBeforeKgPerM3']),
          number(raw['densityAfterKgPerM3']),
          number(raw['brix']),
          number(raw['volumeMl']),
          number(raw['temperatureC']),
          rounded(meant?.strengthPctVol, 2),
          rounded(meant?.strengthUncertaintyPctVol, 2),
          rounded(meant?.sugarGPerL, 1),
          rounded(meant?.sugarUncertaintyGPerL, 1),
          meant?.doubts.map((doubt) => told.words.doubt[doubt]).join('; '),
          move.note,
          id,
        ]
      }),
  }
}

export function tastingTable(told: CellarTold): CellarTable {
  const names = cellarNames(told)
  const { columns } = told.words
  const tastings = ofKind(told, 'taste')
  return {
    name: 'tastings',
    head: [
      columns.whenUtc,
      columns.batch,
      columns.vessel,
      columns.bottles,
      columns.glass,
      ...TasteAxis.options.map((axis) => told.words.score(axis)),
      columns.verdict,
      columns.words,
      columns.moveId,
    ],
    rowCount: tastings.length,
    rows: () =>
      tastings.map(({ id, move }): Cell[] => [
        move.at,
        names.batch(move.batchId),
        names.jar(move.jarId),
        names.bottleLot(move.bottleLotId),
        move.glass,
        ...TasteAxis.options.map((axis) => move.scores[axis]),
        move.verdict && told.words.verdict[move.verdict],
        move.note,
        id,
      ]),
  }
}
