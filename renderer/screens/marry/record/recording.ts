/** The amounts of a blend as the moves that a maker makes: married, opened, poured, sweetened. */
import type { BlendAmount } from '../../../../shared/schemas/marrying.ts'
import type { Move } from '../../../../shared/schemas/moves.ts'
import { acid } from '../places.ts'

/** Acid that the pantry has not, bought together with the blend. */
export interface AcidPurchase {
  readonly lotId: string
  /** Left out: just what goes in. */
  readonly massG?: number | undefined
  readonly priceMinor?: number | undefined
}

export interface Recording {
  readonly amounts: readonly BlendAmount[]
  readonly batchId: string
  readonly toJarId: string
  readonly at: string
  readonly note: string
  /** Which of the pantry's lots are acid. */
  readonly isAcid: (lotId: string) => boolean
  readonly bought: AcidPurchase
}

/** To a tenth of a ml or gram: finer than any jug, coarse enough to be read. */
const rounded = (value: number): number => Math.round(value * 10) / 10

const least = 0.05

/** Jars first, so that the vessel belongs to the batch; then bottles, spirit, water, sugar, acid. */
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
      others.filter(belongs).flatMap((amount) => movesOfPart(amount, recording)),
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
  ({ place, unit }) => place.startsWith('lot:') && unit === 'g',
  ({ place }) => place === acid,
]

function movesOfPart({ place, unit, amount }: BlendAmount, recording: Recording): Move[] {
  const { batchId, toJarId, at, isAcid, bought } = recording
  const own = { at, batchId, jarId: toJarId }
  const [lotId, massG, volumeMl] = [idOf(place), rounded(amount), rounded(amount)]
  if (place === acid)
    return [buying(bought, at, massG), { ...own, kind: 'addAcid', lotId: bought.lotId, massG }]
  switch (unit) {
    case 'bottles': {
      const count = Math.round(amount)
      return [{ at, batchId, kind: 'unbottle', bottleLotId: lotId, count, toJarId }]
    }
    case 'g':
      return [{ ...own, kind: isAcid(lotId) ? 'addAcid' : 'sugar', lotId, massG }]
    case 'ml':
      return place.startsWith('lot:')
        ? [{ ...own, kind: 'pourSpirit', lotId, volumeMl }]
        : [{ ...own, kind: 'pourWater', volumeMl }]
  }
}

const buying = ({ lotId, massG, priceMinor }: AcidPurchase, at: string, usedG: number): Move => ({
  at,
  kind: 'buy',
  lotId,
  goods: { kind: 'acid' },
  massG: massG ?? usedG,
  ...(priceMinor !== undefined && { priceMinor: Math.round(priceMinor) }),
})
