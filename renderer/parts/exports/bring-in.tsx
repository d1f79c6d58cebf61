/** Bringing in an exported cellar: which one, what would change, and then it is done. */
import { useState } from 'react'
import type { ImportPreview } from '../../../shared/schemas/exports.ts'
import { useRead, useWrite } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { FolderToLookIn } from '../backups/folder-to-look-in.tsx'
import { JobProgress } from '../backups/job-progress.tsx'
import { KeptAside } from '../backups/kept-aside.tsx'
import { PreviewOfRestore } from '../backups/restore-preview.tsx'
import styles from '../backups/restore.module.css'
import { useLookIntoExportJob } from '../backups/use-job.ts'
import { Button } from '../button/button.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import { ReadState } from '../failure/read-state.tsx'
import { useTimes } from '../time/use-times.ts'
import { FoundExports } from './found-exports.tsx'

export interface BringInProps {
  /** Called when the cellar has been put in place, while this may be on its way out. */
  onBroughtIn?: () => void
}

/** Folded away until it is asked for: folders are read then. */
export function BringIn({ onBroughtIn }: BringInProps) {
  const t = useWords()
  const [isAsked, setAsked] = useState(false)
  if (isAsked) return <ExportToBringIn onBroughtIn={onBroughtIn} />
  return (
    <div>
      <Button onPress={() => setAsked(true)}>{t('exports.in.ask')}</Button>
    </div>
  )
}

function ExportToBringIn({ onBroughtIn }: { onBroughtIn: (() => void) | undefined }) {
  const t = useWords()
  const times = useTimes()
  const [folder, setFolder] = useState<string>()
  const found = useRead('exports.list', folder === undefined ? {} : { folder })
  const look = useLookIntoExportJob()
  const bringIn = useWrite('exports.import')
  const preview = look.job?.importPreview
  return (
    <div className={styles.restore}>
      <ReadState query={found}>
        {(exports) => (
          <>
            <FolderToLookIn key={exports.folder} folder={exports.folder} onLook={setFolder} />
            <FoundExports
              found={exports}
              onLook={(file) => {
                bringIn.reset()
                look.begin(file)
              }}
            />
          </>
        )}
      </ReadState>
      <JobProgress work={look} label={t('exports.in.looking')} />
      {preview && !bringIn.isSuccess && (
        <ToBringIn
          preview={preview}
          isBusy={bringIn.isPending}
          onLeave={look.leave}
          onGo={() =>
            bringIn.mutate(
              { file: preview.file },
              {
                onSuccess: () => {
                  look.leave()
                  onBroughtIn?.()
                },
              },
            )
          }
        />
      )}
      <FailureNote error={bringIn.error} />
      <div aria-live="polite">
        {bringIn.isSuccess && (
          <>
            <p className={styles.sound}>
              {t('exports.in.done', { when: times.moment(bringIn.data.manifest.madeAt) })}
            </p>
            <KeptAside file={bringIn.data.asideFile} />
          </>
        )}
      </div>
    </div>
  )
}

interface ToBringInProps {
  preview: ImportPreview
  isBusy: boolean
  onGo: () => void
  onLeave: () => void
}

function ToBringIn({ preview, isBusy, onGo, onLeave }: ToBringInProps) {
  const t = useWords()
  const times = useTimes()
  const title = t('exports.in.preview', { when: times.moment(preview.manifest.madeAt) })
  return (
    <section className={styles.preview} aria-label={title}>
      <h3>{title}</h3>
      <PreviewOfRestore compared={preview} of="export" />
      <p className={styles.quiet}>{t('exports.in.text')}</p>
      <div className={styles.actions}>
        <Button isBusy={isBusy} onPress={onGo}>
          {t('exports.in.go')}
        </Button>
        <Button kind="quiet" onPress={onLeave}>
          {t('safekeeping.restore.leave')}
        </Button>
      </div>
    </section>
  )
}
