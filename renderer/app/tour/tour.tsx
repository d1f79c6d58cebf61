/** A walk round the demo: a card under the screen it speaks of, which hides and blocks nothing. */
import { useEffect, useRef } from 'react'
import { useLocation } from 'wouter'
import { Button } from '../../parts/button/button.tsx'
import { useWords } from '../words/use-words.ts'
import { stops } from './stops.ts'
import styles from './tour.module.css'

export interface TourProps {
  /** Index of the stop that is shown. */
  at: number
  onGo: (at: number) => void
  onEnd: () => void
}

export function Tour({ at, onGo, onEnd }: TourProps) {
  const t = useWords()
  const [, navigate] = useLocation()
  const heading = useRef<HTMLHeadingElement>(null)
  const stop = stops[at]
  useEffect(() => {
    if (!stop) return
    navigate(stop.path)
    heading.current?.focus()
  }, [stop, navigate])
  if (!stop) return null
  const isLast = at === stops.length - 1
  return (
    <aside className={styles.card} aria-label={t('tour.name')}>
      <h2 ref={heading} tabIndex={-1}>
        {t(`tour.stop.${stop.id}.title`)}
      </h2>
      <p>{t(`tour.stop.${stop.id}.text`)}</p>
      <div className={styles.acts}>
        <Button kind="primary" onPress={() => (isLast ? onEnd() : onGo(at + 1))}>
          {t(isLast ? 'tour.done' : 'tour.next')}
        </Button>
        {at > 0 && <Button onPress={() => onGo(at - 1)}>{t('tour.back')}</Button>}
        {!isLast && (
          <Button kind="quiet" onPress={onEnd}>
            {t('tour.end')}
          </Button>
        )}
        <span className={styles.count}>{t('tour.count', { at: at + 1, count: stops.length })}</span>
      </div>
    </aside>
  )
}
