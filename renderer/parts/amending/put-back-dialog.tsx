/** An older version, or a struck move, put back as it read then, after seeing all that follows. */
import type { Move } from '../../../shared/schemas/moves.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { DialogActions, SheetDialog } from '../dialog/sheet-dialog.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import { useRefusalWords } from '../failure/refusal-words.ts'
import { useMoveWords } from '../moves/use-move-words.ts'
import type { MoveDialogProps } from './amend-dialog.tsx'
import { Consequences } from './consequences.tsx'
import { useAmending } from './use-amending.ts'

/** `recorded` as it stands now; `move` as it is to read again. */
export function PutBackDialog({ recorded, move, onClose }: MoveDialogProps & { move: Move }) {
  const t = useWords()
  const what = useMoveWords()(move)
  const refusalWords = useRefusalWords()
  const amending = useAmending(recorded, move, onClose)
  const refused = amending.seen?.refusals[0]
  return (
    <SheetDialog title={t('moves.putBack.title')} isOpen onClose={onClose} size="wide">
      <p>{t('moves.putBack.text', { what })}</p>
      {refused && <p role="alert">{refusalWords(refused.refusal)}</p>}
      <Consequences amending={amending} />
      <FailureNote error={amending.error ?? amending.previewed.error} />
      <DialogActions>
        <Button
          kind="primary"
          onPress={amending.save}
          isBusy={amending.isSaving}
          isDisabled={!amending.isReady}
        >
          {t('moves.putBack.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </SheetDialog>
  )
}
