/** What the lot tasted like over the years: a list, panels axis by axis, and another lot beside it. */
import { useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { useRead } from '../../../app/queries.ts'
import { useSettings } from '../../../app/settings.tsx'
import { TastePanels } from '../../../charts/taste-panels.tsx'
import type { TastedLot, TasteTime } from '../../../charts/taste-rows.ts'
import { TasteTable } from '../../../charts/taste-table.tsx'
import { Button } from '../../../parts/button/button.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { useBatches } from '../../../parts/names/use-names.ts'
import { Section } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { ShelfPage } from '../../../../shared/schemas/shelf.ts'
import type { Acts } from '../acts/use-acts.ts'
import { SideBySide } from './side-by-side.tsx'
import { TastingList } from './tasting-list.tsx'
import styles from './lot.module.css'
import { collatorOf } from '../../../parts/formatters/formatters.ts'

interface TastingsSectionProps {
  page: ShelfPage
  acts: Acts
}

export function TastingsSection({ page, acts }: TastingsSectionProps) {
  const t = useWords()
  const { lot } = page.shelfLot
  const [otherId, setOtherId] = useState<string>()
  const [isTable, setTable] = useState(false)
  const [by, setBy] = useState<TasteTime>('date')
  const other = useRead(
    'shelf.page',
    { bottleLotId: otherId ?? '' },
    { isEnabled: otherId !== undefined },
  )
  const tasted = useTasted()
  const otherPage = otherId === undefined ? undefined : other.data
  const lots = [tasted(page), ...(otherPage ? [tasted(otherPage)] : [])]
  const hasScores = lots.some(({ tastings }) =>
    tastings.some(({ scores }) => Object.keys(scores).length > 0),
  )
  return (
    <Section
      title={t('shelf.lot.tastings')}
      actions={
        <span className={styles.buttons}>
          {hasScores && (
            <Button kind="quiet" onPress={() => setTable(!isTable)}>
              {t(isTable ? 'shelf.asChart' : 'shelf.asTable')}
            </Button>
          )}
          <Button onPress={() => acts.begin({ kind: 'taste', lot })}>
            {t('shelf.act.taste.name')}
          </Button>
        </span>
      }
    >
      {page.tastings.length === 0 && <p className={styles.quiet}>{t('shelf.lot.tastingsNone')}</p>}
      <div className={styles.compare}>
        <CompareChoice lotId={lot.id} value={otherId} onChange={setOtherId} />
        {hasScores && !isTable && (
          <Segments
            label={t('shelf.lot.axisBy')}
            value={by}
            onChange={setBy}
            choices={(['date', 'age'] as const).map((value) => ({
              value,
              label: t(`shelf.lot.axes.${value}`),
            }))}
          />
        )}
      </div>
      {otherId !== undefined && !otherPage && (
        <ReadState<unknown> query={other}>{() => null}</ReadState>
      )}
      {hasScores && (isTable ? <TasteTable lots={lots} /> : <TastePanels lots={lots} by={by} />)}
      {otherPage && <SideBySide pages={[page, otherPage]} />}
      <TastingList page={page} />
    </Section>
  )
}

function useTasted(): (page: ShelfPage) => TastedLot {
  const batches = useBatches()
  return ({ shelfLot: { lot }, tastings }) => ({
    lotId: lot.id,
    name: lot.name,
    bottledMs: Date.parse(lot.bottledAt),
    colour: batches.get(lot.batchId)?.batch.colour ?? '#888888',
    tastings: tastings.flatMap(({ move }) => (move.kind === 'taste' ? [move] : [])),
  })
}

interface CompareChoiceProps {
  lotId: string
  value: string | undefined
  onChange: (lotId: string | undefined) => void
}

function CompareChoice({ lotId, value, onChange }: CompareChoiceProps) {
  const t = useWords()
  const { locale } = useSettings()
  const { size } = useQuantities()
  const bottles = useRead('bottles.list', {}).data ?? []
  const others = bottles.filter(({ id }) => id !== lotId)
  if (others.length === 0) return null
  const collator = collatorOf(locale)
  return (
    <div className={styles.compareChoice}>
      <ChoiceField
        label={t('shelf.lot.compare')}
        value={value ?? ''}
        onChange={onChange}
        placeholder={t('shelf.lot.compareNone')}
        isRequired={false}
        choices={others
          .map(({ id, name, bottleSizeMl }) => ({
            value: id,
            label: `${name}, ${size(bottleSizeMl, 'volume').text}`,
          }))
          .toSorted((a, b) => collator.compare(a.label, b.label))}
      />
      {value !== undefined && (
        <Button kind="quiet" onPress={() => onChange(undefined)}>
          {t('shelf.lot.compareStop')}
        </Button>
      )}
    </div>
  )
}
