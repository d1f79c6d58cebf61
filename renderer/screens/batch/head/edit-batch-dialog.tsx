/** A batch's name, the colour it is drawn in, and its note. */
import { useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { Batch } from '../../../../shared/schemas/cellar.ts'
import { useWrite } from '../../../app/queries.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Form } from '../../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { Field } from '../../../parts/fields/field.tsx'
import { TextInput } from '../../../parts/fields/text-input.tsx'
import styles from './edit-batch-dialog.module.css'

export function EditBatchDialog({ batch, onClose }: { batch: Batch; onClose: () => void }) {
  const t = useWords()
  const change = useWrite('batches.change')
  const [name, setName] = useState(batch.name)
  const [colour, setColour] = useState(batch.colour)
  const [note, setNote] = useState(batch.note)
  const isNameless = name.trim() === ''
  const submit = () => {
    if (isNameless) return
    change.mutate({ id: batch.id, name: name.trim(), colour, note }, { onSuccess: onClose })
  }
  return (
    <SheetDialog title={t('batch.editTitle')} isOpen onClose={onClose}>
      <Form onSubmit={submit}>
        <TextInput
          label={t('batch.name')}
          value={name}
          onChange={setName}
          isRequired
          problem={isNameless ? t('batch.form.missing') : undefined}
          autoFocus
        />
        <Field label={t('batch.colour')} isRequired>
          {(control) => (
            <input
              {...control}
              className={styles.colour}
              type="color"
              value={colour}
              onChange={(event) => setColour(event.target.value)}
            />
          )}
        </Field>
        <TextInput
          label={t('batch.note')}
          value={note}
          onChange={setNote}
          rows={4}
          maxLength={4000}
        />
        <FailureNote error={change.error} />
        <DialogActions>
          <Button kind="primary" type="submit" isBusy={change.isPending}>
            {t('batch.save')}
          </Button>
          <Button onPress={onClose}>{t('parts.cancel')}</Button>
        </DialogActions>
      </Form>
    </SheetDialog>
  )
}
