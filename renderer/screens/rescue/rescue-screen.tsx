/** The maker's own book cannot be opened: what is known, and the ways on from here. */
import { useEffect } from 'react'
import type { RescueState } from '../../../shared/schemas/safekeeping.ts'
import { useWrite } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Restore } from '../../parts/backups/restore.tsx'
import { Button } from '../../parts/button/button.tsx'
import { BringIn } from '../../parts/exports/bring-in.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { Section } from '../../parts/page/page.tsx'
import { Salvage } from './salvage.tsx'
import styles from './rescue.module.css'

export function RescueScreen({ state }: { state: RescueState }) {
  const t = useWords()
  const title = t('safekeeping.rescue.title')
  useEffect(() => {
    document.title = `${title} · ${t('shell.name')}`
  }, [title, t])
  const isEmpty = state.trouble === 'empty'
  return (
    <main className={styles.screen}>
      <header className={styles.header}>
        <h1>{title}</h1>
        <p className={styles.lead}>{t(`safekeeping.rescue.${state.trouble}`)}</p>
        <p className={styles.file}>{state.file}</p>
        {!isEmpty && (
          <p className={styles.quiet}>
            {t('safekeeping.rescue.says', { message: state.message })}{' '}
            {t('safekeeping.rescue.which')}
          </p>
        )}
      </header>
      <Section title={t('safekeeping.restore.title')}>
        <p className={styles.quiet}>{t('safekeeping.restore.text')}</p>
        <Restore />
      </Section>
      <Section title={t('exports.in.title')}>
        <p className={styles.quiet}>{t('exports.in.text')}</p>
        <BringIn />
      </Section>
      {!isEmpty && (
        <Section title={t('safekeeping.rescue.salvage.title')}>
          <p className={styles.quiet}>{t('safekeeping.rescue.salvage.text')}</p>
          <Salvage />
        </Section>
      )}
      <Section title={t('safekeeping.rescue.anew.title')}>
        <p className={styles.quiet}>{t('safekeeping.rescue.anew.text')}</p>
        <BeginAnew />
      </Section>
    </main>
  )
}

function BeginAnew() {
  const t = useWords()
  const begin = useWrite('rescue.beginAnew')
  return (
    <>
      <div>
        <Button isBusy={begin.isPending} onPress={() => begin.mutate({})}>
          {t('safekeeping.rescue.anew.go')}
        </Button>
      </div>
      <FailureNote error={begin.error} />
    </>
  )
}
