/**
 * Parts flowing into the vessel, to scale: all vessels by one scale, and each stream as thick as
 * its share of what is poured.
 */
import { useWords } from '../../../app/words/use-words.ts'
import type { BlendAmount } from '../../../../shared/schemas/marrying.ts'
import { useSettings } from '../../../app/settings.tsx'
import { PlaceVessel, scaleFor } from '../parts/place-vessel.tsx'
import type { Drawn } from '../places.ts'
import { useAmounts } from '../use-amounts.ts'
import type { Places } from '../use-places.ts'
import styles from './flow-picture.module.css'
import { listFormat } from '../../../parts/formatters/formatters.ts'

export interface FlowPictureProps {
  amounts: readonly BlendAmount[]
  places: Places
  /** The vessel with the blend in it; undefined while none is chosen. */
  target: Drawn | undefined
  targetName: string
}

const rowPx = 64
const wide = 220
const thickest = 0.62

export function FlowPicture({ amounts, places, target, targetName }: FlowPictureProps) {
  const t = useWords()
  const { locale } = useSettings()
  const words = useAmounts()
  const drawnOf = (place: string) => places.byPlace.get(place)?.drawn
  const nameOf = (place: string) => places.byPlace.get(place)?.name ?? place
  const drawn = amounts.map(({ place }) => drawnOf(place))
  const mmPerPixel = scaleFor(
    [...drawn, target],
    Math.max(rowPx, rowPx * amounts.length * 0.8, 120),
  )
  const rowScale = Math.max(mmPerPixel, scaleFor(drawn, rowPx - 8))
  const parts = amounts.map(({ place, amount, unit }) =>
    t('marry.picture.part', { amount: words.amount(amount, unit), name: nameOf(place) }),
  )
  const label = t('marry.picture.label', {
    parts: listFormat(locale, { type: 'conjunction' }).format(parts),
    target: targetName,
  })
  return (
    <figure className={styles.picture} aria-label={label}>
      <ul className={styles.sources} aria-hidden>
        {amounts.map(({ place, amount, unit }, index) => {
          const from = drawn[index]
          return (
            <li key={place} style={{ height: rowPx }}>
              <span className={styles.vessel}>
                {from && <PlaceVessel drawn={from} mmPerPixel={rowScale} />}
              </span>
              <span className={styles.words}>
                <span className={styles.name}>{nameOf(place)}</span>
                <strong>{words.amount(amount, unit)}</strong>
              </span>
            </li>
          )
        })}
      </ul>
      <Streams amounts={amounts} colourOf={(place) => drawnOf(place)?.colour} />
      <div className={styles.target} aria-hidden>
        {target && <PlaceVessel drawn={target} mmPerPixel={rowScale} />}
        <span>{targetName}</span>
      </div>
    </figure>
  )
}

interface StreamsProps {
  amounts: readonly BlendAmount[]
  colourOf: (place: string) => string | undefined
}

/** Bands from each row's middle to one stack, which is as thick as all of them. */
function Streams({ amounts, colourOf }: StreamsProps) {
  const tall = Math.max(rowPx * amounts.length, 1)
  const allMl = amounts.reduce((sum, { volumeMl }) => sum + volumeMl, 0)
  const perMl = allMl > 0 ? Math.min((rowPx * thickest) / greatest(amounts), tall / allMl) : 0
  const tops = stacked(amounts, perMl, (tall - allMl * perMl) / 2)
  return (
    <svg
      className={styles.streams}
      viewBox={`0 0 ${wide} ${tall}`}
      style={{ height: tall }}
      preserveAspectRatio="none"
      aria-hidden
    >
      {amounts.map(({ place, volumeMl }, index) => {
        const thick = Math.max(volumeMl * perMl, 0.75)
        const from = rowPx * (index + 0.5) - thick / 2
        const to = tops[index] ?? 0
        const bend = wide / 2
        return (
          <path
            key={place}
            className={styles.stream}
            style={{ fill: colourOf(place) ?? 'var(--glass-line)' }}
            d={`M0 ${from}C${bend} ${from} ${bend} ${to} ${wide} ${to}V${to + thick}C${bend} ${to + thick} ${bend} ${from + thick} 0 ${from + thick}Z`}
          />
        )
      })}
    </svg>
  )
}

/** Where each stream begins in the stack, one below the other. */
function stacked(amounts: readonly BlendAmount[], perMl: number, first: number): number[] {
  const tops: number[] = []
  let top = first
  for (const { volumeMl } of amounts) {
    tops.push(top)
    top += volumeMl * perMl
  }
  return tops
}

const greatest = (amounts: readonly BlendAmount[]): number =>
  Math.max(1e-9, ...amounts.map(({ volumeMl }) => volumeMl))
