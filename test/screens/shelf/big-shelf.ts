/** A shelf of forty years, made up by rule: as many lots as asked for, twenty bottles of each. */
import type { ShelfLot } from '../../../shared/schemas/shelf.ts'
import { batch, damson, summary } from '../cellar-fixture.ts'
import { ageingWindow, shelfLot } from './shelf-fixture.ts'

const kinds = [
  { id: 'damson', name: 'Damson', colour: '#5a1f45' },
  { id: 'raspberry', name: 'Raspberry', colour: '#b32448' },
  { id: 'quince', name: 'Quince', colour: '#d9a441' },
  { id: 'sloe', name: 'Sloe', colour: '#3a2250' },
  { id: 'walnut', name: 'Walnut', colour: '#4a3a1c' },
] as const

const sizes = [200, 350, 500, 700, 1500] as const

const pick = <Value>(of: readonly Value[], at: number): Value => of[at % of.length] as Value

function bigLot(index: number): ShelfLot {
  const kind = pick(kinds, index)
  const vintage = 1986 + (index % 40)
  const readyYear = vintage + 2 + (index % 3)
  const fadingYear = readyYear + 4 + (index % 7)
  const phase = readyYear > 2026 ? 'young' : fadingYear > 2026 ? 'ready' : 'fading'
  return shelfLot(
    {
      id: `lot-${index}`,
      batchId: `batch-${index % 400}`,
      name: `${kind.name} ${vintage}, ${1 + (index % 9)}`,
      bottleSizeMl: pick(sizes, index),
      filledCount: 24,
      count: 20,
      bottledAt: `${vintage + 1}-02-10T10:00:00Z`,
      places: [{ shelfId: pick(['rack', 'dresser', null], index), count: 20 }],
    },
    {
      kindId: kind.id,
      vintage,
      window: ageingWindow(phase, [readyYear, index % 12], [fadingYear, index % 12]),
    },
  )
}

export const bigShelf = (count: number): ShelfLot[] =>
  Array.from({ length: count }, (_, index) => bigLot(index))

export const bigBatches = () =>
  Array.from({ length: 400 }, (_, index) => {
    const { name, colour } = pick(kinds, index)
    return summary({ batch: batch({ id: `batch-${index}`, name: `${name} ${index}`, colour }) })
  })

export const bigFruits = () =>
  kinds.map(({ id, name }) => ({ ...damson, id, nameEn: name, namePl: name }))
