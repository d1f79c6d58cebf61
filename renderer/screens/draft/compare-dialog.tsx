/** A recipe, by any of its versions, beside what really happened in a batch. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { Recipe } from '../../../shared/schemas/drafts.ts'
import { useRead } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { useBatches } from '../../parts/names/use-names.ts'
import { StagesTable } from '../../parts/plan/stages-table.tsx'
import { useTimes } from '../../parts/time/use-times.ts'

export interface CompareDialogProps {
  /** Undefined keeps the dialog closed. */
  recipe: Recipe | undefined
  onClose: () => void
}

export function CompareDialog({ recipe, onClose }: CompareDialogProps) {
  const t = useWords()
  const title = t('draft.compare.title', { name: recipe?.name ?? '' })
  return (
    <SheetDialog title={title} isOpen={recipe !== undefined} onClose={onClose} size="wide">
      {recipe && <Comparison recipe={recipe} onClose={onClose} />}
    </SheetDialog>
  )
}

function Comparison({ recipe, onClose }: { recipe: Recipe; onClose: () => void }) {
  const t = useWords()
  const times = useTimes()
  const batches = useBatches()
  const versions = useRead('recipes.versions', { recipeId: recipe.id }).data ?? [recipe]
  const [version, setVersion] = useState(String(recipe.version))
  const [batchId, setBatchId] = useState(recipe.batchIds.at(-1) ?? recipe.fromBatchId ?? '')
  const spec = versions.find((one) => String(one.version) === version)?.spec ?? recipe.spec
  const { data, error } = useRead(
    'recipes.compare',
    { spec, batchId: batchId || 'none' },
    { isEnabled: batchId !== '', keepsLast: true },
  )
  return (
    <>
      <ChoiceField
        label={t('draft.compare.version')}
        value={version}
        onChange={setVersion}
        choices={versions.map((one) => ({
          value: String(one.version),
          label: t('draft.recipes.versionOf', {
            version: one.version,
            day: times.day(one.keptAt),
          }),
        }))}
      />
      <ChoiceField
        label={t('draft.recipes.batch')}
        value={batchId}
        onChange={setBatchId}
        placeholder={t('draft.recipes.chooseBatch')}
        choices={[...batches.values()].map(({ batch }) => ({
          value: batch.id,
          label: batch.name,
        }))}
      />
      <FailureNote error={error} />
      {data && (
        <StagesTable
          stages={data}
          caption={t('draft.compare.caption')}
          plannedName={t('draft.compare.planned')}
        />
      )}
      <DialogActions>
        <Button onPress={onClose}>{t('parts.close')}</Button>
      </DialogActions>
    </>
  )
}
