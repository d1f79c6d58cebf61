/** One fruit: when it is to be had, how it is steeped and why, what the maker's batches taught. */
import { useState } from 'react'
import { Link } from 'wouter'
import type { FruitPage } from '../../../shared/schemas/fruits.ts'
import { useRead } from '../../app/queries.ts'
import { useLibraryWords, useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { useFruitName } from '../../parts/names/use-names.ts'
import { Page, Section } from '../../parts/page/page.tsx'
import { AddFruitDialog } from './add-fruit-dialog.tsx'
import { factGroups } from './facts.ts'
import { FactsTable } from './facts-table.tsx'
import { FruitForm } from './fruit-form.tsx'
import styles from './fruit-screen.module.css'
import { LearnedSection } from './learned-section.tsx'
import { OriginBadge } from './origin-badge.tsx'
import { ResetDialog } from './reset-dialog.tsx'
import { SeasonSection } from './season-section.tsx'
import { SourceNote } from './source-note.tsx'
import { useKindWords } from './use-kind-words.ts'

export function FruitScreen({ fruitId }: { fruitId: string }) {
  const t = useWords()
  const page = useRead('fruits.page', { fruitId })
  const fruitName = useFruitName()
  /** `left` once the form was closed: the focus goes back to where it was opened. */
  const [editing, setEditing] = useState<'no' | 'yes' | 'left'>('no')
  if (!page.data)
    return (
      <Page title={t('fruits.title')} before={<Back />}>
        <ReadState<unknown> query={page}>{() => null}</ReadState>
      </Page>
    )
  if (editing !== 'yes')
    return <Shown page={page.data} onEdit={() => setEditing('yes')} hasFocus={editing === 'left'} />
  return (
    <Page title={t('fruits.form.title', { name: fruitName(page.data.fruit) })} before={<Back />}>
      <FruitForm fruit={page.data.fruit} onClose={() => setEditing('left')} />
    </Page>
  )
}

const Back = () => {
  const t = useWords()
  return <Link href="/fruits">{t('fruits.page.back')}</Link>
}

interface ShownProps {
  page: FruitPage
  onEdit: () => void
  /** Begins with the focus on the way to the form. */
  hasFocus: boolean
}

function Shown({ page, onEdit, hasFocus }: ShownProps) {
  const t = useWords()
  const { fruit, origin } = page
  const name = useFruitName()(fruit)
  const say = useLibraryWords()
  const [isAdding, setAdding] = useState(false)
  const [isResetting, setResetting] = useState(false)
  return (
    <Page
      title={name}
      before={<Back />}
      lead={<Lead page={page} />}
      actions={
        <>
          {origin !== 'library' && !(origin === 'own' && page.isUsed) && (
            <Button kind="quiet" onPress={() => setResetting(true)}>
              {t(origin === 'own' ? 'fruits.page.delete' : 'fruits.page.reset')}
            </Button>
          )}
          <Button onPress={() => setAdding(true)}>{t('fruits.page.another')}</Button>
          <Button kind="primary" onPress={onEdit} autoFocus={hasFocus}>
            {t('fruits.page.edit')}
          </Button>
        </>
      }
    >
      {fruit.hazards.length > 0 && <Hazards page={page} />}
      <div className={styles.columns}>
        <SeasonSection page={page} />
        {fruit.preparation !== '' && (
          <Section title={t('fruits.page.preparation')}>
            <p>{say(fruit.preparation)}</p>
            <SourceNote code={fruit.sources['preparation']} meanings={page.sourceMeanings} />
          </Section>
        )}
      </div>
      <LearnedSection page={page} />
      {factGroups.map((group) => (
        <Section key={group} title={t(`fruits.factGroup.${group}`)}>
          <FactsTable page={page} group={group} />
        </Section>
      ))}
      <AddFruitDialog isOpen={isAdding} onClose={() => setAdding(false)} likeId={fruit.id} />
      <ResetDialog
        fruitId={fruit.id}
        name={name}
        isOwn={origin === 'own'}
        isOpen={isResetting}
        onClose={() => setResetting(false)}
      />
    </Page>
  )
}

function Lead({ page }: { page: FruitPage }) {
  const t = useWords()
  const kindWords = useKindWords()
  const { fruit, origin, isUsed } = page
  return (
    <span className={styles.lead}>
      {fruit.latin !== '' && <i lang="la">{fruit.latin}</i>}
      <span>{kindWords(fruit.kind)}</span>
      <OriginBadge origin={origin} />
      {origin !== 'library' && (
        <span className={styles.note}>
          {t(`fruits.page.originText.${origin}`)}{' '}
          {origin === 'own' && isUsed && t('fruits.page.inUse')}
        </span>
      )}
    </span>
  )
}

function Hazards({ page: { fruit, sourceMeanings } }: { page: FruitPage }) {
  const t = useWords()
  const say = useLibraryWords()
  return (
    <Section title={t('fruits.page.cautions')}>
      <ul className={styles.hazards}>
        {fruit.hazards.map((hazard, index) => (
          <li key={hazard} className={styles.hazard}>
            <p>{say(hazard)}</p>
            <SourceNote code={fruit.sources[`hazards.${index}`]} meanings={sourceMeanings} />
          </li>
        ))}
      </ul>
    </Section>
  )
}
