/** The name of a stage over its band: across it, up along it, or left out where there is no room. */
import styles from './batch-curve.module.css'

interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

const isBox = (box: unknown): box is Box =>
  typeof box === 'object' && box !== null && 'width' in box && 'height' in box

/** About how wide a letter is at the label's size. */
const letterPx = 7.6

export function BandLabel({ box, words }: { box: unknown; words: string }) {
  if (!isBox(box)) return null
  const needed = words.length * letterPx + 10
  if (box.width >= needed)
    return (
      <text className={styles.band} x={box.x + 7} y={box.y + 17}>
        {words}
      </text>
    )
  if (box.width < 17 || box.height < needed) return null
  const x = box.x + 14
  const y = box.y + 7
  return (
    <text className={styles.band} x={x} y={y} textAnchor="end" transform={`rotate(-90 ${x} ${y})`}>
      {words}
    </text>
  )
}
