/** Logging a move: the kinds, and the form of the chosen one. */
import { useWords } from '../../../app/words/use-words.ts'
import type { BatchSummary } from '../../../../shared/schemas/cellar.ts'
import type { Draft } from '../../../parts/moves/drafts/draft.ts'
import type { LogContext } from '../../../parts/moves/drafts/log-context.ts'
import { KindPicker } from './kind-picker.tsx'
import { kindGroups, type LoggedKind } from '../../../parts/moves/kinds.ts'
import { RecordForm } from './record-form.tsx'
import { useLogContext, useMayBegin } from '../../../parts/moves/use-log-context.ts'
import styles from './log-panel.module.css'

export interface LogPanelProps {
  summary: BatchSummary
  open: OpenForm | undefined
  onOpen: (kind: LoggedKind | undefined) => void
  focusRef: { current: HTMLButtonElement | null }
}

export interface OpenForm {
  readonly kind: LoggedKind
  /** Counts the forms opened, so that the same kind opens afresh. */
  readonly serial: number
  /** What is known already, filled in before the maker sees the form. */
  readonly prefill?: Prefill | undefined
}

export type Prefill = (draft: Draft, context: LogContext) => Draft

export function LogPanel(props: LogPanelProps) {
  const { summary, open, onOpen, focusRef } = props
  const t = useWords()
  const context = useLogContext(summary)
  const mayBegin = useMayBegin(open?.serial)
  return (
    <section className={styles.panel} aria-label={t('batch.log.title')}>
      <div className={styles.head}>
        <h2>{t('batch.log.title')}</h2>
        <p className={styles.hint}>
          <Hint />
        </p>
      </div>
      <KindPicker
        groups={kindGroups(summary)}
        chosen={open?.kind}
        onChoose={onOpen}
        firstRef={focusRef}
      />
      {open && context && mayBegin && (
        <RecordForm
          key={open.serial}
          kind={open.kind}
          prefill={open.prefill}
          context={context}
          colour={summary.batch.colour}
          onLeave={() => onOpen(undefined)}
        />
      )}
    </section>
  )
}

/** The sentence about the keyboard, with the key drawn as one. */
function Hint() {
  const t = useWords()
  const [before, after] = t('batch.log.hint', { key: '\n' }).split('\n')
  return (
    <>
      {before}
      <kbd className={styles.key}>L</kbd>
      {after}
    </>
  )
}
