/** One kind of move being logged: its form, and beside it the jars as they will be. */
import { useEffect, useRef, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { Move } from '../../../../shared/schemas/moves.ts'
import { newId } from '../../../app/new-id.ts'
import { useWrite } from '../../../app/queries.ts'
import { Button } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { startDraft, type Draft } from '../../../parts/moves/drafts/draft.ts'
import type { LogContext } from '../../../parts/moves/drafts/log-context.ts'
import { DraftForm } from '../../../parts/moves/forms/draft-form.tsx'
import type { LoggedKind } from '../../../parts/moves/kinds.ts'
import { PreviewPane } from '../../../parts/moves/preview-pane.tsx'
import { useDraft } from '../../../parts/moves/use-draft.ts'
import { Term } from '../../../parts/term/term.tsx'
import type { TermId } from '../../../parts/term/terms.ts'
import { useRecordPreview } from '../../../parts/moves/use-preview.ts'
import styles from '../../../parts/moves/record-form.module.css'

interface RecordFormProps {
  kind: LoggedKind
  prefill?: ((draft: Draft, context: LogContext) => Draft) | undefined
  context: LogContext
  colour: string
  /** Recorded, or given up. */
  onLeave: () => void
}

/** What is done in it, where that is a term of the trade. */
const termOf: Readonly<Partial<Record<LoggedKind, TermId>>> = {
  drawOff: 'drawOff',
  coverWithSugar: 'sugarDraw',
  press: 'press',
  marry: 'marry',
  filter: 'rack',
}

export function RecordForm(props: RecordFormProps) {
  const { kind, prefill, context, colour, onLeave } = props
  const t = useWords()
  const term = termOf[kind]
  const first = () => startDraft(kind, context)
  const inHand = useDraft(() => (prefill ? prefill(first(), context) : first()), context)
  const previewed = useRecordPreview(inHand.moves)
  const record = useWrite('moves.record')
  const key = useKeyOf(inHand.moves)
  const form = useRef<HTMLFormElement>(null)
  useFocusInside(form)
  useEscape(form, onLeave)

  function submit() {
    const moves = inHand.attempt()
    if (!moves || record.isPending) return
    record.mutate({ key, moves: [...moves] }, { onSuccess: onLeave })
  }

  return (
    <form
      ref={form}
      className={styles.columns}
      aria-label={t(`codes.move.${kind}`)}
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        submit()
      }}
    >
      <div className={styles.fields}>
        <div className={styles.title}>
          <h3>{t(`codes.move.${kind}`)}</h3>
          {term && <Term id={term} />}
        </div>
        <DraftForm
          draft={inHand.draft}
          onChange={inHand.setDraft}
          context={context}
          problems={inHand.problems}
          isAmending={false}
        />
        <FailureNote error={record.error} />
        <div className={styles.actions}>
          <Button kind="primary" type="submit" isBusy={record.isPending}>
            {t('batch.log.record')}
          </Button>
          <Button kind="quiet" onPress={onLeave}>
            {t('batch.log.leave')}
          </Button>
        </div>
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

/** One key for the same moves: asking again after a lost answer records them once. */
function useKeyOf(moves: readonly Move[] | undefined): string {
  const [kept, setKept] = useState({ moves, key: newId() })
  if (kept.moves === moves) return kept.key
  const fresh = { moves, key: newId() }
  setKept(fresh)
  return fresh.key
}

/** Puts the focus into the form, unless one of its fields has taken it already. */
function useFocusInside(form: { readonly current: HTMLFormElement | null }) {
  useEffect(() => {
    if (form.current?.contains(document.activeElement)) return
    form.current?.querySelector<HTMLElement>('input, select, textarea')?.focus()
  }, [form])
}

/** On the document, so that a part of the form may keep the key to itself first. */
function useEscape(form: { readonly current: HTMLFormElement | null }, onLeave: () => void) {
  useEffect(() => {
    const onKeyDown = ({ key, defaultPrevented, target }: KeyboardEvent) => {
      const isInside = target instanceof Node && form.current?.contains(target)
      if (key === 'Escape' && !defaultPrevented && isInside) onLeave()
    }
    document.addEventListener('keydown', onKeyDown)
    return () => document.removeEventListener('keydown', onKeyDown)
  }, [form, onLeave])
}
