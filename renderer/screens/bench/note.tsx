/** Something to see beside the answer: a danger as a warning, the rest as a remark. */
import { useWords } from '../../app/words/use-words.ts'
import type { BenchNote } from '../../../shared/schemas/bench.ts'
import { classes } from '../../parts/classes.ts'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { useStandard } from './use-standard.ts'
import { useMeasuredText } from './use-measured-text.ts'
import styles from './note.module.css'

const isDanger: ReadonlySet<BenchNote['code']> = new Set(['strongSpirit', 'boilOffCare'])

export function Note({ note: { code, value, dimension } }: { note: BenchNote }) {
  const t = useWords()
  const texts = useMeasuredText()
  const amount = value === undefined || dimension === undefined ? '' : texts.text(value, dimension)
  const { text } = useQuantities()
  const values = {
    value: amount,
    standard: useStandard(),
    little: code === 'spiritMisleads' ? text(10, 'strength') : text(10, 'sugar'),
  }
  return (
    <div className={classes(styles.note, isDanger.has(code) && styles.danger)}>
      <p className={styles.title}>{t(`bench.note.${code}.title`, values)}</p>
      <p>{t(`bench.note.${code}.text`, values)}</p>
    </div>
  )
}
