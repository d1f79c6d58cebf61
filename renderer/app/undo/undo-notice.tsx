/** What was done last, read out, with the way back and, after that, forth again. */
import { useEffect, useEffectEvent, useRef } from 'react'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { breaksOf } from '../../parts/moves/breaks-of.ts'
import { Breaks } from '../../parts/moves/breaks.tsx'
import { useMoveWords } from '../../parts/moves/use-move-words.ts'
import { useWords } from '../words/use-words.ts'
import { useUndoStack } from './undo-context.tsx'
import type { Told } from './undo-stack.ts'
import type { Undoing } from './use-undo.ts'
import styles from './undo-notice.module.css'

/** Long enough to read and to reach; the keys work ever after. */
const shownMs = 20_000

export function UndoNotice({ undoing }: { undoing: Undoing }) {
  const t = useWords()
  const { told, undone, done } = useUndoStack()
  const { undo, redo, error, dismiss } = undoing
  const frame = useRef<HTMLDivElement>(null)
  const leave = useEffectEvent(() => {
    if (!frame.current?.matches(':hover, :focus-within')) dismiss()
  })
  useEffect(() => {
    if (!told || error) return undefined
    const timer = setTimeout(leave, shownMs)
    return () => clearTimeout(timer)
  }, [told, error])
  const way =
    told && undo && done.at(-1) === told.groupId
      ? ({ go: undo, words: 'undo' } as const)
      : told && redo && undone.at(-1) === told.groupId
        ? ({ go: redo, words: 'redo' } as const)
        : undefined
  const isShown = told !== undefined || error !== null
  return (
    <div ref={frame} className={isShown ? styles.notice : undefined}>
      <FailureNote error={error} />
      <Breaks breaks={breaksOf(error)} />
      <div className={styles.line}>
        <output aria-label={t('undo.label')}>{told && <Words told={told} />}</output>
        {way && <Button onPress={way.go}>{t(`undo.${way.words}`)}</Button>}
        {isShown && (
          <Button kind="quiet" onPress={dismiss}>
            {t('undo.dismiss')}
          </Button>
        )}
      </div>
    </div>
  )
}

function Words({ told: { act, moves } }: { told: Told }) {
  const t = useWords()
  const moveWords = useMoveWords()
  // A purchase on the way is not what was meant to be done.
  const meant = moves.filter(({ kind }) => kind !== 'buy')
  const [first, ...others] = meant.length > 0 ? meant : moves
  if (!first) return null
  const one = moveWords(first, moves)
  const what = others.length === 0 ? one : t('undo.andMore', { what: one, count: others.length })
  return t(`undo.told.${act}`, { what })
}
