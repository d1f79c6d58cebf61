/** Stock over time by kind, with what the maker's own drinking will leave. */
import { useMemo, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { useRead } from '../../../app/queries.ts'
import { StockLines } from '../../../charts/stock-lines.tsx'
import { stockRows } from '../../../charts/stock-rows.ts'
import { StockTable } from '../../../charts/stock-table.tsx'
import { Button } from '../../../parts/button/button.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { Section } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useNow } from '../../../parts/time/use-now.ts'
import type { KindStock, ShelfStock } from '../../../../shared/schemas/shelf.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { useWindowWords } from '../use-window-words.ts'
import { KindsTable } from './kinds-table.tsx'
import { useRunsOutWords } from './use-runs-out-words.ts'
import styles from '../section.module.css'

const pastMonths = { y2: 24, y5: 60, y10: 120, all: 600 } as const
const pasts = ['y2', 'y5', 'y10', 'all'] as const
const forecastMonths = 24

/** Ids hold no spaces: this can be no kind's. */
const everything = 'every kind'

export function StockView() {
  const t = useWords()
  const [past, setPast] = useState<(typeof pasts)[number]>('y5')
  const [isTable, setTable] = useState(false)
  const [shownId, setShownId] = useState(everything)
  const stock = useRead(
    'shelf.stock',
    { pastMonths: pastMonths[past], forecastMonths },
    { keepsLast: true },
  )
  return (
    <Section
      title={t('shelf.stock.title')}
      actions={
        <Button kind="quiet" onPress={() => setTable(!isTable)}>
          {t(isTable ? 'shelf.asChart' : 'shelf.asTable')}
        </Button>
      }
    >
      <ReadState query={stock}>
        {(found) => (
          <Shown stock={found} shownId={shownId} onShow={setShownId} isTable={isTable}>
            <Segments
              label={t('shelf.stock.past')}
              isLabelHidden
              value={past}
              onChange={setPast}
              choices={pasts.map((value) => ({ value, label: t(`shelf.stock.pasts.${value}`) }))}
            />
          </Shown>
        )}
      </ReadState>
    </Section>
  )
}

interface ShownProps {
  stock: ShelfStock
  shownId: string
  onShow: (kindId: string) => void
  isTable: boolean
  children: React.ReactNode
}

function Shown({ stock, shownId, onShow, isTable, children }: ShownProps) {
  const t = useWords()
  const kindName = useKindName()
  const nowMs = useNow().getTime()
  const shown = stock.kinds.find(({ kindId }) => kindId === shownId) ?? stock.all
  const name = shown === stock.all ? t('shelf.stock.all') : kindName(shown.kindId)
  const rows = useMemo(() => stockRows(shown, nowMs), [shown, nowMs])
  const description = useDescription(name, shown)
  return (
    <>
      <Answer stock={shown} />
      <div className={styles.bar}>
        <ChoiceField
          label={t('shelf.stock.of')}
          value={shown === stock.all ? everything : shown.kindId}
          onChange={onShow}
          choices={[
            { value: everything, label: t('shelf.stock.all') },
            ...stock.kinds.map(({ kindId }) => ({ value: kindId, label: kindName(kindId) })),
          ]}
        />
        {children}
      </div>
      {isTable ? (
        <StockTable rows={rows} />
      ) : (
        <StockLines rows={rows} nowMs={nowMs} description={description} />
      )}
      <KindsTable stock={stock} kindName={kindName} onShow={onShow} />
    </>
  )
}

function Answer({ stock }: { stock: KindStock }) {
  const t = useWords()
  const { text } = useQuantities()
  const runsOut = useRunsOutWords()
  return (
    <p>
      {t('shelf.stock.answer', {
        volume: text(stock.volumeMl, 'volume'),
        perYear: text(stock.perYearMl.value, 'volume'),
      })}{' '}
      {stock.volumeMl > 0 &&
        (stock.runsOut
          ? t('shelf.stock.answerOut', { when: runsOut(stock) })
          : t('shelf.stock.answerLasts'))}{' '}
      {!stock.isOwnHistory && t('shelf.stock.borrowed')}
    </p>
  )
}

function useDescription(kind: string, { forecast, volumeMl }: KindStock): string {
  const t = useWords()
  const { text } = useQuantities()
  const { month } = useWindowWords()
  const end = forecast.at(-1)
  if (!end) return `${kind}: ${text(volumeMl, 'volume')}`
  return t('shelf.stock.description', {
    kind,
    now: text(volumeMl, 'volume'),
    end: month(end.at),
    low: text(end.volumeMl.low, 'volume'),
    high: text(end.volumeMl.high, 'volume'),
  })
}
