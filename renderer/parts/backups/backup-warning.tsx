/** A word where the book is in danger: the last backup failed, or moves have long been in none. */
import { useRead } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { ButtonLink } from '../button/button.tsx'
import { Trouble } from './trouble.tsx'

export function BackupWarning() {
  const t = useWords()
  const state = useRead('backups.state', {}).data
  if (state?.standing !== 'missed' && state?.standing !== 'failed') return null
  const { standing, lastFailure } = state
  return (
    <Trouble
      action={
        <ButtonLink href="/safekeeping" kind="quiet">
          {t('safekeeping.backups.toSafekeeping')}
        </ButtonLink>
      }
    >
      {t(`safekeeping.backups.standing.${standing}`)}
      {standing === 'failed' &&
        lastFailure &&
        ` ${t(`safekeeping.backups.failure.${lastFailure.failure}`)}`}
    </Trouble>
  )
}
