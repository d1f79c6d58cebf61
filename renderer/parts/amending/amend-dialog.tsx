/** A recorded move changed in the form it was logged with; all that follows is shown before it is saved. */
import { useWords } from '../../app/words/use-words.ts'
import type { RecordedMove } from '../../../shared/schemas/moves.ts'
import { Button } from '../button/button.tsx'
import { DialogActions, SheetDialog } from '../dialog/sheet-dialog.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import { useBatches } from '../names/use-names.ts'
import { draftOfMove } from '../moves/drafts/draft.ts'
import type { LogContext } from '../moves/drafts/log-context.ts'
import { DraftForm } from '../moves/forms/draft-form.tsx'
import { PreviewPane } from '../moves/preview-pane.tsx'
import form from '../moves/record-form.module.css'
import { useDraft } from '../moves/use-draft.ts'
import { Consequences } from './consequences.tsx'
import { fieldChanges } from './move-fields.ts'
import { useAmending } from './use-amending.ts'
import { useMoveContext } from './use-move-context.ts'

export interface MoveDialogProps {
  recorded: RecordedMove
  /** A batch that the move concerns, where it names none itself. */
  ofBatchId?: string | undefined
  onClose: () => void
}

export function AmendDialog(props: MoveDialogProps) {
  const t = useWords()
  const context = useMoveContext(props.recorded.move, props.ofBatchId)
  return (
    <SheetDialog title={t('batch.ledger.amendTitle')} isOpen onClose={props.onClose} size="wide">
      {context && <AmendForm {...props} context={context} />}
    </SheetDialog>
  )
}

/** Of a liquid whose batch is not known. */
const plainColour = '#7a1f3d'

function AmendForm({ recorded, context, onClose }: MoveDialogProps & { context: LogContext }) {
  const t = useWords()
  const colour = useBatches().get(context.batchId)?.batch.colour ?? plainColour
  const inHand = useDraft(() => draftOfMove(recorded.move), context)
  const move = inHand.moves?.[0]
  const amending = useAmending(recorded, move, onClose)

  return (
    <form
      className={form.columns}
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        if (!inHand.attempt() || move === undefined) return
        // A version that reads as the one before would only make the history longer.
        if (fieldChanges(recorded.move, move).length === 0) onClose()
        else amending.save()
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
      </div>
      <PreviewPane
        previewed={amending.previewed}
        draft={inHand.draft}
        onMend={inHand.setDraft}
        colour={colour}
        tellsBreaks={false}
      />
      <div className={form.whole}>
        <Consequences amending={amending} />
        <FailureNote error={amending.error} />
        <DialogActions>
          <Button
            kind="primary"
            type="submit"
            isBusy={amending.isSaving}
            // While something is missing, pressing it shows what.
            isDisabled={move !== undefined && !amending.isReady}
          >
            {t('batch.ledger.amendSave')}
          </Button>
          <Button onPress={onClose}>{t('parts.cancel')}</Button>
        </DialogActions>
      </div>
    </form>
  )
}
