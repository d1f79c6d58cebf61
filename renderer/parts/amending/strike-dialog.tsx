/** Taking a move out of the ledger, after seeing all that follows. */
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { DialogActions, SheetDialog } from '../dialog/sheet-dialog.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import { useMoveWords } from '../moves/use-move-words.ts'
import type { MoveDialogProps } from './amend-dialog.tsx'
import { Consequences } from './consequences.tsx'
import { useAmending } from './use-amending.ts'

export function StrikeDialog({ recorded, onClose }: MoveDialogProps) {
  const t = useWords()
  const what = useMoveWords()(recorded.move)
  const amending = useAmending(recorded, null, onClose)
  return (
    <SheetDialog title={t('batch.ledger.strikeTitle')} isOpen onClose={onClose} size="wide">
      <p>{t('batch.ledger.strikeText', { what })}</p>
      <Consequences amending={amending} />
      <FailureNote error={amending.error ?? amending.previewed.error} />
      <DialogActions>
        <Button
          kind="danger"
          onPress={amending.save}
          isBusy={amending.isSaving}
          isDisabled={!amending.isReady}
        >
          {t('batch.ledger.strikeGo')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </SheetDialog>
  )
}
