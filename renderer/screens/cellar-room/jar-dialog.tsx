/** Adds a vessel, or changes one: its name, kind, size, and whether it is still in use. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { Answer } from '../../../shared/channels.ts'
import { JarShape, type Jar } from '../../../shared/schemas/cellar.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { useSettings } from '../../app/settings.tsx'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { Check } from '../../parts/fields/check.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import { Vessel } from '../../parts/vessel/vessel.tsx'
import styles from './jar-dialog.module.css'

/** The vessel to change, or a new one. */
export type JarWanted = 'new' | Answer<'jars.list'>[number]

export interface JarDialogProps {
  /** Undefined keeps the dialog closed. */
  wanted: JarWanted | undefined
  onClose: () => void
}

export function JarDialog({ wanted, onClose }: JarDialogProps) {
  const t = useWords()
  const title = wanted === 'new' ? t('cellarRoom.jarForm.add') : t('cellarRoom.jarForm.change')
  return (
    <SheetDialog title={title} isOpen={wanted !== undefined} onClose={onClose}>
      {wanted && <JarForm wanted={wanted} onClose={onClose} />}
    </SheetDialog>
  )
}

function JarForm({ wanted, onClose }: { wanted: JarWanted; onClose: () => void }) {
  const t = useWords()
  const { units } = useSettings()
  const add = useWrite('jars.add')
  const change = useWrite('jars.change')
  const given = wanted === 'new' ? undefined : wanted.jar
  const [id] = useState(() => given?.id ?? newId())
  const [name, setName] = useState(given?.name ?? '')
  const [shape, setShape] = useState<JarShape>(given?.shape ?? 'jar')
  const [capacityMl, setCapacityMl] = useState<number | undefined>(given?.capacityMl)
  const [isRetired, setRetired] = useState(given?.isRetired ?? false)
  const [wasTried, setTried] = useState(false)
  const holdsBatch = wanted !== 'new' && wanted.contents !== undefined
  const isNameMissing = name.trim() === ''
  const retireProblem = isRetired && holdsBatch ? t('cellarRoom.jarForm.retireProblem') : undefined

  function submit() {
    setTried(true)
    if (isNameMissing || capacityMl === undefined || retireProblem) return
    const jar: Jar = { id, name, shape, capacityMl, isRetired }
    if (given) change.mutate(jar, { onSuccess: onClose })
    else add.mutate({ jars: [jar] }, { onSuccess: onClose })
  }

  return (
    <Form onSubmit={submit}>
      <div className={styles.columns}>
        <div className={styles.fields}>
          <TextInput
            label={t('cellarRoom.jarForm.name')}
            value={name}
            onChange={setName}
            isRequired
            autoFocus
            problem={wasTried && isNameMissing ? t('cellarRoom.jarForm.nameMissing') : undefined}
          />
          <ChoiceField
            label={t('cellarRoom.jarForm.shape')}
            value={shape}
            onChange={setShape}
            choices={JarShape.options.map((value) => ({
              value,
              label: t(`codes.shape.${value}`),
            }))}
          />
          <QuantityField
            label={t('cellarRoom.jarForm.capacity')}
            dimension="volume"
            unit={units === 'us' ? 'quart' : 'L'}
            value={capacityMl}
            onChange={setCapacityMl}
            isRequired
            showsProblem={wasTried}
          />
        </div>
        <span className={styles.drawing}>
          <Vessel shape={shape} capacityMl={capacityMl ?? 1000} heightPx={150} isDecorative />
        </span>
      </div>
      {given && (
        <Check isSelected={isRetired} onChange={setRetired} isInvalid={retireProblem !== undefined}>
          {t('cellarRoom.jarForm.retired')}
        </Check>
      )}
      <p role="alert" className={styles.problem}>
        {retireProblem}
      </p>
      <FailureNote error={add.error ?? change.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={add.isPending || change.isPending}>
          {given ? t('cellarRoom.jarForm.save') : t('cellarRoom.jarForm.goAdd')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}
