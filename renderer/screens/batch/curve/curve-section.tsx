/** The curve with its choices: whole batch or one jar, days or dates, drawing or table. */
import { useMemo, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { BatchCurve as Curve } from '../../../../shared/schemas/steeping.ts'
import { useRead } from '../../../app/queries.ts'
import { BatchCurve } from '../../../charts/batch-curve.tsx'
import { CurveTable } from '../../../charts/curve-table.tsx'
import { curveView, type CurveView } from '../../../charts/curve-view.ts'
import type { TimeAxisKind } from '../../../charts/time-labels.ts'
import { Button } from '../../../parts/button/button.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { useJars } from '../../../parts/names/use-names.ts'
import { Section } from '../../../parts/page/page.tsx'
import { QuantityMark } from '../../../parts/quantity/quantity-mark.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import styles from './curve-section.module.css'

interface CurveSectionProps {
  batchId: string
  axis: TimeAxisKind
  onAxis: (axis: TimeAxisKind) => void
}

export function CurveSection(props: CurveSectionProps) {
  const t = useWords()
  const curve = useRead(
    'batches.curve',
    { batchId: props.batchId, points: 400 },
    { keepsLast: true },
  )
  return (
    <Section title={t('batch.curve.title')} actions={<AxisChoice {...props} />}>
      <ReadState query={curve}>
        {(data) =>
          data.series.every(({ points }) => points.length === 0) ? (
            <p>{t('batch.curve.empty')}</p>
          ) : (
            <Shown curve={data} axis={props.axis} />
          )
        }
      </ReadState>
    </Section>
  )
}

function AxisChoice({ axis, onAxis }: CurveSectionProps) {
  const t = useWords()
  return (
    <Segments
      label={t('batch.curve.axis')}
      isLabelHidden
      value={axis}
      onChange={onAxis}
      choices={(['days', 'dates'] as const).map((value) => ({
        value,
        label: t(`batch.curve.axes.${value}`),
      }))}
    />
  )
}

function Shown({ curve, axis }: { curve: Curve; axis: TimeAxisKind }) {
  const t = useWords()
  const jars = useJars()
  const { now } = useTimes()
  const [key, setKey] = useState('whole')
  const [isTable, setIsTable] = useState(false)
  const nowMs = now.getTime()
  const view = useMemo(() => curveView(curve, key, nowMs), [curve, key, nowMs])
  const description = useDescription(view)
  const jarName = (id: string) => jars.get(id)?.jar.name ?? t('parts.place.theJar')
  const keys = curve.series.filter(({ points }) => points.length > 0).map((series) => series.key)
  return (
    <div className={styles.shown}>
      <div className={styles.choices}>
        <Segments
          label={t('batch.curve.of')}
          isLabelHidden
          value={key}
          onChange={setKey}
          choices={keys.map((value) => ({
            value,
            label: value === 'whole' ? t('batch.curve.whole') : jarName(value),
          }))}
        />
        <ul className={styles.legend}>
          <li>
            <QuantityMark kind="strength" hasLine /> {t('batch.curve.strengthAxis')}
          </li>
          <li>
            <QuantityMark kind="sugar" hasLine /> {t('batch.curve.sugarAxis')}
          </li>
        </ul>
        <Button kind="quiet" onPress={() => setIsTable(!isTable)}>
          {t(isTable ? 'batch.curve.asChart' : 'batch.curve.asTable')}
        </Button>
      </div>
      {isTable ? (
        <div className={styles.table}>
          <CurveTable view={view} jarName={jarName} />
        </div>
      ) : (
        <BatchCurve view={view} axis={axis} description={description} />
      )}
    </div>
  )
}

/** Where the lines begin and where they stand now, in a sentence. */
function useDescription({ rows }: CurveView): string {
  const t = useWords()
  const { text } = useQuantities()
  const times = useTimes()
  const drawn = rows.filter((row) => row.strengthPctVol !== null)
  const first = drawn[0]
  const last = drawn.at(-1)
  if (!first || !last) return t('batch.curve.emptyJar')
  return t('batch.curve.description', {
    from: times.day(new Date(first.atMs).toISOString()),
    to: times.day(new Date(last.atMs).toISOString()),
    strengthFrom: text(first.strengthPctVol ?? 0, 'strength'),
    strengthTo: text(last.strengthPctVol ?? 0, 'strength'),
    sugarFrom: text(first.sugarGPerL ?? 0, 'sugar'),
    sugarTo: text(last.sugarGPerL ?? 0, 'sugar'),
  })
}
