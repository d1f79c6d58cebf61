/** A vessel the cellar does not have yet, added without leaving the form. */
import { useState, type KeyboardEvent } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { JarShape } from '../../../shared/schemas/cellar.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { Button } from '../button/button.tsx'
import { FailureNote } from '../failure/failure-note.tsx'
import { ChoiceField } from '../fields/choice-field.tsx'
import { TextInput } from '../fields/text-input.tsx'
import { QuantityField } from '../quantity/quantity-field.tsx'
import styles from './inset.module.css'

export interface NewVesselProps {
  onAdded: (jarId: string) => void
  onLeave: () => void
}

export function NewVessel({ onAdded, onLeave }: NewVesselProps) {
  const t = useWords()
  const add = useWrite('jars.add')
  const [name, setName] = useState('')
  const [shape, setShape] = useState<JarShape>('jar')
  const [capacityMl, setCapacityMl] = useState<number>()
  const [isTried, setIsTried] = useState(false)

  function submit() {
    setIsTried(true)
    if (name.trim() === '' || capacityMl === undefined) return
    const jar = { id: newId(), name: name.trim(), shape, capacityMl, isRetired: false }
    add.mutate({ jars: [jar] }, { onSuccess: () => onAdded(jar.id) })
  }

  /** Enter adds the vessel; the move around it is not recorded yet. */
  function onKeyDown(event: KeyboardEvent) {
    if (event.key === 'Escape') {
      event.preventDefault()
      event.stopPropagation()
      onLeave()
    }
    if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return
    event.preventDefault()
    submit()
  }

  return (
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- keys of the fields inside
    <div className={styles.inset} onKeyDown={onKeyDown}>
      <TextInput
        label={t('batch.form.vesselName')}
        value={name}
        onChange={setName}
        isRequired
        autoFocus
        problem={isTried && name.trim() === '' ? t('batch.form.missing') : undefined}
      />
      <ChoiceField
        label={t('batch.form.vesselShape')}
        value={shape}
        onChange={setShape}
        choices={JarShape.options.map((value) => ({ value, label: t(`codes.shape.${value}`) }))}
      />
      <QuantityField
        label={t('batch.form.vesselSize')}
        dimension="volume"
        value={capacityMl}
        onChange={setCapacityMl}
        isRequired
        showsProblem={isTried}
      />
      <FailureNote error={add.error} />
      <div className={styles.actions}>
        <Button onPress={submit} isBusy={add.isPending}>
          {t('batch.form.addVessel')}
        </Button>
        <Button kind="quiet" onPress={onLeave}>
          {t('parts.cancel')}
        </Button>
      </div>
    </div>
  )
}
