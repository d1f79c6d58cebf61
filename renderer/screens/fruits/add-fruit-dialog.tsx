/** A fruit that the library lacks: begins as a copy of one like it, then goes to its page. */
import { useState } from 'react'
import { useLocation } from 'wouter'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { useFruitName, useFruits } from '../../parts/names/use-names.ts'
import { fruitLike } from './fruit-like.ts'

export interface AddFruitDialogProps {
  isOpen: boolean
  onClose: () => void
  /** The fruit to begin from, where the maker was looking at one. */
  likeId?: string
}

export function AddFruitDialog({ isOpen, onClose, likeId = '' }: AddFruitDialogProps) {
  const t = useWords()
  return (
    <SheetDialog title={t('fruits.addForm.title')} isOpen={isOpen} onClose={onClose}>
      <AddFruitForm onClose={onClose} likeId={likeId} />
    </SheetDialog>
  )
}

function AddFruitForm({ onClose, likeId }: { onClose: () => void; likeId: string }) {
  const t = useWords()
  const { locale } = useSettings()
  const [, navigate] = useLocation()
  const fruits = useFruits()
  const fruitName = useFruitName()
  const keep = useWrite('fruits.keep')
  // One id for the form's life: sending twice adds once.
  const [id] = useState(newId)
  const [name, setName] = useState('')
  const [namePl, setNamePl] = useState('')
  const [chosen, setChosen] = useState(likeId)
  const [wasTried, setTried] = useState(false)
  const like = fruits.get(chosen)
  const isNameMissing = name.trim() === ''

  function submit() {
    setTried(true)
    if (isNameMissing || !like || keep.isPending) return
    keep.mutate(fruitLike(like, { id, nameEn: name, namePl }), {
      onSuccess: ({ fruit }) => {
        onClose()
        navigate(`/fruits/${encodeURIComponent(fruit.id)}`)
      },
    })
  }

  return (
    <Form onSubmit={submit}>
      <p>{t('fruits.addForm.text')}</p>
      <TextInput
        label={t('fruits.addForm.name')}
        value={name}
        onChange={setName}
        isRequired
        autoFocus
        problem={wasTried && isNameMissing ? t('fruits.form.nameMissing') : undefined}
      />
      <TextInput label={t('fruits.addForm.namePl')} value={namePl} onChange={setNamePl} />
      <ChoiceField
        label={t('fruits.addForm.like')}
        placeholder={t('fruits.addForm.choose')}
        value={chosen}
        onChange={setChosen}
        problem={wasTried && !like ? t('fruits.addForm.likeMissing') : undefined}
        choices={[...fruits.values()]
          .map((fruit) => ({ value: fruit.id, label: fruitName(fruit) }))
          .toSorted((a, b) => a.label.localeCompare(b.label, locale))}
      />
      <FailureNote error={keep.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={keep.isPending}>
          {t('fruits.addForm.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}
