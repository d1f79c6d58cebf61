/** All readings of strength and sugar, each in its quantity's panel, over the lines. */
import { useXAxisScale, useYAxisScale, ZIndexLayer } from 'recharts'
import { quantitiesRead } from './curve-quantities.ts'
import type { CurveQuantity } from './curve-quantities.ts'
import { onScale } from './curve-scale.ts'
import type { CurveReadingPoint, CurveView } from './curve-view.ts'
import { ReadingMark } from './reading-mark.tsx'

interface ReadingMarksProps {
  view: CurveView
  shown: readonly CurveQuantity[]
}

const aboveAll = 650

/** Standard uncertainties to either side of a 90 % band. */
const sigmasOfBand = 1.645

export function ReadingMarks({ view, shown }: ReadingMarksProps) {
  return (
    <ZIndexLayer zIndex={aboveAll}>
      {quantitiesRead
        .filter(({ quantity }) => shown.includes(quantity))
        .flatMap((read) =>
          view.readings.map((reading) => (
            <One key={`${read.kind} ${reading.moveId}`} view={view} reading={reading} read={read} />
          )),
        )}
    </ZIndexLayer>
  )
}

interface OneProps {
  view: CurveView
  reading: CurveReadingPoint
  read: (typeof quantitiesRead)[number]
}

function One({ view, reading, read: { quantity, uncertainty, kind } }: OneProps) {
  const xOf = useXAxisScale()
  const yOf = useYAxisScale(quantity)
  const value = reading[quantity]
  if (value === undefined || !xOf || !yOf) return null
  const at = (one: number) => yOf(onScale(view.scales[quantity], one))
  const [cx, cy] = [xOf(reading.atMs), at(value)]
  if (cx === undefined || cy === undefined) return null
  const edge = at(value + sigmasOfBand * (reading[uncertainty] ?? 0)) ?? cy
  return (
    <ReadingMark
      cx={cx}
      cy={cy}
      kind={kind}
      standing={reading.standing}
      whiskerPx={Math.abs(cy - edge)}
    />
  )
}
