/** The name of a stage at the head of its band, left out where it has no room: the jars below tell it. */
import styles from './batch-curve.module.css'

interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
}

const isBox = (box: unknown): box is Box =>
  typeof box === 'object' && box !== null && 'width' in box && 'x' in box

/** About how wide a letter is at the label's size. */
const letterPx = 7.6

export function BandLabel({ box, words }: { box: unknown; words: string }) {
  if (!isBox(box) || box.width < words.length * letterPx + 10) return null
  return (
    <text className={styles.band} x={box.x + 7} y={box.y + 17}>
      {words}
    </text>
  )
}
