/** A recipe at another size: for the fruit at hand, a jar, or so many bottles. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { Recipe, RecipeScale } from '../../../shared/schemas/drafts.ts'
import { useRead } from '../../app/queries.ts'
import { useSettings } from '../../app/settings.tsx'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { Segments } from '../../parts/fields/segments.tsx'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { useNewDraft } from '../../parts/plan/use-new-draft.ts'

export interface ScaleDialogProps {
  /** Undefined keeps the dialog closed. */
  recipe: Recipe | undefined
  onClose: () => void
}

export function ScaleDialog({ recipe, onClose }: ScaleDialogProps) {
  const t = useWords()
  const title = t('draft.scale.title', { name: recipe?.name ?? '' })
  return (
    <SheetDialog title={title} isOpen={recipe !== undefined} onClose={onClose}>
      {recipe && <ScaleForm recipe={recipe} onClose={onClose} />}
    </SheetDialog>
  )
}

function ScaleForm({ recipe, onClose }: { recipe: Recipe; onClose: () => void }) {
  const t = useWords()
  const q = useQuantities()
  const { units } = useSettings()
  const { begin, error, isPending } = useNewDraft()
  const [by, setBy] = useState<RecipeScale['by']>('fruit')
  const fruitG = recipe.spec.fruits.reduce((sum, { massG }) => sum + massG, 0)
  const [massG, setMassG] = useState<number | undefined>(Math.round(fruitG))
  const [capacityMl, setCapacity] = useState<number | undefined>(5000)
  const [count, setCount] = useState<number | undefined>(12)
  const scale = scaleOf(by, { massG, capacityMl, count })
  const { data, error: refused } = useRead(
    'recipes.scale',
    { spec: recipe.spec, scale: scale ?? { by: 'fruit', massG: Math.max(1, fruitG) } },
    { isEnabled: scale !== undefined, keepsLast: true },
  )

  function submit() {
    if (!data || !scale || isPending) return
    const spec = { ...data.spec, startAt: new Date().toISOString() }
    begin({ name: recipe.name, note: recipe.note, pins: [], spec })
  }

  return (
    <Form onSubmit={submit}>
      <Segments
        label={t('draft.scale.by')}
        value={by}
        onChange={setBy}
        choices={(['fruit', 'jar', 'bottles'] as const).map((value) => ({
          value,
          label: t(`draft.scale.${value}`),
        }))}
      />
      {by === 'fruit' && (
        <QuantityField
          label={t('draft.scale.mass')}
          dimension="mass"
          unit={units === 'us' ? 'lb' : 'kg'}
          value={massG}
          onChange={setMassG}
          isRequired
        />
      )}
      {by === 'jar' && (
        <QuantityField
          label={t('draft.scale.capacity')}
          dimension="volume"
          unit={units === 'us' ? 'quart' : 'L'}
          value={capacityMl}
          onChange={setCapacity}
          isRequired
        />
      )}
      {by === 'bottles' && (
        <QuantityField
          label={t('draft.scale.count')}
          dimension="count"
          value={count}
          onChange={setCount}
          isRequired
        />
      )}
      <p aria-live="polite">
        {data?.outcome.finished &&
          t('draft.scale.comes', {
            bottles: t('parts.bottles', { count: data.outcome.bottles }),
            strength: q.text(data.outcome.finished.strengthPctVol, 'strength'),
            sugar: q.text(data.outcome.finished.sugarGPerL, 'sugar'),
            fruit: q.text(
              data.spec.fruits.reduce((sum, fruit) => sum + fruit.massG, 0),
              'mass',
            ),
            spirit: q.text(
              data.spec.spirits.reduce((sum, { volumeMl }) => sum + volumeMl, 0),
              'volume',
            ),
          })}
      </p>
      <FailureNote error={error ?? refused} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={isPending} isDisabled={!scale}>
          {t('draft.scale.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}

interface Sizes {
  massG: number | undefined
  capacityMl: number | undefined
  count: number | undefined
}

function scaleOf(by: RecipeScale['by'], sizes: Sizes): RecipeScale | undefined {
  const { massG, capacityMl, count } = sizes
  switch (by) {
    case 'fruit':
      return massG === undefined ? undefined : { by, massG }
    case 'jar':
      return capacityMl === undefined ? undefined : { by, capacityMl }
    case 'bottles':
      return count === undefined ? undefined : { by, count }
  }
}
