/** Every row with what would become of it; cells are mended in place, rows left out, the rest accepted. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { Toggles } from '../../parts/fields/toggles.tsx'
import { Empty } from '../../parts/page/page.tsx'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { fieldsOf, type SheetKind } from './fields.ts'
import { RowsTable } from './rows-table.tsx'
import type { Sums } from './sums.ts'
import type { RowStanding } from './judged-rows.ts'
import type { ColumnState, RowState, useAccept } from './use-bring-in.ts'
import styles from './bring-in.module.css'

export interface RowsStepProps {
  kind: SheetKind
  columns: ColumnState
  state: RowState
  accepting: ReturnType<typeof useAccept>
  sums: Sums
  onBack: () => void
  onAccept: () => void
}

export function RowsStep(props: RowsStepProps) {
  const { kind, columns, state, accepting, sums, onBack, onAccept } = props
  const t = useWords()
  const quantities = useQuantities()
  const [isMendOnly, setMendOnly] = useState(false)
  const { rows, look, isRead } = state
  if (!isRead) return <p className={styles.quiet}>{t('sheets.rows.waiting')}</p>

  const inState = (wanted: RowStanding) => rows.filter(({ standing }) => standing === wanted)
  const toMend = inState('mend')
  const outCount = inState('leftOut').length + inState('there').length
  const isWaiting = inState('waiting').length > 0
  const shown = isMendOnly ? toMend : rows
  // A cell that is wrong can be mended, though no column has it.
  const wrong = new Set(toMend.flatMap(({ problems }) => problems.map(({ field }) => field)))
  const told = fieldsOf[kind].filter(
    ({ id, isRequired }) =>
      isRequired || wrong.has(id) || columns.plan?.columns.some((column) => column.field === id),
  )
  return (
    <div className={styles.step}>
      <ul className={styles.sums} aria-label={t('sheets.rows.sums')}>
        <li>
          {t(kind === 'stock' ? 'sheets.rows.readyStock' : 'sheets.rows.ready', {
            count: sums.rowCount,
            bottles: t('sheets.rows.bottles', { count: sums.bottleCount }),
            volume: quantities.text(sums.volumeMl, 'volume'),
            mass: quantities.text(sums.massG, 'mass'),
          })}
        </li>
        <li data-wants={toMend.length > 0 || undefined}>
          {t('sheets.rows.toMend', { count: toMend.length })}
        </li>
        <li>{t('sheets.rows.out', { count: outCount })}</li>
      </ul>
      <FailureNote error={look.error ?? accepting.error} />
      <div className={styles.buttons}>
        <Button
          kind="primary"
          isBusy={accepting.isPending}
          isDisabled={sums.rowCount === 0 || toMend.length > 0 || isWaiting}
          onPress={onAccept}
        >
          {t('sheets.rows.accept', { count: sums.rowCount })}
        </Button>
        {toMend.length > 0 && (
          <Button onPress={() => state.leaveOut(toMend.map(({ line }) => line))}>
            {t('sheets.rows.leaveOutAll', { count: toMend.length })}
          </Button>
        )}
        <Button onPress={onBack}>{t('sheets.back')}</Button>
        <Toggles
          label={t('sheets.rows.mendOnly')}
          value={isMendOnly ? ['mend'] : []}
          onChange={(chosen) => setMendOnly(chosen.length > 0)}
          choices={[{ value: 'mend', label: t('sheets.rows.mendOnly') }]}
        />
      </div>
      {toMend.length > 0 && <p className={styles.quiet}>{t('sheets.rows.mendFirst')}</p>}
      {shown.length > 0 ? (
        <RowsTable rows={shown} fields={told} onMend={state.mend} onTake={state.take} />
      ) : (
        <Empty>{t('sheets.rows.noneToMend')}</Empty>
      )}
    </div>
  )
}
