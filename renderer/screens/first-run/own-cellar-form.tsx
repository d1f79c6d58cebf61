/** The vessels one owns and how one measures; then the book is begun. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { useLocation } from 'wouter'
import type { Settings } from '../../../shared/channels.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { SettingsFields } from '../../app/settings-fields.tsx'
import { SettingsProvider } from '../../app/settings.tsx'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { jarsOf, usualVessels, type VesselCounts } from './usual-vessels.ts'
import { VesselPicker } from './vessel-picker.tsx'
import styles from './own-cellar-form.module.css'

export function OwnCellarForm({ settings }: { settings: Settings }) {
  const t = useWords()
  const [, navigate] = useLocation()
  const [changes, setChanges] = useState<Partial<Settings>>({})
  const chosen = { ...settings, ...changes }
  const [counts, setCounts] = useState<VesselCounts>({})
  const [wasTried, setTried] = useState(false)
  const changeSettings = useWrite('cellar.changeSettings')
  const addJars = useWrite('jars.add')
  const vessels = usualVessels[chosen.units]
  const jars = jarsOf(
    vessels,
    counts,
    (shape, number) => t('firstRun.jarName', { kind: t(`codes.shape.${shape}`), number }),
    newId,
  )

  function submit() {
    setTried(true)
    if (jars.length === 0 || changeSettings.isPending || addJars.isPending) return
    // The jars go in last: with them the book is no longer empty, and this screen is left.
    const { units, temperature, strength, locale, currency } = chosen
    changeSettings.mutate(
      { units, temperature, strength, locale, currency },
      {
        onSuccess: () => {
          navigate('/batches')
          addJars.mutate({ jars })
        },
      },
    )
  }

  return (
    <SettingsProvider settings={chosen}>
      <Form onSubmit={submit} aria-label={t('firstRun.own.title')}>
        <VesselPicker vessels={vessels} counts={counts} onChange={setCounts} />
        <fieldset className={styles.measures}>
          <legend>{t('firstRun.own.measures')}</legend>
          <SettingsFields
            settings={chosen}
            onChange={(changed) => {
              setChanges({ ...changes, ...changed })
              // The words change at once, here and in the demo; the rest with the book's beginning.
              if (changed.language) changeSettings.mutate(changed)
              if (changed.units && changed.units !== chosen.units) setCounts({})
            }}
          />
        </fieldset>
        <FailureNote error={changeSettings.error ?? addJars.error} />
        <div className={styles.go}>
          <Button
            kind="primary"
            type="submit"
            isBusy={changeSettings.isPending || addJars.isPending}
          >
            {t('firstRun.own.go')}
          </Button>
          <p aria-live="polite" className={jars.length === 0 ? styles.missing : undefined}>
            {jars.length > 0
              ? t('firstRun.own.chosen', { count: jars.length })
              : wasTried && t('firstRun.own.noneChosen')}
          </p>
        </div>
      </Form>
    </SettingsProvider>
  )
}
