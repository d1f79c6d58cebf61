/** How this cellar is shown: theme, units, locale, currency. Each choice is kept at once. */
import { useWords } from './words/use-words.ts'
import type { Settings } from '../../shared/channels.ts'
import { Button } from '../parts/button/button.tsx'
import { DialogActions, SheetDialog } from '../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../parts/failure/failure-note.tsx'
import { Segments } from '../parts/fields/segments.tsx'
import { useWrite } from './queries.ts'
import { ReminderField } from './reminder-field.tsx'
import { SettingsFields } from './settings-fields.tsx'

export interface SettingsDialogProps {
  settings: Settings
  isOpen: boolean
  onClose: () => void
}

export function SettingsDialog({ settings, isOpen, onClose }: SettingsDialogProps) {
  const t = useWords()
  const change = useWrite('cellar.changeSettings')
  return (
    <SheetDialog title={t('shell.settings.title')} isOpen={isOpen} onClose={onClose}>
      <Segments
        label={t('shell.settings.theme')}
        value={settings.theme}
        onChange={(theme) => change.mutate({ theme })}
        choices={(['system', 'light', 'dark'] as const).map((value) => ({
          value,
          label: t(`shell.settings.themes.${value}`),
        }))}
      />
      <SettingsFields settings={settings} onChange={(changed) => change.mutate(changed)} />
      <ReminderField
        isOn={settings.reminders}
        onChange={(reminders) => change.mutate({ reminders })}
      />
      <FailureNote error={change.error} />
      <DialogActions>
        <Button kind="primary" onPress={onClose}>
          {t('shell.settings.done')}
        </Button>
      </DialogActions>
    </SheetDialog>
  )
}
