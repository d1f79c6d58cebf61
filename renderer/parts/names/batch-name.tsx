/** A batch's name in the serif, with the colour of its liquid beside it. */
import type { Batch } from '../../../shared/schemas/cellar.ts'
import styles from './batch-name.module.css'

export interface BatchNameProps {
  batch: Pick<Batch, 'name' | 'colour'>
  size?: 'usual' | 'large'
}

export const BatchName = ({ batch, size = 'usual' }: BatchNameProps) => (
  <span className={size === 'large' ? styles.large : styles.name}>
    <span className={styles.colour} style={{ background: batch.colour }} />
    {batch.name}
  </span>
)
