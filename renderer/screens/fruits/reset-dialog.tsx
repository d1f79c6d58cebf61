/** Asks before a copy goes back to the library, or a fruit of the maker's own goes altogether. */
import { useLocation } from 'wouter'
import { useWrite } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'

export interface ResetDialogProps {
  fruitId: string
  name: string
  /** True for a fruit that the library does not have. */
  isOwn: boolean
  isOpen: boolean
  onClose: () => void
}

export function ResetDialog({ fruitId, name, isOwn, isOpen, onClose }: ResetDialogProps) {
  const t = useWords()
  const [, navigate] = useLocation()
  const reset = useWrite('fruits.reset')
  const go = () =>
    reset.mutate(
      { fruitId },
      {
        onSuccess: () => {
          onClose()
          if (isOwn) navigate('/fruits')
        },
      },
    )
  return (
    <SheetDialog
      title={isOwn ? t('fruits.resetForm.deleteTitle', { name }) : t('fruits.resetForm.title')}
      isOpen={isOpen}
      onClose={onClose}
    >
      <p>{t(isOwn ? 'fruits.resetForm.deleteText' : 'fruits.resetForm.text', { name })}</p>
      <FailureNote error={reset.error} />
      <DialogActions>
        <Button kind="danger" onPress={go} isBusy={reset.isPending}>
          {t(isOwn ? 'fruits.resetForm.deleteGo' : 'fruits.resetForm.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </SheetDialog>
  )
}
