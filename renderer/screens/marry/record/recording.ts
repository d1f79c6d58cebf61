/** The amounts of a blend as the moves that a maker makes: married, opened, poured, sweetened. */
import type { BlendAmount } from '../../../../shared/schemas/marrying.ts'
import type { Move } from '../../../../shared/schemas/moves.ts'
import { acid } from '../places.ts'

export interface Recording {
  readonly amounts: readonly BlendAmount[]
  readonly batchId: string
  readonly toJarId: string
  readonly at: string
  readonly note: string
  /** What is written down of what the book does not keep, such as acid. */
  readonly acidWords: (massG: number) => string
}

/** To a tenth of a ml or gram: finer than any jug, coarse enough to be read. */
const rounded = (value: number): number => Math.round(value * 10) / 10

const least = 0.05

/** Jars first, so that the vessel belongs to the batch; then bottles, spirit, water, sugar. */
export function movesOf(recording: Recording): Move[] {
  const { amounts, batchId, toJarId, at, note } = recording
  const used = amounts.filter(({ amount }) => amount >= least)
  const own = { at, batchId }
  const jars = used.filter(({ place }) => place.startsWith('jar:'))
  const married = jars.map(({ place, amount }) => ({
    jarId: idOf(place),
    volumeMl: rounded(amount),
  }))
  const others = used.filter(({ place }) => !place.startsWith('jar:'))
  const moves: Move[] = [
    ...(married.some(({ jarId }) => jarId !== toJarId)
      ? [{ ...own, kind: 'marry' as const, parts: married, toJarId }]
      : []),
    ...order.flatMap((belongs) =>
      others.filter(belongs).map((amount) => moveOf(amount, recording)),
    ),
  ]
  const [first, ...rest] = moves
  if (!first || note.trim() === '') return moves
  return [{ ...first, note: note.trim() }, ...rest]
}

const idOf = (place: string): string => place.slice(place.indexOf(':') + 1)

const order: readonly ((amount: BlendAmount) => boolean)[] = [
  ({ unit }) => unit === 'bottles',
  ({ place, unit }) => place.startsWith('lot:') && unit === 'ml',
  ({ place, unit }) => place.startsWith('outside:') && unit === 'ml',
  ({ unit }) => unit === 'g',
]

function moveOf({ place, unit, amount }: BlendAmount, recording: Recording): Move {
  const { batchId, toJarId, at, acidWords } = recording
  const own = { at, batchId, jarId: toJarId }
  if (place === acid) return { at, batchId, kind: 'remark', note: acidWords(amount) }
  switch (unit) {
    case 'bottles':
      return {
        at,
        batchId,
        kind: 'unbottle',
        bottleLotId: idOf(place),
        count: Math.round(amount),
        toJarId,
      }
    case 'g':
      return { ...own, kind: 'sugar', lotId: idOf(place), massG: rounded(amount) }
    case 'ml':
      return place.startsWith('lot:')
        ? { ...own, kind: 'pourSpirit', lotId: idOf(place), volumeMl: rounded(amount) }
        : { ...own, kind: 'pourWater', volumeMl: rounded(amount) }
  }
}
