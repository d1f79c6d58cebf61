/** An empty book: start a cellar of one's own, go on from a spreadsheet, a backup or an export, or look round the demo. */
import { useEffect, useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useLocation } from 'wouter'
import type { Settings } from '../../../shared/channels.ts'
import { useWrite } from '../../app/queries.ts'
import { Restore } from '../../parts/backups/restore.tsx'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { BringIn } from '../../parts/exports/bring-in.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { OwnCellarForm } from './own-cellar-form.tsx'
import styles from './first-run-screen.module.css'

export function FirstRunScreen({ settings }: { settings: Settings }) {
  const t = useWords()
  const openDemo = useWrite('cellar.openDemo')
  useEffect(() => {
    document.title = t('shell.name')
  }, [t])
  return (
    <main className={styles.screen}>
      <header className={styles.header}>
        <h1>{t('firstRun.title')}</h1>
        <p>{t('firstRun.lead')}</p>
      </header>
      <section className={styles.own} aria-label={t('firstRun.own.title')}>
        <h2>{t('firstRun.own.title')}</h2>
        <p>{t('firstRun.own.text')}</p>
        <OwnCellarForm settings={settings} />
      </section>
      <section className={styles.demo} aria-label={t('firstRun.demo.title')}>
        <h2>{t('firstRun.demo.title')}</h2>
        <p>{t('firstRun.demo.text')}</p>
        <Button isBusy={openDemo.isPending} onPress={() => openDemo.mutate({})}>
          {openDemo.isPending ? t('firstRun.demo.busy') : t('firstRun.demo.go')}
        </Button>
        {openDemo.isPending && (
          <progress className={styles.progress} aria-label={t('firstRun.demo.busy')} />
        )}
        <FailureNote error={openDemo.error} />
      </section>
      <BookFromSheet />
      <BookFromBackup />
      <BookFromExport />
    </main>
  )
}

/** Leads to the screen that takes them in, the one that an empty book can open. */
function BookFromSheet() {
  const t = useWords()
  return (
    <section className={styles.backup} aria-label={t('sheets.firstRun.title')}>
      <h2>{t('sheets.firstRun.title')}</h2>
      <p>{t('sheets.firstRun.text')}</p>
      <div>
        <ButtonLink href="/bring-in">{t('sheets.open')}</ButtonLink>
      </div>
    </section>
  )
}

/** Folded away: most who begin have no backup. */
function BookFromBackup() {
  const t = useWords()
  const [, navigate] = useLocation()
  const [isAsked, setAsked] = useState(false)
  return (
    <section className={styles.backup} aria-label={t('safekeeping.restore.title')}>
      <h2>{t('safekeeping.restore.title')}</h2>
      <p>{t('safekeeping.restore.firstRun')}</p>
      {isAsked ? (
        <Restore onRestored={() => navigate('/batches')} />
      ) : (
        <div>
          <Button onPress={() => setAsked(true)}>{t('safekeeping.restore.ask')}</Button>
        </div>
      )}
    </section>
  )
}

function BookFromExport() {
  const t = useWords()
  const [, navigate] = useLocation()
  return (
    <section className={styles.backup} aria-label={t('exports.in.title')}>
      <h2>{t('exports.in.title')}</h2>
      <p>{t('exports.in.firstRun')}</p>
      <BringIn onBroughtIn={() => navigate('/batches')} />
    </section>
  )
}
