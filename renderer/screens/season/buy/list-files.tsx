/** The list as a paper and as a table for a spreadsheet, in the order it is shown. */
import { useAsk } from '../../../app/queries.ts'
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { handPaper, handText } from '../../../parts/paper/hand-paper.ts'
import styles from './buy.module.css'

export function ListFiles({ by }: { by: 'week' | 'shop' }) {
  const t = useWords()
  const { units } = useSettings()
  const paper = useAsk('purchases.paper')
  const csv = useAsk('purchases.csv')
  return (
    <div className={styles.buttons}>
      <Button
        isBusy={paper.isPending}
        onPress={() =>
          paper.mutate({ by, size: units === 'us' ? 'Letter' : 'A4' }, { onSuccess: handPaper })
        }
      >
        {t('season.buy.print')}
      </Button>
      <Button
        isBusy={csv.isPending}
        onPress={() =>
          csv.mutate(
            { by },
            { onSuccess: (made) => handText(made.fileName, made.csv, 'text/csv;charset=utf-8') },
          )
        }
      >
        {t('season.buy.csv')}
      </Button>
      <FailureNote error={paper.error ?? csv.error} />
    </div>
  )
}
