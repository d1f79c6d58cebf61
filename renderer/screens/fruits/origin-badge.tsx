/** Whose facts these are, in words; a maker's own stand out. */
import type { FruitOrigin } from '../../../shared/schemas/fruits.ts'
import { useWords } from '../../app/words/use-words.ts'
import { classes } from '../../parts/classes.ts'
import styles from './origin-badge.module.css'

export function OriginBadge({ origin }: { origin: FruitOrigin }) {
  const t = useWords()
  return (
    <span className={classes(styles.badge, origin !== 'library' && styles.yours)}>
      {t(`fruits.origin.${origin}`)}
    </span>
  )
}
