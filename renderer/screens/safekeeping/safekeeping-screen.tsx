/** Whether the book is backed up, the way back, the open export, where it is, whether it is sound and adds up. */
import { useWords } from '../../app/words/use-words.ts'
import type { CellarStatus } from '../../../shared/channels.ts'
import { useRead, useWrite } from '../../app/queries.ts'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Page, Section } from '../../parts/page/page.tsx'
import { Restore } from '../../parts/backups/restore.tsx'
import { BringIn } from '../../parts/exports/bring-in.tsx'
import { BackupSection } from './backups/backup-section.tsx'
import { BalanceTable } from './balance-table.tsx'
import { BookHealth } from './book-health.tsx'
import { ExportSection } from './exports/export-section.tsx'
import styles from './safekeeping-screen.module.css'

export function SafekeepingScreen() {
  const t = useWords()
  const status = useRead('cellar.status', {})
  const balance = useRead('cellar.balance', {})
  const backups = useRead('backups.state', {})
  return (
    <Page
      title={t('safekeeping.title')}
      actions={<ButtonLink href="/moves">{t('moves.open')}</ButtonLink>}
    >
      <ReadState query={backups}>{(state) => <BackupSection state={state} />}</ReadState>
      <Section title={t('safekeeping.restore.title')}>
        <p className={styles.quiet}>{t('safekeeping.restore.text')}</p>
        <Restore />
      </Section>
      <ExportSection />
      <Section title={t('exports.in.title')}>
        <p className={styles.quiet}>{t('exports.in.text')}</p>
        <BringIn />
      </Section>
      <Section title={t('sheets.title')}>
        <p className={styles.quiet}>{t('sheets.lead')}</p>
        <div>
          <ButtonLink href="/bring-in">{t('sheets.open')}</ButtonLink>
        </div>
      </Section>
      <ReadState query={status}>{(cellar) => <BookFile cellar={cellar} />}</ReadState>
      <Section title={t('safekeeping.health')}>
        <BookHealth />
      </Section>
      <Section title={t('safekeeping.balance')}>
        <ReadState query={balance}>{(columns) => <BalanceTable balance={columns} />}</ReadState>
      </Section>
    </Page>
  )
}

function BookFile({ cellar }: { cellar: CellarStatus }) {
  const t = useWords()
  const openDemo = useWrite('cellar.openDemo')
  return (
    <Section
      title={t('safekeeping.file')}
      actions={
        !cellar.isDemo && (
          <Button kind="quiet" isBusy={openDemo.isPending} onPress={() => openDemo.mutate({})}>
            {openDemo.isPending ? t('firstRun.demo.busy') : t('safekeeping.demo')}
          </Button>
        )
      }
    >
      <p className={styles.file}>{cellar.file}</p>
      <p className={styles.quiet}>{t('safekeeping.fileHint')}</p>
      <p className={styles.quiet}>
        {t('safekeeping.version', {
          version: cellar.version,
          host: t(`safekeeping.hosts.${cellar.host}`),
        })}
      </p>
      <FailureNote error={openDemo.error} />
    </Section>
  )
}
