/** Choosing batches in the list to put side by side; while not choosing, what else the list offers. */
import type { ReactNode } from 'react'
import { useLocation } from 'wouter'
import { useWords } from '../../../app/words/use-words.ts'
import { mostCompared } from '../../../charts/compare-ink.ts'
import { Button } from '../../../parts/button/button.tsx'
import { comparePath } from '../../../parts/names/compare-path.ts'
import styles from './compare-screen.module.css'

interface ComparePickerProps {
  /** Undefined while not choosing. */
  picked: ReadonlySet<string> | undefined
  onPick: (ids: ReadonlySet<string> | undefined) => void
  children: ReactNode
}

export function ComparePicker({ picked, onPick, children }: ComparePickerProps) {
  const t = useWords()
  const [, navigate] = useLocation()
  if (!picked)
    return (
      <div className={styles.buttons}>
        <Button kind="quiet" onPress={() => onPick(new Set())}>
          {t('compare.pick')}
        </Button>
        {children}
      </div>
    )
  return (
    <div className={styles.bar}>
      {picked.size > mostCompared && <p>{t('compare.most', { count: mostCompared })}</p>}
      <Button kind="quiet" onPress={() => onPick(undefined)}>
        {t('compare.leave')}
      </Button>
      <Button
        kind="primary"
        isDisabled={picked.size === 0 || picked.size > mostCompared}
        onPress={() => navigate(comparePath([...picked]))}
      >
        {t('compare.go', { count: picked.size })}
      </Button>
    </div>
  )
}
