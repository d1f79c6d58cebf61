/** Opens a batch under a name and in a colour, then goes to its page. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useLocation } from 'wouter'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { batchColours } from './batch-colours.ts'
import { ColourChoice } from './colour-choice.tsx'

export interface NewBatchDialogProps {
  isOpen: boolean
  onClose: () => void
}

export function NewBatchDialog({ isOpen, onClose }: NewBatchDialogProps) {
  const t = useWords()
  return (
    <SheetDialog title={t('batches.new')} isOpen={isOpen} onClose={onClose}>
      <NewBatchForm onClose={onClose} />
    </SheetDialog>
  )
}

function NewBatchForm({ onClose }: { onClose: () => void }) {
  const t = useWords()
  const [, navigate] = useLocation()
  const open = useWrite('batches.open')
  const [name, setName] = useState('')
  const [colour, setColour] = useState<string>(batchColours.sourCherry)
  const [note, setNote] = useState('')
  const [wasTried, setTried] = useState(false)
  const isNameMissing = name.trim() === ''

  function submit() {
    setTried(true)
    if (isNameMissing || open.isPending) return
    const batch = { id: newId(), name, colour, note, openedAt: new Date().toISOString() }
    open.mutate(batch, {
      onSuccess: ({ id }) => {
        onClose()
        navigate(`/batches/${encodeURIComponent(id)}`)
      },
    })
  }

  return (
    <Form onSubmit={submit}>
      <TextInput
        label={t('batches.form.name')}
        value={name}
        onChange={setName}
        isRequired
        autoFocus
        problem={wasTried && isNameMissing ? t('batches.form.nameMissing') : undefined}
      />
      <ColourChoice value={colour} onChange={setColour} />
      <TextInput
        label={t('batches.form.note')}
        value={note}
        onChange={setNote}
        rows={2}
        maxLength={4000}
      />
      <FailureNote error={open.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={open.isPending}>
          {t('batches.form.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}
