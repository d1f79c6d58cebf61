/** The curve with its choices: what to show, whole batch or one jar, days or dates, drawing or table. */
import { useMemo, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { BatchPage } from '../../../../shared/schemas/cellar.ts'
import type { BatchCurve as Curve } from '../../../../shared/schemas/steeping.ts'
import { BatchCurve } from '../../../charts/batch-curve.tsx'
import { CurveKey } from '../../../charts/curve-key.tsx'
import { curveQuantities, type CurveQuantity } from '../../../charts/curve-quantities.ts'
import { CurveTable } from '../../../charts/curve-table.tsx'
import { bottledMs, curveView } from '../../../charts/curve-view.ts'
import { restingValues } from '../../../charts/resting-values.ts'
import type { TimeAxisKind } from '../../../charts/time-labels.ts'
import { Button } from '../../../parts/button/button.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { Toggles } from '../../../parts/fields/toggles.tsx'
import { useJars } from '../../../parts/names/use-names.ts'
import { Section } from '../../../parts/page/page.tsx'
import { ScrollBox } from '../../../parts/table/scroll-box.tsx'
import { useCurve, useForecast } from '../use-steeping.ts'
import { firstDrawAt, keptTemperatureC } from '../what-if/as-it-is.ts'
import { useWhatIf } from '../what-if/use-what-if.ts'
import { WhatIfStrip } from '../what-if/what-if-strip.tsx'
import { useCurveWords } from './use-curve-words.ts'
import styles from './curve-section.module.css'

interface CurveSectionProps {
  page: BatchPage
  axis: TimeAxisKind
  onAxis: (axis: TimeAxisKind) => void
}

export function CurveSection(props: CurveSectionProps) {
  const t = useWords()
  const curve = useCurve(props.page.summary.batch.id)
  return (
    <Section title={t('batch.curve.title')} term="band" actions={<AxisChoice {...props} />}>
      <ReadState query={curve}>
        {(data) =>
          data.series.every(({ points }) => points.length === 0) ? (
            <p>{t('batch.curve.empty')}</p>
          ) : (
            <Shown curve={data} page={props.page} axis={props.axis} />
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

interface ShownProps {
  curve: Curve
  page: BatchPage
  axis: TimeAxisKind
}

function Shown({ curve, page, axis }: ShownProps) {
  const t = useWords()
  const jars = useJars()
  const { batch, jars: jarsNow } = page.summary
  const [key, setKey] = useState('whole')
  const [shown, setShown] = useState<readonly CurveQuantity[]>(['strengthPctVol', 'sugarGPerL'])
  const [span, setSpan] = useState<'bottles' | 'now'>('bottles')
  const [isTable, setIsTable] = useState(false)
  const forecast = useForecast(batch.id).data
  const asking = useWhatIf(batch.id)
  const { answer } = asking
  const drawOffAt = asking.asked?.drawOffAt
  const view = useMemo(() => {
    const withLiquid = jarsNow.filter(({ liquid }) => liquid).map(({ jarId }) => jarId)
    const drawOffMs = drawOffAt === undefined ? undefined : Date.parse(drawOffAt)
    return curveView(curve, {
      key,
      endsAtBottles: span === 'bottles',
      resting: restingValues(forecast, key, withLiquid),
      whatIf: answer && { series: answer.series, drawOffMs },
    })
  }, [curve, key, span, forecast, jarsNow, answer, drawOffAt])
  const description = useCurveWords(view)
  const jarName = (id: string) => jars.get(id)?.jar.name ?? t('parts.place.theJar')
  const keys = curve.series.filter(({ points }) => points.length > 0).map((series) => series.key)
  return (
    <div className={styles.shown}>
      <div className={styles.choices}>
        <Toggles
          label={t('batch.curve.show')}
          value={shown}
          onChange={(chosen) => chosen.length > 0 && setShown(chosen)}
          choices={curveQuantities.map((value) => ({
            value,
            label: t(`batch.curve.quantity.${value}`),
          }))}
        />
        {keys.length > 2 && (
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
        )}
        {bottledMs(curve) !== undefined && (
          <Segments
            label={t('batch.curve.span')}
            isLabelHidden
            value={span}
            onChange={setSpan}
            choices={(['bottles', 'now'] as const).map((value) => ({
              value,
              label: t(`batch.curve.spans.${value}`),
            }))}
          />
        )}
        <Button kind="quiet" onPress={() => setIsTable(!isTable)}>
          {t(isTable ? 'batch.curve.asChart' : 'batch.curve.asTable')}
        </Button>
      </div>
      {isTable ? (
        <ScrollBox label={t('batch.curve.tableCaption')} className={styles.table}>
          <CurveTable view={view} shown={shown} jarName={jarName} />
        </ScrollBox>
      ) : (
        <>
          <BatchCurve view={view} shown={shown} axis={axis} description={description} />
          <CurveKey view={view} />
        </>
      )}
      {hasSpirit(curve) && (
        <WhatIfStrip
          asking={asking}
          curve={curve}
          keptC={keptTemperatureC(page.steps)}
          firstDrawAt={firstDrawAt(page.steps)}
          jarName={jarName}
        />
      )}
    </div>
  )
}

/** Before there is spirit nothing steeps, and nothing could be otherwise. */
const hasSpirit = ({ series }: Curve): boolean =>
  series.some(({ points }) => points.some(({ strengthPctVol }) => strengthPctVol > 0))
