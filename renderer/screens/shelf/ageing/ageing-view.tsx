/** The lots through their windows: bars or a table, all of time or some years of it. */
import { useMemo, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { useSettings } from '../../../app/settings.tsx'
import { AgeingChart } from '../../../charts/ageing-chart.tsx'
import { AgeingKey } from '../../../charts/ageing-key.tsx'
import {
  ageingDomain,
  ageingGroups,
  ageingSpans,
  type AgeingSpan,
} from '../../../charts/ageing-rows.ts'
import { AgeingTable } from '../../../charts/ageing-table.tsx'
import { Button } from '../../../parts/button/button.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { useBatches } from '../../../parts/names/use-names.ts'
import { Section } from '../../../parts/page/page.tsx'
import { useNow } from '../../../parts/time/use-now.ts'
import type { ShelfLot } from '../../../../shared/schemas/shelf.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import styles from '../section.module.css'

export function AgeingView({ lots }: { lots: readonly ShelfLot[] }) {
  const t = useWords()
  const { locale } = useSettings()
  const kindName = useKindName()
  const batches = useBatches()
  const nowMs = useNow().getTime()
  const [isTable, setTable] = useState(false)
  const [span, setSpan] = useState<AgeingSpan>('all')
  const [shift, setShift] = useState(0)
  const groups = useMemo(() => ageingGroups(lots, kindName, locale), [lots, kindName, locale])
  const bars = groups.flatMap((group) => group.bars)
  const domain = ageingDomain(bars, span, nowMs, shift)
  return (
    <Section
      title={t('shelf.ageing.title')}
      term="window"
      actions={
        <Button kind="quiet" onPress={() => setTable(!isTable)}>
          {t(isTable ? 'shelf.asChart' : 'shelf.asTable')}
        </Button>
      }
    >
      <p>{t('shelf.ageing.lead')}</p>
      {isTable ? (
        <AgeingTable groups={groups} kindName={kindName} />
      ) : (
        <>
          <div className={styles.bar}>
            <Segments
              label={t('shelf.ageing.window')}
              isLabelHidden
              value={span}
              onChange={(chosen) => {
                setSpan(chosen)
                setShift(0)
              }}
              choices={ageingSpans.map((value) => ({
                value,
                label: t(`shelf.ageing.windows.${value}`),
              }))}
            />
            {span !== 'all' && (
              <span className={styles.buttons}>
                <Button onPress={() => setShift(shift - 1)}>{t('shelf.ageing.earlier')}</Button>
                <Button onPress={() => setShift(shift + 1)}>{t('shelf.ageing.later')}</Button>
              </span>
            )}
            <AgeingKey />
          </div>
          <AgeingChart
            groups={groups}
            domain={domain}
            nowMs={nowMs}
            kindName={kindName}
            colourOf={(batchId) => batches.get(batchId)?.batch.colour}
            hrefOf={(lotId) => `#/shelf/${encodeURIComponent(lotId)}`}
          />
        </>
      )}
    </Section>
  )
}
