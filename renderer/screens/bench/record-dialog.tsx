/** Records a reading of the Bench into a batch, raw: the book interprets it by itself. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { Batch, BatchSummary } from '../../../shared/schemas/cellar.ts'
import type { MoveOf } from '../../../shared/schemas/moves.ts'
import type { Interpretation, Reading } from '../../../shared/schemas/readings.ts'
import { newId } from '../../app/new-id.ts'
import { useRead, useWrite } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { useBatches, useJars } from '../../parts/names/use-names.ts'
import { DateTimeField } from '../../parts/time/date-time-field.tsx'
import { useMeasuredText } from './use-measured-text.ts'
import styles from './record-dialog.module.css'

export interface RecordDialogProps {
  /** Undefined keeps the dialog closed. */
  reading: Reading | undefined
  onClose: () => void
  onRecorded: (batch: Batch) => void
}

export function RecordDialog({ reading, onClose, onRecorded }: RecordDialogProps) {
  const t = useWords()
  return (
    <SheetDialog title={t('bench.record.title')} isOpen={reading !== undefined} onClose={onClose}>
      {reading && <RecordForm reading={reading} onClose={onClose} onRecorded={onRecorded} />}
    </SheetDialog>
  )
}

type RecordFormProps = Omit<RecordDialogProps, 'reading'> & { reading: Reading }

function RecordForm({ reading, onClose, onRecorded }: RecordFormProps) {
  const t = useWords()
  const jars = useJars()
  const batches = [...useBatches().values()].filter((entry) => entry.jars.length > 0)
  const record = useWrite('moves.record')
  // One key for the form's life: pressing twice records once.
  const [key] = useState(newId)
  const [batchId, setBatchId] = useState('')
  const [jarId, setJarId] = useState('')
  const [at, setAt] = useState<string | undefined>(() => new Date().toISOString())
  const [note, setNote] = useState('')
  const [wasTried, setTried] = useState(false)

  const chosen = batches.find(({ batch }) => batch.id === batchId)
  const [onlyJar, ...otherJars] = chosen?.jars ?? []
  const inJar = otherJars.length === 0 ? (onlyJar?.jarId ?? '') : jarId
  const move = chosen && readMove(chosen, inJar, at, note, reading)
  const preview = useRead('moves.preview', { moves: move ? [move] : [] }, { isEnabled: !!move })
  const missing = (value: string) =>
    wasTried && value === '' ? t('bench.record.missing') : undefined

  function submit() {
    setTried(true)
    if (!chosen || !move || record.isPending) return
    record.mutate({ key, moves: [move] }, { onSuccess: () => onRecorded(chosen.batch) })
  }

  if (batches.length === 0)
    return (
      <>
        <p>{t('bench.record.none')}</p>
        <DialogActions>
          <Button onPress={onClose}>{t('parts.close')}</Button>
        </DialogActions>
      </>
    )
  return (
    <Form onSubmit={submit}>
      <ChoiceField
        label={t('bench.record.batch')}
        value={batchId}
        onChange={(id) => {
          setBatchId(id)
          setJarId('')
        }}
        placeholder={t('bench.record.choose')}
        choices={batches.map(({ batch }) => ({ value: batch.id, label: batch.name }))}
        problem={missing(batchId)}
        autoFocus
      />
      {chosen && (
        <ChoiceField
          label={t('bench.record.jar')}
          value={inJar}
          onChange={setJarId}
          placeholder={t('bench.record.choose')}
          choices={chosen.jars.map((contents) => ({
            value: contents.jarId,
            label: jars.get(contents.jarId)?.jar.name ?? contents.jarId,
          }))}
          problem={missing(inJar)}
        />
      )}
      <DateTimeField label={t('bench.record.at')} value={at} onChange={setAt} />
      <TextInput
        label={t('bench.record.note')}
        value={note}
        onChange={setNote}
        rows={2}
        maxLength={4000}
      />
      <Meaning interpretation={preview.data?.steps[0]?.interpretation} />
      <FailureNote error={record.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={record.isPending}>
          {t('bench.record.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}

function readMove(
  { batch }: BatchSummary,
  jarId: string,
  at: string | undefined,
  note: string,
  reading: Reading,
): MoveOf<'read'> | undefined {
  if (jarId === '' || at === undefined) return undefined
  const noted = note.trim() === '' ? {} : { note: note.trim() }
  return { kind: 'read', at, batchId: batch.id, jarId, reading, ...noted }
}

/** What the book makes of it there, and what it doubts. */
function Meaning({ interpretation }: { interpretation: Interpretation | undefined }) {
  const t = useWords()
  const { text } = useMeasuredText()
  const { strengthPctVol, strengthUncertaintyPctVol, sugarGPerL, sugarUncertaintyGPerL } =
    interpretation ?? {}
  const doubts = interpretation?.doubts ?? []
  const means = [
    strengthPctVol !== undefined && text(strengthPctVol, 'strength', strengthUncertaintyPctVol),
    sugarGPerL !== undefined && text(sugarGPerL, 'sugar', sugarUncertaintyGPerL),
  ].filter(Boolean)
  return (
    <div className={styles.meaning} aria-live="polite">
      {means.length > 0 && <p>{t('bench.record.means', { what: means.join(', ') })}</p>}
      {doubts.map((doubt) => (
        <p key={doubt} className={styles.doubt}>
          {t(`codes.doubt.${doubt}`)}
        </p>
      ))}
      {doubts.length > 0 && <p>{t('bench.record.doubtful')}</p>}
    </div>
  )
}
