/** The tasks for the maker's own calendar: as a file, or at an address that the browser host serves. */
import { useState } from 'react'
import { useBridge } from '../../app/bridge-context.tsx'
import { call } from '../../app/calls.ts'
import { useRead, useWrite } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Field } from '../../parts/fields/field.tsx'
import field from '../../parts/fields/field.module.css'
import { handText } from '../../parts/paper/hand-text.ts'
import styles from './calendar-dialog.module.css'

export function CalendarDialog({ onClose }: { onClose: () => void }) {
  const t = useWords()
  const status = useRead('cellar.status', {})
  return (
    <SheetDialog title={t('today.calendar.title')} isOpen onClose={onClose}>
      <div className={styles.parts}>
        <CalendarFile />
        <section className={styles.part}>
          <h3>{t('today.calendar.feed.title')}</h3>
          {status.data?.host === 'browser' ? (
            <CalendarAddress />
          ) : (
            <p>{t('today.calendar.feed.electron')}</p>
          )}
        </section>
      </div>
      <DialogActions>
        <Button onPress={onClose}>{t('today.calendar.done')}</Button>
      </DialogActions>
    </SheetDialog>
  )
}

function CalendarFile() {
  const t = useWords()
  const bridge = useBridge()
  const [isBusy, setBusy] = useState(false)
  const [error, setError] = useState<Error | null>(null)
  async function save() {
    setBusy(true)
    setError(null)
    try {
      const { fileName, ics } = await call(bridge, 'calendar.file', {})
      handText(fileName, ics, 'text/calendar')
    } catch (failure) {
      setError(failure instanceof Error ? failure : new Error(String(failure)))
    } finally {
      setBusy(false)
    }
  }
  return (
    <section className={styles.part}>
      <h3>{t('today.calendar.file.title')}</h3>
      <p>{t('today.calendar.file.text')}</p>
      <Button kind="primary" isBusy={isBusy} onPress={() => void save()}>
        {t('today.calendar.file.save')}
      </Button>
      <FailureNote error={error} />
    </section>
  )
}

function CalendarAddress() {
  const t = useWords()
  const feed = useRead('calendar.feed', {})
  const open = useWrite('calendar.openFeed')
  const close = useWrite('calendar.closeFeed')
  const [isCopied, setIsCopied] = useState(false)
  const address = feed.data?.path && `${window.location.origin}${feed.data.path}`
  const renew = () => {
    setIsCopied(false)
    open.mutate({})
  }
  return (
    <>
      <p>{t('today.calendar.feed.text')}</p>
      <ReadState query={feed}>
        {() =>
          address ? (
            <>
              <Field
                label={t('today.calendar.feed.address')}
                isRequired
                description={t('today.calendar.feed.port')}
              >
                {(control) => (
                  <input {...control} className={field['input']} readOnly value={address} />
                )}
              </Field>
              <div className={styles.buttons}>
                <Button
                  onPress={() => {
                    void navigator.clipboard.writeText(address).then(() => setIsCopied(true))
                  }}
                >
                  {t('today.calendar.feed.copy')}
                </Button>
                <Button kind="quiet" onPress={renew}>
                  {t('today.calendar.feed.renew')}
                </Button>
                <Button kind="quiet" onPress={() => close.mutate({})}>
                  {t('today.calendar.feed.close')}
                </Button>
              </div>
              <output>{isCopied && t('today.calendar.feed.copied')}</output>
            </>
          ) : (
            <Button onPress={renew}>{t('today.calendar.feed.openIt')}</Button>
          )
        }
      </ReadState>
      <FailureNote error={open.error ?? close.error} />
    </>
  )
}
