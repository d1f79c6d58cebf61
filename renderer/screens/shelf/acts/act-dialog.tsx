/** One act on bottles: its form, what the book says to it, and recording it. */
import { useMemo, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { newId } from '../../../app/new-id.ts'
import { useWrite } from '../../../app/queries.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Form } from '../../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { useRefusalWords } from '../../../parts/failure/refusal-words.ts'
import { Breaks } from '../../../parts/moves/breaks.tsx'
import { useRecordPreview } from '../../../parts/moves/use-preview.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import { nameOfAct, type Act } from './act.ts'
import { moveOfAct, startAct, type ActField } from './act-draft.ts'
import { ActFields } from './act-fields.tsx'
import { fieldOfRefusal, remedyOf, type Remedy } from './refused-field.ts'
import { refusalOf } from './refusal-of.ts'
import type { Acts } from './use-acts.ts'
import styles from './acts.module.css'

export function ActDialog({ acts }: { acts: Acts }) {
  const t = useWords()
  const { open } = acts
  return (
    <SheetDialog
      title={open ? t(`shelf.act.${open.kind}.title`, { name: nameOfAct(open) }) : ''}
      isOpen={open !== undefined}
      onClose={acts.leave}
      size={open?.kind === 'taste' ? 'wide' : 'usual'}
    >
      {open && <ActForm act={open} acts={acts} />}
    </SheetDialog>
  )
}

function ActForm({ act, acts }: { act: Act; acts: Acts }) {
  const t = useWords()
  const refusalWords = useRefusalWords()
  const record = useWrite('moves.record')
  // One key for the form's life: pressing twice records once.
  const [ids] = useState(() => ({ key: newId(), openedId: newId() }))
  const [draft, setDraft] = useState(() => startAct(act, new Date().toISOString()))
  const [wasTried, setTried] = useState(false)
  const outcome = useMemo(() => moveOfAct(act, draft, ids.openedId), [act, draft, ids])
  const move = outcome.ok ? outcome.move : undefined
  const asked = useMemo(() => move && [move], [move])
  const { preview } = useRecordPreview(asked)
  const refusal = preview?.refusals[0]?.refusal ?? refusalOf(record.error)
  const field = refusal && fieldOfRefusal(refusal, act)
  const remedy = refusal && remedyOf(refusal, draft)

  function submit() {
    setTried(true)
    if (!move || record.isPending) return
    record.mutate({ key: ids.key, moves: [move] }, { onSuccess: acts.leave })
  }

  const missing = wasTried && !outcome.ok ? outcome.missing : []
  const problems: Partial<Record<ActField, string>> = {
    ...(missing.includes('to') && { to: t('shelf.form.toMissing') }),
    ...(missing.includes('taste') && { taste: t('shelf.taste.nothing') }),
    ...(field && refusal && { [field]: refusalWords(refusal) }),
  }
  const isSaidBeside = field !== undefined
  return (
    <Form onSubmit={submit}>
      <ActFields
        act={act}
        draft={draft}
        onChange={(changed) => {
          record.reset()
          setDraft(changed)
        }}
        problems={problems}
        showsMissing={wasTried}
      />
      {remedy && <RemedyButton remedy={remedy} onMend={(mended) => setDraft(mended.draft)} />}
      {refusal && !isSaidBeside && (
        <p className={styles.refused} role="alert">
          {refusalWords(refusal)}
        </p>
      )}
      {preview && !refusal && <Breaks breaks={preview.breaks} />}
      {!refusal && <FailureNote error={record.error} />}
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={record.isPending}>
          {t(`shelf.act.${act.kind}.go`)}
        </Button>
        <Button onPress={acts.leave}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}

function RemedyButton({ remedy, onMend }: { remedy: Remedy; onMend: (remedy: Remedy) => void }) {
  const t = useWords()
  const { text } = useQuantities()
  const times = useTimes()
  const { count, volumeMl, at } = remedy
  const amount = count === undefined ? text(volumeMl ?? 0, 'volume') : t('parts.bottles', { count })
  return (
    <div className={styles.remedy}>
      <Button onPress={() => onMend(remedy)}>
        {at === undefined
          ? t('shelf.form.nearest', { amount })
          : t('shelf.form.useTime', { time: times.moment(at) })}
      </Button>
    </div>
  )
}
