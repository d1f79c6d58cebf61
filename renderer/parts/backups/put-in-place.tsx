/** Another book in the present one's place: which folder, which file, what would change, and then it is done. */
import type { UseMutationResult, UseQueryResult } from '@tanstack/react-query'
import type { ReactNode } from 'react'
import type { BooksCompared } from '../../../shared/schemas/books-compared.ts'
import type { CallError } from '../../app/calls.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import { ReadState } from '../failure/read-state.tsx'
import { useTimes } from '../time/use-times.ts'
import { FolderToLookIn } from './folder-to-look-in.tsx'
import { JobProgress } from './job-progress.tsx'
import { KeptAside } from './kept-aside.tsx'
import { PreviewOfRestore } from './restore-preview.tsx'
import type { Work } from './use-job.ts'
import styles from './restore.module.css'

const wordsOf = {
  backup: {
    looking: 'safekeeping.restore.looking',
    preview: 'safekeeping.restore.preview',
    text: 'safekeeping.restore.text',
    go: 'safekeeping.restore.go',
    done: 'safekeeping.restore.done',
  },
  export: {
    looking: 'exports.in.looking',
    preview: 'exports.in.preview',
    text: 'exports.in.text',
    go: 'exports.in.go',
    done: 'exports.in.done',
  },
} as const
type Of = keyof typeof wordsOf

interface Made {
  readonly manifest: { readonly madeAt: string }
}

type LookedInto = BooksCompared & Made & { readonly file: string }

/** What is looked into, and the way to put it in place. */
export interface LookedAt {
  of: Of
  look: Work & { begin: (file: string) => void }
  preview: LookedInto | undefined
  put: UseMutationResult<Made & { asideFile: string | null }, CallError, { file: string }>
}

export interface PutInPlaceProps<Found extends { readonly folder: string }> {
  at: LookedAt
  found: UseQueryResult<Found, CallError>
  onFolder: (folder: string) => void
  list: (found: Found, onLook: (file: string) => void) => ReactNode
  /** Called when the book has been put in place, while this may be on its way out. */
  onDone: (() => void) | undefined
}

export function PutInPlace<Found extends { readonly folder: string }>({
  at,
  found,
  onFolder,
  list,
  onDone,
}: PutInPlaceProps<Found>) {
  const onLook = (file: string) => {
    at.put.reset()
    at.look.begin(file)
  }
  return (
    <div className={styles.restore}>
      <ReadState query={found}>
        {(read) => (
          <>
            <FolderToLookIn key={read.folder} folder={read.folder} onLook={onFolder} />
            {list(read, onLook)}
          </>
        )}
      </ReadState>
      <LookInto at={at} onDone={onDone} />
    </div>
  )
}

export interface LookIntoProps {
  at: LookedAt
  onDone?: (() => void) | undefined
  /** Called when it is left as it is. */
  onLeft?: (() => void) | undefined
}

/** How far the look is, what would change, and the outcome. */
export function LookInto({ at: { of, look, preview, put }, onDone, onLeft }: LookIntoProps) {
  const t = useWords()
  const times = useTimes()
  const leave = () => {
    look.leave()
    onLeft?.()
  }
  return (
    <>
      <JobProgress work={look} label={t(wordsOf[of].looking)} />
      {preview && !put.isSuccess && (
        <ToPutInPlace
          of={of}
          preview={preview}
          isBusy={put.isPending}
          onLeave={leave}
          onGo={() =>
            put.mutate(
              { file: preview.file },
              {
                onSuccess: () => {
                  look.leave()
                  onDone?.()
                },
              },
            )
          }
        />
      )}
      <FailureNote error={put.error} />
      <div aria-live="polite">
        {put.isSuccess && (
          <>
            <p className={styles.sound}>
              {t(wordsOf[of].done, { when: times.moment(put.data.manifest.madeAt) })}
            </p>
            <KeptAside file={put.data.asideFile} />
          </>
        )}
      </div>
    </>
  )
}

interface ToPutInPlaceProps {
  of: Of
  preview: LookedInto
  isBusy: boolean
  onGo: () => void
  onLeave: () => void
}

function ToPutInPlace({ of, preview, isBusy, onGo, onLeave }: ToPutInPlaceProps) {
  const t = useWords()
  const times = useTimes()
  const words = wordsOf[of]
  const title = t(words.preview, { when: times.moment(preview.manifest.madeAt) })
  return (
    <section className={styles.preview} aria-label={title}>
      <h3>{title}</h3>
      <PreviewOfRestore compared={preview} of={of} />
      <p className={styles.quiet}>{t(words.text)}</p>
      <div className={styles.actions}>
        <Button isBusy={isBusy} onPress={onGo}>
          {t(words.go)}
        </Button>
        <Button kind="quiet" onPress={onLeave}>
          {t('safekeeping.restore.leave')}
        </Button>
      </div>
    </section>
  )
}
