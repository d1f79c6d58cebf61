/** Says that this is the demo, and how to leave it. */
import { useWords } from './words/use-words.ts'
import { Button } from '../parts/button/button.tsx'
import { FailureNote } from '../parts/failure/failure-note.tsx'
import { useWrite } from './queries.ts'
import styles from './demo-banner.module.css'

export function DemoBanner({ onTour }: { onTour: () => void }) {
  const t = useWords()
  const back = useWrite('cellar.openOwn')
  const remove = useWrite('cellar.removeDemo')
  return (
    <aside className={styles.banner}>
      <p>{t('shell.demo.text')}</p>
      <div className={styles.actions}>
        <Button kind="quiet" onPress={onTour}>
          {t('tour.begin')}
        </Button>
        <Button kind="quiet" isBusy={back.isPending} onPress={() => back.mutate({})}>
          {t('shell.demo.back')}
        </Button>
        <Button kind="quiet" isBusy={remove.isPending} onPress={() => remove.mutate({})}>
          {t('shell.demo.remove')}
        </Button>
      </div>
      <FailureNote error={back.error ?? remove.error} />
    </aside>
  )
}
