/** An amount laid down, as a bar among its like and in words. */
import type { ReactNode } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { classes } from '../../../parts/classes.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import styles from './compare.module.css'

export interface LaidDownProps {
  laidDown: { fruitG: number; volumeMl: number; bottles: number; inJarsMl?: number } | undefined
  greatest: number
  look: 'planned' | 'done'
  children?: ReactNode
}

const nothing = { fruitG: 0, volumeMl: 0, bottles: 0, inJarsMl: 0 }

export function LaidDown({ laidDown, greatest, look, children }: LaidDownProps) {
  const t = useWords()
  const { text } = useQuantities()
  const { volumeMl, bottles, fruitG, inJarsMl = 0 } = laidDown ?? nothing
  if (volumeMl + inJarsMl + fruitG <= 0) return t('season.compare.nothing')
  const share = (ml: number) => `${(100 * ml) / greatest}%`
  return (
    <span className={styles.cell}>
      <span>
        {bottles === 0
          ? t('season.compare.noneBottled')
          : `${text(volumeMl, 'volume')}, ${t('parts.bottles', { count: bottles })}`}
      </span>
      <span className={styles.track} aria-hidden>
        {volumeMl > 0 && (
          <span className={classes(styles.bar, styles[look])} style={{ width: share(volumeMl) }} />
        )}
        {inJarsMl > 0 && <span className={styles.bar} style={{ width: share(inJarsMl) }} />}
      </span>
      <span className={styles.small}>
        {t('season.compare.fruit', { mass: text(fruitG, 'mass') })}
        {children && ' · '}
        {children}
      </span>
    </span>
  )
}
