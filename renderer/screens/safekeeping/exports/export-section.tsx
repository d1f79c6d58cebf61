/** The whole cellar written out in an open form, at the press of a button. */
import { useState } from 'react'
import type { SafekeepingJob } from '../../../../shared/schemas/safekeeping.ts'
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { formatSize } from '../../../parts/backups/format-size.ts'
import { JobProgress } from '../../../parts/backups/job-progress.tsx'
import { useExportJob } from '../../../parts/backups/use-job.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Form } from '../../../parts/dialog/form.tsx'
import { TextInput } from '../../../parts/fields/text-input.tsx'
import { Section } from '../../../parts/page/page.tsx'
import styles from '../backups/backups.module.css'

export function ExportSection() {
  const t = useWords()
  const work = useExportJob()
  const [typed, setTyped] = useState('')
  const begin = () => {
    if (!work.isRunning) work.begin(typed.trim() === '' ? undefined : typed.trim())
  }
  return (
    <Section
      title={t('exports.out.title')}
      actions={
        <Button isBusy={work.isRunning} onPress={begin}>
          {t('exports.out.go')}
        </Button>
      }
    >
      <p className={styles.quiet}>{t('exports.out.text')}</p>
      <JobProgress work={work} label={t('exports.out.label')} />
      <div aria-live="polite">{work.job?.state === 'done' && <Made job={work.job} />}</div>
      <Form aria-label={t('exports.out.title')} onSubmit={begin}>
        <TextInput
          label={t('exports.out.folder')}
          value={typed}
          onChange={setTyped}
          maxLength={1000}
          description={t('exports.out.folderHint')}
        />
      </Form>
    </Section>
  )
}

function Made({ job: { exported } }: { job: SafekeepingJob }) {
  const t = useWords()
  const { locale } = useSettings()
  if (!exported?.manifest) return null
  return (
    <>
      <p className={styles.good}>
        {t('exports.out.made', {
          count: exported.manifest.counts.moves,
          size: formatSize(exported.bytes, locale),
        })}
      </p>
      <p className={styles.file}>{t('exports.out.madeIn', { file: exported.file })}</p>
    </>
  )
}
