/** A recorded move changed in the form it was logged with; what would break is shown first. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { RecordedMove } from '../../../shared/schemas/moves.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { Button } from '../button/button.tsx'
import { DialogActions, SheetDialog } from '../dialog/sheet-dialog.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import { draftOfMove } from '../moves/drafts/draft.ts'
import type { LogContext } from '../moves/drafts/log-context.ts'
import { DraftForm } from '../moves/forms/draft-form.tsx'
import { PreviewPane } from '../moves/preview-pane.tsx'
import form from '../moves/record-form.module.css'
import { useDraft } from '../moves/use-draft.ts'
import { useAmendPreview } from '../moves/use-preview.ts'

interface AmendDialogProps {
  recorded: RecordedMove
  context: LogContext
  colour: string
  onClose: () => void
}

export function AmendDialog(props: AmendDialogProps) {
  const t = useWords()
  return (
    <SheetDialog title={t('batch.ledger.amendTitle')} isOpen onClose={props.onClose} size="wide">
      <AmendForm {...props} />
    </SheetDialog>
  )
}

function AmendForm({ recorded, context, colour, onClose }: AmendDialogProps) {
  const t = useWords()
  const inHand = useDraft(() => draftOfMove(recorded.move), context)
  const [move] = inHand.moves ?? []
  const previewed = useAmendPreview(recorded.id, move)
  const amend = useWrite('moves.amend')
  const [key] = useState(newId)
  const breaks = previewed.preview?.breaks ?? []

  function submit() {
    const [amended] = inHand.attempt() ?? []
    if (!amended || amend.isPending) return
    const { id: moveId, version: fromVersion } = recorded
    amend.mutate({ key, moveId, fromVersion, move: amended }, { onSuccess: onClose })
  }

  return (
    <form
      className={form.columns}
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        submit()
      }}
    >
      <div className={form.fields}>
        <DraftForm
          draft={inHand.draft}
          onChange={inHand.setDraft}
          context={context}
          problems={inHand.problems}
          isAmending
        />
        <FailureNote error={amend.error} />
        <DialogActions>
          <Button
            kind="primary"
            type="submit"
            isBusy={amend.isPending}
            isDisabled={breaks.length > 0}
          >
            {t('batch.ledger.amendSave')}
          </Button>
          <Button onPress={onClose}>{t('parts.cancel')}</Button>
        </DialogActions>
      </div>
      <PreviewPane
        previewed={previewed}
        draft={inHand.draft}
        onMend={inHand.setDraft}
        colour={colour}
      />
    </form>
  )
}
