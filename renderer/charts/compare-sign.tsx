/** The piece of line with its marker that stands for a batch in the legend. */
import { compareColour, compareDashes, compareMarkers } from './compare-ink.ts'

export function CompareSign({ index, colour }: { index: number; colour: string }) {
  const ink = compareColour(colour)
  return (
    <svg width={44} height={14} viewBox="0 0 44 14" aria-hidden>
      <line
        x1={0}
        x2={44}
        y1={7}
        y2={7}
        stroke={ink}
        strokeWidth={2.5}
        strokeDasharray={compareDashes[index]}
      />
      <path d={compareMarkers[index]} transform="translate(22 7)" fill={ink} />
    </svg>
  )
}
