/** The batches of the plan by the week they begin; each opens as a draft. */
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { listFormat } from '../../../parts/formatters/formatters.ts'
import { Button } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { useFruitColour } from '../../../parts/names/use-fruit-colour.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Table } from '../../../parts/table/table.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { SeasonBatch, SeasonPlan } from '../../../../shared/schemas/season.ts'
import { useOpenBatch } from './use-open-batch.ts'
import styles from './plan.module.css'

export function BatchesTable({ plan }: { plan: SeasonPlan }) {
  const t = useWords()
  const { locale } = useSettings()
  const { text, size } = useQuantities()
  const times = useTimes()
  const kindName = useKindName()
  const colourOf = useFruitColour()
  const { open, error, isPending } = useOpenBatch(plan)
  const names = new Map(plan.jars.map(({ jarId, name }) => [jarId, name]))
  const list = listFormat(locale, { type: 'unit' })
  const jars = (all: readonly { jarId: string }[]) =>
    list.format(all.map(({ jarId }) => names.get(jarId) ?? t('parts.place.theJar')))
  return (
    <>
      <FailureNote error={error} />
      <Table<SeasonBatch>
        caption={t('season.batches.caption')}
        rows={plan.batches.toSorted((a, b) => a.startAt.localeCompare(b.startAt))}
        rowKey={({ key }) => key}
        columns={[
          {
            key: 'batch',
            header: t('season.batches.batch'),
            isRowHeader: true,
            cell: ({ kindId, source }) => (
              <span className={styles.kind} style={{ '--liquid': colourOf(kindId) }}>
                <span className={styles.swatch} aria-hidden />
                <span>
                  {kindName(kindId)}
                  {source === 'pantry' && (
                    <span className={styles.small}>{t('season.source.pantry')}</span>
                  )}
                </span>
              </span>
            ),
          },
          {
            key: 'begins',
            header: t('season.batches.begins'),
            cell: ({ startAt }) => times.day(startAt),
          },
          {
            key: 'fruit',
            header: t('season.batches.fruit'),
            align: 'end',
            cell: ({ fruitG }) => <Quantity value={fruitG} dimension="mass" />,
          },
          {
            key: 'jars',
            header: t('season.batches.jars'),
            cell: ({ steepJars, settleJars }) => (
              <>
                {jars(steepJars)}
                {settleJars.length > 0 && (
                  <span className={styles.small}>
                    {t('season.batches.settleIn', { jars: jars(settleJars) })}
                  </span>
                )}
              </>
            ),
          },
          {
            key: 'drawn',
            header: t('season.batches.drawn'),
            isMinor: true,
            cell: ({ drawnAt }) => times.day(drawnAt),
          },
          {
            key: 'bottled',
            header: t('season.batches.bottled'),
            cell: ({ bottledAt }) => times.day(bottledAt),
          },
          {
            key: 'ready',
            header: t('season.batches.ready'),
            isMinor: true,
            cell: ({ readyAt }) => times.day(readyAt),
          },
          {
            key: 'gives',
            header: t('season.batches.gives'),
            align: 'end',
            cell: ({ bottles, bottleSizeMl, volumeMl, replay }) => (
              <>
                {`${bottles}\u00a0×\u00a0${size(bottleSizeMl, 'volume').text}`}
                <span className={styles.range}>
                  {t('season.span', {
                    from: text(volumeMl.low, 'volume'),
                    to: text(volumeMl.high, 'volume'),
                  })}
                </span>
                {!replay.isWithinBand && (
                  <span className={styles.small}>
                    {t('season.batches.outside', { volume: text(replay.volumeMl, 'volume') })}
                  </span>
                )}
              </>
            ),
          },
          {
            key: 'open',
            header: <span className="visually-hidden">{t('season.batches.open')}</span>,
            cell: (batch) => (
              <Button
                kind="quiet"
                isBusy={isPending}
                onPress={() => open(batch)}
                aria-label={t('season.batches.openOne', {
                  kind: kindName(batch.kindId),
                  day: times.day(batch.startAt),
                })}
              >
                {t('season.batches.open')}
              </Button>
            ),
          },
        ]}
      />
    </>
  )
}
