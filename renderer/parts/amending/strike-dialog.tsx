/** Taking a move out of the ledger, after seeing what would break. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { RecordedMove } from '../../../shared/schemas/moves.ts'
import { newId } from '../../app/new-id.ts'
import { useRead, useWrite } from '../../app/queries.ts'
import { Button } from '../button/button.tsx'
import { DialogActions, SheetDialog } from '../dialog/sheet-dialog.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import { ReadState } from '../failure/read-state.tsx'
import { Breaks } from '../moves/breaks.tsx'
import { useMoveWords } from '../moves/use-move-words.ts'

interface StrikeDialogProps {
  recorded: RecordedMove
  onClose: () => void
}

export function StrikeDialog({ recorded, onClose }: StrikeDialogProps) {
  const t = useWords()
  const what = useMoveWords()(recorded.move)
  const preview = useRead('moves.previewAmend', { moveId: recorded.id, move: null })
  const amend = useWrite('moves.amend')
  const [key] = useState(newId)
  const strike = () =>
    amend.mutate(
      { key, moveId: recorded.id, fromVersion: recorded.version, move: null },
      { onSuccess: onClose },
    )
  return (
    <SheetDialog title={t('batch.ledger.strikeTitle')} isOpen onClose={onClose}>
      <p>{t('batch.ledger.strikeText', { what })}</p>
      <ReadState query={preview}>
        {({ breaks }) => (
          <>
            {breaks.length === 0 ? (
              <p>{t('batch.ledger.strikeFine')}</p>
            ) : (
              <Breaks breaks={breaks} />
            )}
            <FailureNote error={amend.error} />
            <DialogActions>
              <Button
                kind="danger"
                onPress={strike}
                isBusy={amend.isPending}
                isDisabled={breaks.length > 0}
              >
                {t('batch.ledger.strikeGo')}
              </Button>
              <Button onPress={onClose}>{t('parts.cancel')}</Button>
            </DialogActions>
          </>
        )}
      </ReadState>
    </SheetDialog>
  )
}
