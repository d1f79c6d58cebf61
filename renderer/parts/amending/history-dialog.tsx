/** Every version of a move, what each changed, and the way back to any: the book forgets none. */
import { useState } from 'react'
import type { Answer } from '../../../shared/channels.ts'
import type { Move } from '../../../shared/schemas/moves.ts'
import { useRead } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'
import { DialogActions, SheetDialog } from '../dialog/sheet-dialog.tsx'
import { ReadState } from '../failure/read-state.tsx'
import { useMoveWords } from '../moves/use-move-words.ts'
import { useTimes } from '../time/use-times.ts'
import type { MoveDialogProps } from './amend-dialog.tsx'
import { fieldChanges } from './move-fields.ts'
import { PutBackDialog } from './put-back-dialog.tsx'
import { useFieldWords } from './use-field-words.ts'
import styles from './history-dialog.module.css'

type Version = Answer<'moves.history'>[number]

export function HistoryDialog({ recorded, onClose }: MoveDialogProps) {
  const t = useWords()
  const history = useRead('moves.history', { moveId: recorded.id })
  const [chosen, setChosen] = useState<Move>()
  const newest = history.data?.at(-1)
  if (chosen && newest)
    return (
      <PutBackDialog
        recorded={{ ...recorded, version: newest.version }}
        move={chosen}
        onClose={onClose}
      />
    )
  return (
    <SheetDialog title={t('batch.ledger.historyTitle')} isOpen onClose={onClose} size="wide">
      <ReadState query={history}>
        {(versions) => (
          <ol className={styles.versions} aria-label={t('batch.ledger.historyCaption')} reversed>
            {versions.toReversed().map((version) => (
              <li key={version.version}>
                <VersionTold
                  version={version}
                  before={versions.find((one) => one.version === version.version - 1)}
                  newest={newest}
                  onPutBack={setChosen}
                />
              </li>
            ))}
          </ol>
        )}
      </ReadState>
      <DialogActions>
        <Button onPress={onClose}>{t('parts.close')}</Button>
      </DialogActions>
    </SheetDialog>
  )
}

interface VersionToldProps {
  version: Version
  before: Version | undefined
  newest: Version | undefined
  onPutBack: (move: Move) => void
}

function VersionTold({ version, before, newest, onPutBack }: VersionToldProps) {
  const t = useWords()
  const times = useTimes()
  const moveWords = useMoveWords()
  const { move } = version
  const isAsNow = JSON.stringify(move) === JSON.stringify(newest?.move ?? null)
  return (
    <>
      <div className={styles.head}>
        <strong>{t('amending.history.version', { number: version.version })}</strong>
        <span className={styles.quiet}>
          {t('amending.history.recorded', { moment: times.moment(version.recordedAt) })}
        </span>
        {version === newest && <span className={styles.quiet}>{t('amending.history.counts')}</span>}
        {move && !isAsNow && (
          <Button
            kind="quiet"
            onPress={() => onPutBack(move)}
            aria-label={t('amending.history.putBackOf', { number: version.version })}
          >
            {t('amending.history.putBack')}
          </Button>
        )}
      </div>
      <p>{move ? moveWords(move) : t('batch.ledger.struck')}</p>
      {move && before?.move && <Changes before={before.move} after={move} />}
    </>
  )
}

function Changes({ before, after }: { before: Move; after: Move }) {
  const t = useWords()
  const words = useFieldWords()
  const changes = fieldChanges(before, after)
  if (changes.length === 0) return <p className={styles.quiet}>{t('amending.history.same')}</p>
  return (
    <dl className={styles.changes}>
      {changes.map((change) => {
        const [was, is] = [words.value(change, 'before'), words.value(change, 'after')]
        return (
          <div key={change.path}>
            <dt>{words.label(change)}</dt>
            <dd>
              {was === is
                ? t('amending.history.otherwise', { value: is })
                : t('amending.change', { before: was, after: is })}
            </dd>
          </div>
        )
      })}
    </dl>
  )
}
