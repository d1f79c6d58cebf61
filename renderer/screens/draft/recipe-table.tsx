/** The house recipes: make one again, at another size, or see how a batch of it turned out. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { Recipe } from '../../../shared/schemas/drafts.ts'
import { useWrite } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { BatchName } from '../../parts/names/batch-name.tsx'
import { useBatches } from '../../parts/names/use-names.ts'
import { Table, type Column } from '../../parts/table/table.tsx'
import { useTimes } from '../../parts/time/use-times.ts'
import { CompareDialog } from './compare-dialog.tsx'
import { ScaleDialog } from './scale-dialog.tsx'
import { useNewDraft } from '../../parts/plan/use-new-draft.ts'
import styles from './recipe-table.module.css'

export function RecipeTable({ recipes }: { recipes: readonly Recipe[] }) {
  const t = useWords()
  const times = useTimes()
  const batches = useBatches()
  const remove = useWrite('recipes.remove')
  const { begin, error } = useNewDraft()
  const [scaled, setScaled] = useState<Recipe>()
  const [compared, setCompared] = useState<Recipe>()
  const columns: Column<Recipe>[] = [
    { key: 'name', header: t('draft.recipes.name'), isRowHeader: true, cell: ({ name }) => name },
    {
      key: 'version',
      header: t('draft.recipes.version'),
      cell: ({ version, keptAt }) =>
        t('draft.recipes.versionOf', { version, day: times.day(keptAt) }),
    },
    {
      key: 'made',
      header: t('draft.recipes.batches'),
      isMinor: true,
      cell: ({ batchIds, fromBatchId }) => {
        const made = [...(fromBatchId === undefined ? [] : [fromBatchId]), ...batchIds].flatMap(
          (id) => batches.get(id) ?? [],
        )
        if (made.length === 0) return t('draft.recipes.madeNone')
        return made.map(({ batch }) => <BatchName key={batch.id} batch={batch} />)
      },
    },
    {
      key: 'actions',
      header: <span className="visually-hidden">{t('draft.recipes.use')}</span>,
      align: 'end',
      cell: (recipe) => (
        <span className={styles.actions}>
          <Button
            kind="quiet"
            aria-label={t('draft.recipes.useOne', { name: recipe.name })}
            onPress={() => {
              const { name, note, spec } = recipe
              begin({ name, note, pins: [], spec: { ...spec, startAt: new Date().toISOString() } })
            }}
          >
            {t('draft.recipes.use')}
          </Button>
          <Button
            kind="quiet"
            aria-label={t('draft.recipes.scaleOne', { name: recipe.name })}
            onPress={() => setScaled(recipe)}
          >
            {t('draft.recipes.scale')}
          </Button>
          <Button
            kind="quiet"
            aria-label={t('draft.recipes.compareOne', { name: recipe.name })}
            onPress={() => setCompared(recipe)}
          >
            {t('draft.recipes.compare')}
          </Button>
          <Button
            kind="quiet"
            aria-label={t('draft.recipes.removeOne', { name: recipe.name })}
            onPress={() => remove.mutate({ recipeId: recipe.id })}
          >
            {t('draft.recipes.remove')}
          </Button>
        </span>
      ),
    },
  ]
  return (
    <>
      <FailureNote error={remove.error ?? error} />
      <Table
        caption={t('draft.recipes.title')}
        columns={columns}
        rows={recipes}
        rowKey={({ id }) => id}
      />
      <ScaleDialog recipe={scaled} onClose={() => setScaled(undefined)} />
      <CompareDialog recipe={compared} onClose={() => setCompared(undefined)} />
    </>
  )
}
