/** Writes the blend into the book as moves, after showing the vessel as it will be. */
import { useState } from 'react'
import type { Batch } from '../../../../shared/schemas/cellar.ts'
import type { BlendAmount } from '../../../../shared/schemas/marrying.ts'
import { newId } from '../../../app/new-id.ts'
import { useRead, useWrite } from '../../../app/queries.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Form } from '../../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { TextInput } from '../../../parts/fields/text-input.tsx'
import { useBatches } from '../../../parts/names/use-names.ts'
import { DateTimeField } from '../../../parts/time/date-time-field.tsx'
import { acid } from '../places.ts'
import { AcidBought } from './acid-bought.tsx'
import { After } from './after.tsx'
import { movesOf, type AcidPurchase } from './recording.ts'

export interface RecordDialogProps {
  isOpen: boolean
  onClose: () => void
  onRecorded: (batch: Pick<Batch, 'id' | 'name'>) => void
  amounts: readonly BlendAmount[]
  toJarId: string
  /** Batches whose liquid goes in, the likeliest first. */
  batchIds: readonly string[]
  /** False where the jar stays with its batch. */
  mayOpenBatch: boolean
}

export function RecordDialog(props: RecordDialogProps) {
  const t = useWords()
  return (
    <SheetDialog title={t('marry.record.title')} isOpen={props.isOpen} onClose={props.onClose}>
      <RecordForm {...props} />
    </SheetDialog>
  )
}

const fresh = 'new'

function RecordForm(props: RecordDialogProps) {
  const { amounts, toJarId, batchIds, mayOpenBatch, onClose, onRecorded } = props
  const t = useWords()
  const batches = useBatches()
  const pantry = useRead('pantry.list', {}).data
  const record = useWrite('moves.record')
  const open = useWrite('batches.open')
  // One key and one id for the form's life: pressing twice records once.
  const [key] = useState(newId)
  const [freshId] = useState(newId)
  const [chosen, setChosen] = useState(batchIds[0] ?? (mayOpenBatch ? fresh : ''))
  const [name, setName] = useState('')
  const [at, setAt] = useState<string | undefined>(() => new Date().toISOString())
  const [note, setNote] = useState('')
  const [bought, setBought] = useState<AcidPurchase>(() => ({ lotId: newId() }))
  const [wasTried, setTried] = useState(false)

  const isFresh = chosen === fresh
  const movesInto = (batchId: string) =>
    at === undefined
      ? []
      : movesOf({
          amounts,
          batchId,
          toJarId,
          at,
          note,
          isAcid: (lotId) => pantry?.find(({ id }) => id === lotId)?.goods.kind === 'acid',
          bought,
        })
  // A batch that is not open yet cannot be asked about: the vessel will be the same.
  const shownId = isFresh ? batchIds[0] : chosen
  const isNameMissing = isFresh && name.trim() === ''

  async function submit() {
    setTried(true)
    const batchId = isFresh ? freshId : chosen
    const moves = movesInto(batchId)
    if (isNameMissing || moves.length === 0 || record.isPending || open.isPending) return
    const batchName = isFresh ? name.trim() : (batches.get(batchId)?.batch.name ?? batchId)
    if (isFresh) {
      const colour = batches.get(batchIds[0] ?? '')?.batch.colour ?? '#7a1f3d'
      const openedAt = new Date().toISOString()
      const batch = { id: freshId, name: batchName, colour, note: '', openedAt }
      if (!(await settles(open.mutateAsync(batch)))) return
    }
    record.mutate({ key, moves }, { onSuccess: () => onRecorded({ id: batchId, name: batchName }) })
  }

  return (
    <Form onSubmit={() => void submit()}>
      <ChoiceField
        label={t('marry.record.batch')}
        value={chosen}
        onChange={setChosen}
        choices={[
          ...batchIds.map((id) => ({ value: id, label: batches.get(id)?.batch.name ?? id })),
          ...(mayOpenBatch ? [{ value: fresh, label: t('marry.record.newBatch') }] : []),
        ]}
        autoFocus
      />
      {isFresh && (
        <TextInput
          label={t('marry.record.name')}
          value={name}
          onChange={setName}
          isRequired
          problem={wasTried && isNameMissing ? t('marry.record.nameMissing') : undefined}
        />
      )}
      <DateTimeField label={t('marry.record.at')} value={at} onChange={setAt} />
      <TextInput
        label={t('marry.record.note')}
        value={note}
        onChange={setNote}
        rows={2}
        maxLength={4000}
      />
      {amounts.some(({ place }) => place === acid) && (
        <AcidBought bought={bought} onChange={setBought} />
      )}
      {shownId !== undefined && <After moves={movesInto(shownId)} toJarId={toJarId} />}
      <FailureNote error={open.error ?? record.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={record.isPending || open.isPending}>
          {t('marry.record.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}

/** Whether it came to its end; what failed is shown from the mutation itself. */
const settles = (work: Promise<unknown>): Promise<boolean> =>
  work.then(
    () => true,
    () => false,
  )
