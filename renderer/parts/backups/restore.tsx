/** Going back to a backup: which folder, which backup, what would change, and then it is done. */
import { useState } from 'react'
import type { Answer } from '../../../shared/channels.ts'
import type { RestorePreview } from '../../../shared/schemas/safekeeping.ts'
import { useRead, useWrite } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import { ReadState } from '../failure/read-state.tsx'
import { useTimes } from '../time/use-times.ts'
import { FolderToLookIn } from './folder-to-look-in.tsx'
import { FoundBackups } from './found-backups.tsx'
import { JobProgress } from './job-progress.tsx'
import { KeptAside } from './kept-aside.tsx'
import { PreviewOfRestore } from './restore-preview.tsx'
import { useLookJob } from './use-job.ts'
import styles from './restore.module.css'

export interface RestoreProps {
  /** Called when the book has been put in place, while this may be on its way out. */
  onRestored?: () => void
}

export function Restore({ onRestored }: RestoreProps) {
  const t = useWords()
  const [folder, setFolder] = useState<string>()
  const found = useRead('backups.list', folder === undefined ? {} : { folder })
  const look = useLookJob()
  const restore = useWrite('backups.restore')
  const preview = look.job?.preview
  const isDone = restore.isSuccess
  return (
    <div className={styles.restore}>
      <ReadState query={found}>
        {(backups) => (
          <>
            <FolderToLookIn key={backups.folder} folder={backups.folder} onLook={setFolder} />
            <FoundBackups
              found={backups}
              onLook={(file) => {
                restore.reset()
                look.begin(file)
              }}
            />
          </>
        )}
      </ReadState>
      <JobProgress work={look} label={t('safekeeping.restore.looking')} />
      {preview && !isDone && (
        <ToRestore
          preview={preview}
          isBusy={restore.isPending}
          onLeave={look.leave}
          onGo={() =>
            restore.mutate(
              { file: preview.file },
              {
                onSuccess: () => {
                  look.leave()
                  onRestored?.()
                },
              },
            )
          }
        />
      )}
      <FailureNote error={restore.error} />
      <div aria-live="polite">{isDone && <Restored done={restore.data} />}</div>
    </div>
  )
}

interface ToRestoreProps {
  preview: RestorePreview
  isBusy: boolean
  onGo: () => void
  onLeave: () => void
}

function ToRestore({ preview, isBusy, onGo, onLeave }: ToRestoreProps) {
  const t = useWords()
  const times = useTimes()
  const title = t('safekeeping.restore.preview', { when: times.moment(preview.manifest.madeAt) })
  return (
    <section className={styles.preview} aria-label={title}>
      <h3>{title}</h3>
      <PreviewOfRestore compared={preview} of="backup" />
      <p className={styles.quiet}>{t('safekeeping.restore.text')}</p>
      <div className={styles.actions}>
        <Button isBusy={isBusy} onPress={onGo}>
          {t('safekeeping.restore.go')}
        </Button>
        <Button kind="quiet" onPress={onLeave}>
          {t('safekeeping.restore.leave')}
        </Button>
      </div>
    </section>
  )
}

function Restored({ done }: { done: Answer<'backups.restore'> }) {
  const t = useWords()
  const times = useTimes()
  return (
    <>
      <p className={styles.sound}>
        {t('safekeeping.restore.done', { when: times.moment(done.manifest.madeAt) })}
      </p>
      <KeptAside file={done.asideFile} />
    </>
  )
}
