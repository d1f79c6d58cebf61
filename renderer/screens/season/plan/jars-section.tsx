/** What stands in each jar over the year, as bars or a table. */
import { useMemo, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { OccupancyChart } from '../../../charts/occupancy-chart.tsx'
import { OccupancyKey } from '../../../charts/occupancy-key.tsx'
import { occupancyOf, type OccupancyBar } from '../../../charts/occupancy-rows.ts'
import { OccupancyTable } from '../../../charts/occupancy-table.tsx'
import { Button, ButtonLink } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { useFruitColour } from '../../../parts/names/use-fruit-colour.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { useBatches } from '../../../parts/names/use-names.ts'
import { Empty, Section } from '../../../parts/page/page.tsx'
import { useNow } from '../../../parts/time/use-now.ts'
import type { SeasonPlan } from '../../../../shared/schemas/season.ts'
import { useOpenBatch } from './use-open-batch.ts'

export function JarsSection({ plan }: { plan: SeasonPlan }) {
  const t = useWords()
  const nowMs = useNow().getTime()
  const kindName = useKindName()
  const colourOf = useFruitColour()
  const batches = useBatches()
  const { open, error, isPending } = useOpenBatch(plan)
  const [isTable, setTable] = useState(false)
  const occupancy = useMemo(() => occupancyOf(plan), [plan])
  const used = useMemo(() => new Set(plan.spans.map(({ use }) => use)), [plan])
  const batchName = (batchId: string) => batches.get(batchId)?.batch.name ?? t('parts.batchUnknown')

  const colourOfBar = ({ kindId, batchId }: OccupancyBar) =>
    kindId === undefined ? batches.get(batchId ?? '')?.batch.colour : colourOf(kindId)

  function actOf({ batchKey, batchId }: OccupancyBar) {
    const batch = plan.batches.find(({ key }) => key === batchKey)
    if (batch)
      return (
        <Button kind="quiet" isBusy={isPending} onPress={() => open(batch)}>
          {t('season.batches.open')}
        </Button>
      )
    return (
      batchId !== undefined &&
      batches.has(batchId) && (
        <ButtonLink kind="quiet" href={`/batches/${encodeURIComponent(batchId)}`}>
          {t('season.batches.toBatch')}
        </ButtonLink>
      )
    )
  }

  if (plan.jars.length === 0) return null
  return (
    <Section
      title={t('season.jars.title')}
      actions={
        plan.spans.length > 0 && (
          <Button kind="quiet" onPress={() => setTable(!isTable)}>
            {t(isTable ? 'season.asChart' : 'season.asTable')}
          </Button>
        )
      }
    >
      <FailureNote error={error} />
      {plan.spans.length === 0 ? (
        <Empty>{t('season.jars.none')}</Empty>
      ) : isTable ? (
        <OccupancyTable occupancy={occupancy} kindName={kindName} batchName={batchName} />
      ) : (
        <>
          <OccupancyKey used={used} />
          <OccupancyChart
            occupancy={occupancy}
            nowMs={nowMs}
            kindName={kindName}
            batchName={batchName}
            colourOf={colourOfBar}
            actOf={actOf}
          />
        </>
      )}
    </Section>
  )
}
