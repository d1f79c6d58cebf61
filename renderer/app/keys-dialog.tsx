/** The keys that work everywhere. */
import { Button } from '../parts/button/button.tsx'
import { DialogActions, SheetDialog } from '../parts/dialog/sheet-dialog.tsx'
import { keyText, shortcuts } from './shortcuts.ts'
import { useWords } from './words/use-words.ts'
import styles from './keys-dialog.module.css'

export function KeysDialog({ isOpen, onClose }: { isOpen: boolean; onClose: () => void }) {
  const t = useWords()
  return (
    <SheetDialog title={t('finder.keys.title')} isOpen={isOpen} onClose={onClose}>
      <dl className={styles.keys}>
        {shortcuts.map(({ id, keys }) => (
          <div key={id}>
            <dt>
              {keys.map((key) => (
                <kbd key={keyText(key)}>{keyText(key)}</kbd>
              ))}
            </dt>
            <dd>{t(`finder.keys.shortcut.${id}`)}</dd>
          </div>
        ))}
      </dl>
      <p>{t('finder.keys.text')}</p>
      <DialogActions>
        <Button kind="primary" onPress={onClose}>
          {t('finder.keys.done')}
        </Button>
      </DialogActions>
    </SheetDialog>
  )
}
