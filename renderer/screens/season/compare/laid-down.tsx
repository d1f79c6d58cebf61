/** An amount laid down, as a bar among its like and in words. */
import type { ReactNode } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { classes } from '../../../parts/classes.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import styles from './compare.module.css'

export interface LaidDownProps {
  laidDown: { fruitG: number; volumeMl: number; bottles: number } | undefined
  greatest: number
  look: 'planned' | 'done'
  children?: ReactNode
}

export function LaidDown({ laidDown, greatest, look, children }: LaidDownProps) {
  const t = useWords()
  const { text } = useQuantities()
  if (!laidDown) return t('season.compare.nothing')
  const { volumeMl, bottles, fruitG } = laidDown
  return (
    <span className={styles.cell}>
      <span>{`${text(volumeMl, 'volume')}, ${t('parts.bottles', { count: bottles })}`}</span>
      <span
        className={classes(styles.bar, styles[look])}
        style={{ width: `${(100 * volumeMl) / greatest}%` }}
        aria-hidden
      />
      <span className={styles.small}>
        {t('season.compare.fruit', { mass: text(fruitG, 'mass') })}
        {children && ' · '}
        {children}
      </span>
    </span>
  )
}
