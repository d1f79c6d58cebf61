/** Where backups go, and when they are made by themselves. */
import { useState } from 'react'
import type { BackupState } from '../../../../shared/schemas/safekeeping.ts'
import { useWrite } from '../../../app/queries.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Form } from '../../../parts/dialog/form.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { TextInput } from '../../../parts/fields/text-input.tsx'
import { Toggles } from '../../../parts/fields/toggles.tsx'
import { NumberField } from '../../../parts/quantity/number-field.tsx'
import styles from './backups.module.css'

export const BackupSettings = ({ state }: { state: BackupState }) => (
  <div className={styles.settings}>
    <Folder key={state.folder} state={state} />
    <Schedule state={state} />
  </div>
)

function Folder({ state }: { state: BackupState }) {
  const t = useWords()
  const [typed, setTyped] = useState(state.folder)
  const change = useWrite('backups.change')
  const isOther = typed.trim() !== '' && typed.trim() !== state.folder
  return (
    <div className={styles.part}>
      <h3>{t('safekeeping.backups.where')}</h3>
      <Form
        aria-label={t('safekeeping.backups.where')}
        onSubmit={() => {
          if (isOther && !change.isPending) change.mutate({ folder: typed.trim() })
        }}
      >
        <TextInput
          label={t('safekeeping.backups.folder')}
          value={typed}
          onChange={setTyped}
          maxLength={1000}
          isRequired
          description={state.isUsualFolder ? t('safekeeping.backups.usualHint') : undefined}
        />
        <div className={styles.actions}>
          {isOther && (
            <Button type="submit" isBusy={change.isPending}>
              {t('safekeeping.backups.keepFolder')}
            </Button>
          )}
          {!state.isUsualFolder && (
            <Button kind="quiet" onPress={() => change.mutate({ folder: null })}>
              {t('safekeeping.backups.usualFolder')}
            </Button>
          )}
        </div>
      </Form>
      <FailureNote error={change.error} />
      <p className={styles.quiet}>{t('safekeeping.backups.openFormat')}</p>
    </div>
  )
}

const isPossible = (count: number) => Number.isInteger(count) && count >= 1 && count <= 10_000

function Schedule({ state: { schedule } }: { state: BackupState }) {
  const t = useWords()
  const change = useWrite('backups.change')
  return (
    <div className={styles.part}>
      <h3>{t('safekeeping.backups.when')}</h3>
      <Toggles
        label={t('safekeeping.backups.switchOn')}
        value={schedule.isOn ? ['on'] : []}
        onChange={(chosen) =>
          change.mutate({ schedule: { ...schedule, isOn: chosen.includes('on') } })
        }
        choices={[{ value: 'on', label: t('safekeeping.backups.switchOn') }]}
      />
      {schedule.isOn && (
        <NumberField
          label={t('safekeeping.backups.everyMoves')}
          unit={t('safekeeping.backups.everyMovesUnit')}
          value={schedule.everyMoves}
          digits={5}
          problemOf={(count) =>
            isPossible(count) ? undefined : t('safekeeping.backups.everyMovesProblem')
          }
          onChange={(count) => {
            if (count !== undefined && isPossible(count))
              change.mutate({ schedule: { ...schedule, everyMoves: count } })
          }}
        />
      )}
      <FailureNote error={change.error} />
      <p className={styles.quiet}>{t('safekeeping.backups.scheduleHint')}</p>
    </div>
  )
}
