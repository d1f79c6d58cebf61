/** Checks the book when asked, says what was found, and rebuilds the derived lists. */
import { useWords } from '../../app/words/use-words.ts'
import type { Answer } from '../../../shared/channels.ts'
import { useWrite } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import styles from './book-health.module.css'

export function BookHealth() {
  const t = useWords()
  // Checking reads the whole file: it is asked for, not read like a list.
  const check = useWrite('cellar.check')
  const rebuild = useWrite('cellar.rebuild')
  return (
    <>
      <p className={styles.quiet}>{t('safekeeping.healthText')}</p>
      <div className={styles.actions}>
        <Button
          isBusy={check.isPending}
          onPress={() => {
            rebuild.reset()
            check.mutate({})
          }}
        >
          {t('safekeeping.check')}
        </Button>
        <Button
          isBusy={rebuild.isPending}
          onPress={() => {
            check.reset()
            // What was made anew is held against the moves at once.
            rebuild.mutate({}, { onSuccess: () => check.mutate({}) })
          }}
        >
          {t('safekeeping.rebuild')}
        </Button>
      </div>
      <div aria-live="polite" className={styles.result}>
        {rebuild.isSuccess && <p>{t('safekeeping.rebuilt')}</p>}
        {check.data && <Findings findings={check.data} />}
      </div>
      <FailureNote error={check.error ?? rebuild.error} />
    </>
  )
}

function Findings({ findings }: { findings: Answer<'cellar.check'> }) {
  const t = useWords()
  const { integrity, moveCount, lotsDiffering, bottleLotsDiffering, refusedMoves } = findings
  const isFileSound = integrity === 'ok'
  const listsDiffer = lotsDiffering.length + bottleLotsDiffering.length > 0
  if (isFileSound && !listsDiffer && refusedMoves.length === 0)
    return <p className={styles.sound}>{t('safekeeping.sound', { count: moveCount })}</p>
  return (
    <ul className={styles.unsound}>
      {!isFileSound && <li>{t('safekeeping.fileUnsound', { integrity })}</li>}
      {listsDiffer && <li>{t('safekeeping.listsDiffer')}</li>}
      {refusedMoves.length > 0 && (
        <li>{t('safekeeping.movesRefused', { count: refusedMoves.length })}</li>
      )}
    </ul>
  )
}
