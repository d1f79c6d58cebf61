/** The button that opens the dialog, why it is held back, and where the record went. */
import { useState } from 'react'
import type { Batch } from '../../../../shared/schemas/cellar.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { Button, ButtonLink } from '../../../parts/button/button.tsx'
import styles from '../result/result.module.css'
import { RecordDialog, type RecordDialogProps } from './record-dialog.tsx'

export interface RecordingRowProps extends Omit<
  RecordDialogProps,
  'isOpen' | 'onClose' | 'toJarId'
> {
  toJarId: string | undefined
  /** Why it cannot be recorded yet. */
  heldBack?: string | undefined
}

export function RecordingRow({ toJarId, heldBack, onRecorded, ...rest }: RecordingRowProps) {
  const t = useWords()
  const [isOpen, setOpen] = useState(false)
  const isReady = toJarId !== undefined && heldBack === undefined && rest.amounts.length > 0
  return (
    <div className={styles.recorded}>
      <Button kind="primary" onPress={() => setOpen(true)} isDisabled={!isReady}>
        {t('marry.record.open')}
      </Button>
      {heldBack !== undefined && <span className={styles.quiet}>{heldBack}</span>}
      {isReady && (
        <RecordDialog
          {...rest}
          toJarId={toJarId}
          isOpen={isOpen}
          onClose={() => setOpen(false)}
          onRecorded={(batch) => {
            setOpen(false)
            onRecorded(batch)
          }}
        />
      )}
    </div>
  )
}

/** Where it was written, and the way there: it can be taken back on the batch's page. */
export function Recorded({ into }: { into: Pick<Batch, 'id' | 'name'> | undefined }) {
  const t = useWords()
  return (
    <div className={styles.recorded}>
      <output>{into && t('marry.record.done', { batch: into.name })}</output>
      {into && (
        <ButtonLink kind="quiet" href={`/batches/${encodeURIComponent(into.id)}`}>
          {t('marry.record.toBatch')}
        </ButtonLink>
      )}
    </div>
  )
}
