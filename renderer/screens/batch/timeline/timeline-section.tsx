/** Which liquid stood where: bars or a table. */
import { useMemo, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { BatchPage } from '../../../../shared/schemas/cellar.ts'
import { JarTimeline } from '../../../charts/jar-timeline.tsx'
import type { TimeAxisKind } from '../../../charts/time-labels.ts'
import { timelineOf } from '../../../charts/timeline-rows.ts'
import { TimelineTable } from '../../../charts/timeline-table.tsx'
import { Button } from '../../../parts/button/button.tsx'
import { useJars } from '../../../parts/names/use-names.ts'
import { Section } from '../../../parts/page/page.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import { useForecast } from '../use-steeping.ts'

interface TimelineSectionProps {
  page: BatchPage
  axis: TimeAxisKind
}

export function TimelineSection({ page: { jarSpans, summary }, axis }: TimelineSectionProps) {
  const t = useWords()
  const jars = useJars()
  const nowMs = useTimes().now.getTime()
  const [isTable, setIsTable] = useState(false)
  const forecast = useForecast(summary.batch.id).data
  const extracted = new Map(
    forecast?.jars.map(({ jarId, extractFraction }) => [jarId, extractFraction.value]),
  )
  const timeline = useMemo(() => timelineOf(jarSpans, nowMs), [jarSpans, nowMs])
  return (
    <Section
      title={t('batch.timeline.title')}
      actions={
        <Button kind="quiet" onPress={() => setIsTable(!isTable)}>
          {t(isTable ? 'batch.timeline.asChart' : 'batch.timeline.asTable')}
        </Button>
      }
    >
      {jarSpans.length === 0 && <p>{t('batch.timeline.empty')}</p>}
      {jarSpans.length > 0 && isTable && (
        <TimelineTable
          timeline={timeline}
          extracted={extracted}
          jarName={(id) => jars.get(id)?.jar.name ?? t('parts.place.theJar')}
        />
      )}
      {jarSpans.length > 0 && !isTable && (
        <JarTimeline
          timeline={timeline}
          jars={jars}
          axis={axis}
          colour={summary.batch.colour}
          nowMs={nowMs}
          extracted={extracted}
        />
      )}
    </Section>
  )
}
