/** A batch that turned out well, kept as a recipe by what was really done. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { useBatches } from '../../parts/names/use-names.ts'

export function KeepBatchForm() {
  const t = useWords()
  const batches = useBatches()
  const keep = useWrite('recipes.keepBatch')
  const [isOpen, setOpen] = useState(false)
  const [batchId, setBatchId] = useState('')
  const [name, setName] = useState('')
  const [wasTried, setTried] = useState(false)
  const isNameMissing = name.trim() === ''

  function choose(id: string) {
    setBatchId(id)
    if (isNameMissing) setName(batches.get(id)?.batch.name ?? '')
  }

  function submit() {
    setTried(true)
    if (isNameMissing || batchId === '' || keep.isPending) return
    keep.mutate(
      { id: newId(), name: name.trim(), note: '', batchId },
      { onSuccess: () => setOpen(false) },
    )
  }

  return (
    <>
      <Button onPress={() => setOpen(true)}>{t('draft.recipes.keepBatch')}</Button>
      <SheetDialog
        title={t('draft.recipes.keepBatch')}
        isOpen={isOpen}
        onClose={() => setOpen(false)}
      >
        <Form onSubmit={submit}>
          <ChoiceField
            label={t('draft.recipes.batch')}
            value={batchId}
            onChange={choose}
            placeholder={t('draft.recipes.chooseBatch')}
            problem={wasTried && batchId === '' ? t('draft.recipes.batchMissing') : undefined}
            choices={[...batches.values()].map(({ batch }) => ({
              value: batch.id,
              label: batch.name,
            }))}
            autoFocus
          />
          <TextInput
            label={t('draft.recipes.recipeName')}
            value={name}
            onChange={setName}
            isRequired
            problem={wasTried && isNameMissing ? t('draft.recipes.nameMissing') : undefined}
          />
          <FailureNote error={keep.error} />
          <DialogActions>
            <Button kind="primary" type="submit" isBusy={keep.isPending}>
              {t('draft.recipes.keepBatchGo')}
            </Button>
            <Button onPress={() => setOpen(false)}>{t('parts.cancel')}</Button>
          </DialogActions>
        </Form>
      </SheetDialog>
    </>
  )
}
