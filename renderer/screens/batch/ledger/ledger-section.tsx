/** The batch's ledger: every move with the composition right after it. */
import { useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { BatchPage, LedgerStep } from '../../../../shared/schemas/cellar.ts'
import { newId } from '../../../app/new-id.ts'
import { useWrite } from '../../../app/queries.ts'
import { Button } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { breaksOf } from '../../../parts/moves/breaks-of.ts'
import { Breaks } from '../../../parts/moves/breaks.tsx'
import { Section } from '../../../parts/page/page.tsx'
import { AmendDialog } from '../../../parts/amending/amend-dialog.tsx'
import { HistoryDialog } from '../../../parts/amending/history-dialog.tsx'
import { LedgerRow } from './ledger-row.tsx'
import { inOrder, type LedgerOrder } from './ledger-rows.ts'
import type { StepChange } from '../../../parts/amending/step-menu.tsx'
import { StrikeDialog } from '../../../parts/amending/strike-dialog.tsx'
import styles from './ledger.module.css'

export function LedgerSection({ page: { summary, steps } }: { page: BatchPage }) {
  const t = useWords()
  const undo = useWrite('moves.undo')
  const undoLast = () => undo.mutate({ key: newId(), batchId: summary.batch.id })
  const [order, setOrder] = useState<LedgerOrder>('newest')
  const [changing, setChanging] = useState<{ step: LedgerStep; change: StepChange }>()
  const close = () => setChanging(undefined)
  const recorded = changing?.step.recorded
  return (
    <Section
      title={t('batch.ledger.title')}
      actions={
        <div className={styles.order}>
          <Segments
            label={t('batch.ledger.order')}
            isLabelHidden
            value={order}
            onChange={setOrder}
            choices={(['newest', 'oldest'] as const).map((value) => ({
              value,
              label: t(`batch.ledger.${value}`),
            }))}
          />
          <Button onPress={undoLast} isBusy={undo.isPending}>
            {t('batch.log.undoLast')}
          </Button>
        </div>
      }
    >
      <FailureNote error={undo.error} />
      <Breaks breaks={breaksOf(undo.error)} />
      <div className={styles.frame}>
        <table className={styles.table}>
          <caption className="visually-hidden">{t('batch.ledger.caption')}</caption>
          <thead>
            <tr>
              <th scope="col">{t('batch.ledger.when')}</th>
              <th scope="col">{t('batch.ledger.what')}</th>
              <th scope="col">{t('batch.ledger.after')}</th>
              <th scope="col">
                <span className="visually-hidden">{t('batch.ledger.actions')}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {inOrder(steps, order).map((step) => (
              <LedgerRow
                key={step.recorded.id}
                step={step}
                onChange={(change) => setChanging({ step, change })}
              />
            ))}
          </tbody>
        </table>
      </div>
      {recorded && changing.change === 'amend' && (
        <AmendDialog recorded={recorded} ofBatchId={summary.batch.id} onClose={close} />
      )}
      {recorded && changing.change === 'strike' && (
        <StrikeDialog recorded={recorded} onClose={close} />
      )}
      {recorded && changing.change === 'history' && (
        <HistoryDialog recorded={recorded} onClose={close} />
      )}
    </Section>
  )
}
