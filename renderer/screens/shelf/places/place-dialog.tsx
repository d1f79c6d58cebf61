/** Names a place on the shelf, or changes one: how warm and light it is, whether it is used. */
import { useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { newId } from '../../../app/new-id.ts'
import { useWrite } from '../../../app/queries.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Form } from '../../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../../parts/dialog/sheet-dialog.tsx'
import { Check } from '../../../parts/fields/check.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { TextInput } from '../../../parts/fields/text-input.tsx'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import { ShelfLight, type Shelf } from '../../../../shared/schemas/shelf.ts'
import styles from './places-view.module.css'

/** The place to change, or a new one. */
export type PlaceWanted = 'new' | Shelf

export interface PlaceDialogProps {
  /** Undefined keeps the dialog closed. */
  wanted: PlaceWanted | undefined
  all: readonly Shelf[]
  isInUse: (shelfId: string) => boolean
  onClose: () => void
}

/** A cellar's own, as the book takes it where nothing else is known. */
const usualTemperatureC = 15
const temperatureRange = { min: 0, max: 40 }

export function PlaceDialog({ wanted, ...rest }: PlaceDialogProps) {
  const t = useWords()
  return (
    <SheetDialog
      title={t(wanted === 'new' ? 'shelf.places.form.add' : 'shelf.places.form.change')}
      isOpen={wanted !== undefined}
      onClose={rest.onClose}
    >
      {wanted && <PlaceForm wanted={wanted} {...rest} />}
    </SheetDialog>
  )
}

function PlaceForm({ wanted, all, isInUse, onClose }: PlaceDialogProps & { wanted: PlaceWanted }) {
  const t = useWords()
  const add = useWrite('shelves.add')
  const change = useWrite('shelves.change')
  const given = wanted === 'new' ? undefined : wanted
  const [id] = useState(() => given?.id ?? newId())
  const [name, setName] = useState(given?.name ?? '')
  const [temperatureC, setTemperatureC] = useState<number | undefined>(
    given?.temperatureC ?? usualTemperatureC,
  )
  const [light, setLight] = useState<ShelfLight>(given?.light ?? 'dark')
  const [isRetired, setRetired] = useState(given?.isRetired ?? false)
  const [wasTried, setTried] = useState(false)
  const named = name.trim()
  const isTaken = all.some(
    (shelf) => shelf.id !== id && shelf.name.toLowerCase() === named.toLowerCase(),
  )
  const nameProblem =
    named === ''
      ? t('shelf.places.form.nameMissing')
      : isTaken
        ? t('shelf.places.form.nameTaken')
        : undefined
  const retireProblem = isRetired && isInUse(id) ? t('shelf.places.form.retireProblem') : undefined

  function submit() {
    setTried(true)
    if (nameProblem || temperatureC === undefined || retireProblem) return
    const write = given ? change : add
    if (write.isPending) return
    write.mutate({ id, name: named, temperatureC, light, isRetired }, { onSuccess: onClose })
  }

  return (
    <Form onSubmit={submit}>
      <TextInput
        label={t('shelf.places.form.name')}
        value={name}
        onChange={setName}
        isRequired
        autoFocus
        problem={wasTried ? nameProblem : undefined}
      />
      <QuantityField
        label={t('shelf.places.form.temperature')}
        description={t('shelf.places.form.temperatureHint')}
        dimension="temperature"
        range={temperatureRange}
        value={temperatureC}
        onChange={setTemperatureC}
        isRequired
        showsProblem={wasTried}
      />
      <Segments
        label={t('shelf.places.form.light')}
        value={light}
        onChange={setLight}
        choices={ShelfLight.options.map((value) => ({ value, label: t(`shelf.light.${value}`) }))}
      />
      {given && (
        <Check isSelected={isRetired} onChange={setRetired} isInvalid={retireProblem !== undefined}>
          {t('shelf.places.form.retired')}
        </Check>
      )}
      <p role="alert" className={styles.problem}>
        {retireProblem}
      </p>
      <FailureNote error={add.error ?? change.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={add.isPending || change.isPending}>
          {t(given ? 'shelf.places.form.save' : 'shelf.places.form.goAdd')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}
