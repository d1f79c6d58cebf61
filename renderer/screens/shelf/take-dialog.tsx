/** Takes bottles from a lot, to drink or to give away. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { BottleLot } from '../../../shared/schemas/cellar.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import { DateTimeField } from '../../parts/time/date-time-field.tsx'

export interface Taking {
  kind: 'drawBottle' | 'give'
  lot: BottleLot
}

export interface TakeDialogProps {
  /** Undefined keeps the dialog closed. */
  taking: Taking | undefined
  onClose: () => void
}

export function TakeDialog({ taking, onClose }: TakeDialogProps) {
  const t = useWords()
  const name = taking?.lot.name ?? ''
  const title =
    taking?.kind === 'give' ? t('shelf.form.give', { name }) : t('shelf.form.draw', { name })
  return (
    <SheetDialog title={title} isOpen={taking !== undefined} onClose={onClose}>
      {taking && <TakeForm taking={taking} onClose={onClose} />}
    </SheetDialog>
  )
}

function TakeForm({ taking: { kind, lot }, onClose }: { taking: Taking; onClose: () => void }) {
  const t = useWords()
  const record = useWrite('moves.record')
  // One key for the form's life: pressing twice takes once.
  const [key] = useState(newId)
  const [count, setCount] = useState<number | undefined>(1)
  const [at, setAt] = useState<string | undefined>(() => new Date().toISOString())
  const [note, setNote] = useState('')
  const [wasTried, setTried] = useState(false)

  function submit() {
    setTried(true)
    if (count === undefined || at === undefined || record.isPending) return
    const noted = note.trim() === '' ? {} : { note: note.trim() }
    const moves = [{ kind, bottleLotId: lot.id, count, at, ...noted }]
    record.mutate({ key, moves }, { onSuccess: onClose })
  }

  return (
    <Form onSubmit={submit}>
      <QuantityField
        label={t('shelf.form.count')}
        dimension="count"
        value={count}
        onChange={setCount}
        isRequired
        showsProblem={wasTried}
        autoFocus
      />
      <DateTimeField label={t('shelf.form.at')} value={at} onChange={setAt} />
      <TextInput
        label={t('shelf.form.note')}
        value={note}
        onChange={setNote}
        rows={2}
        maxLength={4000}
      />
      <FailureNote error={record.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={record.isPending}>
          {kind === 'give' ? t('shelf.form.goGive') : t('shelf.form.goDraw')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}
