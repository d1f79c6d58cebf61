/** Where bottles are laid down: a place on the shelf, or none yet. Not asked while no place has a name. */
import { useWords } from '../../../app/words/use-words.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { useShelves } from '../../names/use-names.ts'

interface ShelfFieldProps {
  value: string | undefined
  onChange: (shelfId: string | undefined) => void
}

/** Ids hold no spaces: this can be no place's. */
const nowhere = 'no place'

export function ShelfField({ value, onChange }: ShelfFieldProps) {
  const t = useWords()
  const shelves = [...useShelves().values()].filter(
    ({ id, isRetired }) => !isRetired || id === value,
  )
  if (shelves.length === 0) return null
  return (
    <ChoiceField
      label={t('batch.form.laidDown')}
      value={value ?? nowhere}
      onChange={(chosen) => onChange(chosen === nowhere ? undefined : chosen)}
      choices={[
        { value: nowhere, label: t('batch.form.laidDownNowhere') },
        ...shelves.map(({ id, name }) => ({ value: id, label: name })),
      ]}
      isRequired={false}
    />
  )
}
