/** Batches on paper: begin one, go on with one, or make a house recipe again. */
import { useWords } from '../../app/words/use-words.ts'
import { useRead } from '../../app/queries.ts'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Empty, Page, Section } from '../../parts/page/page.tsx'
import { BeginForm } from './begin-form.tsx'
import { DraftTable } from './draft-table.tsx'
import { KeepBatchForm } from './keep-batch-form.tsx'
import { RecipeTable } from './recipe-table.tsx'

export function DraftsScreen() {
  const t = useWords()
  const drafts = useRead('drafts.list', {})
  const recipes = useRead('recipes.list', {})
  return (
    <Page title={t('draft.title')} lead={t('draft.lead')}>
      <Section title={t('draft.begin.title')}>
        <BeginForm />
      </Section>
      <Section title={t('draft.kept.title')}>
        <ReadState query={drafts}>
          {(kept) =>
            kept.length === 0 ? <Empty>{t('draft.kept.none')}</Empty> : <DraftTable drafts={kept} />
          }
        </ReadState>
      </Section>
      <Section title={t('draft.recipes.title')} actions={<KeepBatchForm />}>
        <ReadState query={recipes}>
          {(kept) =>
            kept.length === 0 ? (
              <Empty>{t('draft.recipes.none')}</Empty>
            ) : (
              <RecipeTable recipes={kept} />
            )
          }
        </ReadState>
      </Section>
    </Page>
  )
}
