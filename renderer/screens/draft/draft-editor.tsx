/** The answer, the chain, and every number that leads to it; nothing touches the ledger. */
import { useCallback, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { Draft, DraftOutcome, DraftWishes, UnmetWish } from '../../../shared/schemas/drafts.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { ButtonLink } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { Segments } from '../../parts/fields/segments.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { Page, Section } from '../../parts/page/page.tsx'
import { Chain } from './chain.tsx'
import { EditorActions } from './editor-actions.tsx'
import { draftOf, followed, stateOf, type DraftState } from './draft-state.ts'
import { NumbersForm } from './numbers-form.tsx'
import { OutcomeLine } from './outcome-line.tsx'
import { ShoppingTable } from './shopping-table.tsx'
import { StartDialog } from './start-dialog.tsx'
import { useDraftColour } from './use-draft-colour.ts'
import { useLatest } from '../../app/use-latest.ts'
import { WarningList } from './warning-list.tsx'
import { WishesForm } from './wishes-form.tsx'
import styles from './draft-editor.module.css'

/** Until the maker says what is wanted. */
const usualWishes: DraftWishes = { bottles: 6, strengthPctVol: 30, sugarGPerL: 200 }

const none: readonly UnmetWish[] = []

export function DraftEditor({ kept }: { kept: Draft }) {
  const t = useWords()
  const keep = useWrite('drafts.keep')
  const keepRecipe = useWrite('recipes.keep')
  const [state, setState] = useState(() => stateOf(kept, usualWishes))
  const [recipeId] = useState(newId)
  const [isStarting, setStarting] = useState(false)
  const wants = state.way === 'want'
  const { spec: own, pins, wishes } = state
  const solved = useLatest('drafts.solve', { spec: own, pins: [...pins], wishes }, wants)
  const reckoned = useLatest('drafts.reckon', { spec: own }, !wants)
  const query = wants ? solved : reckoned
  const found = wants ? solved.data?.spec : undefined
  const spec = useMemo(() => followed(own, found, pins), [own, found, pins])
  const outcome = wants ? solved.data?.outcome : reckoned.data
  const colour = useDraftColour(spec.fruits[0]?.fruitId)

  const change = useCallback(
    (next: Partial<DraftState>) => setState((before) => ({ ...before, ...next })),
    [],
  )
  // The answer is drawn first; the many fields of the form follow when there is time.
  const foundLater = useDeferredValue(found)
  const shown = useMemo(() => followed(own, foundLater, pins), [own, foundLater, pins])
  const told = useDeferredValue(outcome)
  const isNameMissing = state.name.trim() === ''
  const present = draftOf(kept.id, { ...state, spec })
  const latest = useRef(present)
  useEffect(() => {
    latest.current = present
  })
  const { mutate: keepDraft } = keep
  const { mutate: keepAsRecipe } = keepRecipe
  const onKeep = useCallback(() => {
    const draft = latest.current
    keepDraft(draft, { onSuccess: () => change({ spec: draft.spec }) })
  }, [keepDraft, change])
  const onKeepRecipe = useCallback(() => {
    const { name, note, spec: recipe } = latest.current
    keepAsRecipe({ id: recipeId, name, note, spec: recipe })
  }, [keepAsRecipe, recipeId])
  const onStart = useCallback(() => setStarting(true), [])
  // The first answer pushes what stands below it: the page waits for it, once.
  const [isReckoned, setReckoned] = useState(false)
  if (!isReckoned && (outcome !== undefined || query.error !== null)) setReckoned(true)
  const isKept = JSON.stringify(draftOf(kept.id, state)) === JSON.stringify(kept)

  /** The other way begins from what this one came to. */
  function turnWay(way: DraftState['way']) {
    const next = way === 'want' && outcome ? wishesOf(outcome, wishes) : wishes
    change({ way, spec, wishes: next })
  }

  const title = state.name.trim() || t('draft.title')
  const back = (
    <span>
      <ButtonLink kind="quiet" href="/draft">
        {t('draft.editor.back')}
      </ButtonLink>
    </span>
  )
  if (!isReckoned) return <Page title={title} before={back} lead={t('parts.loading')} />
  return (
    <Page
      title={title}
      before={back}
      lead={outcome ? <OutcomeLine outcome={outcome} startAt={spec.startAt} /> : t('parts.loading')}
      actions={
        <EditorActions
          present={latest}
          canStart={outcome?.finished !== undefined}
          isNameMissing={isNameMissing}
          isKeeping={keep.isPending}
          isKeepingRecipe={keepRecipe.isPending}
          onStart={onStart}
          onKeep={onKeep}
          onKeepRecipe={onKeepRecipe}
        />
      }
    >
      <div className={styles.told} aria-live="polite">
        {isKept ? t('draft.editor.kept') : t('draft.editor.notKept')}
        {keepRecipe.data &&
          ` ${t('draft.editor.recipeKept', { version: keepRecipe.data.version })}`}
      </div>
      <FailureNote error={keep.error ?? keepRecipe.error ?? query.error} />
      <div className={styles.way}>
        <Segments
          label={t('draft.editor.way')}
          value={state.way}
          onChange={turnWay}
          choices={[
            { value: 'want', label: t('draft.begin.want') },
            { value: 'have', label: t('draft.begin.have') },
          ]}
        />
        {wants && (
          <WishesForm wishes={wishes} onChange={change} acidNow={outcome?.finished?.acidGPerL} />
        )}
      </div>
      {outcome && (
        <WarningList outcome={outcome} unmet={wants ? (solved.data?.unmet ?? none) : none} />
      )}
      {outcome && (
        <Section title={t('draft.editor.chain')} term="steeping">
          <Chain outcome={outcome} bottleSizeMl={spec.bottleSizeMl} colour={colour} />
        </Section>
      )}
      <Section title={t('draft.editor.numbers')}>
        <div className={styles.names}>
          <TextInput
            label={t('draft.editor.name')}
            value={state.name}
            onChange={(name) => change({ name })}
            isRequired
            problem={isNameMissing ? t('draft.editor.nameMissing') : undefined}
          />
          <TextInput
            label={t('draft.editor.note')}
            value={state.note}
            onChange={(note) => change({ note })}
            maxLength={4000}
          />
        </div>
        <NumbersForm way={state.way} pins={pins} spec={shown} outcome={told} onChange={change} />
      </Section>
      {told && (
        <Section title={t('draft.editor.shopping')}>
          <ShoppingTable outcome={told} />
        </Section>
      )}
      {outcome && isStarting && (
        <StartDialog
          isOpen
          onClose={() => setStarting(false)}
          name={state.name}
          colour={colour}
          spec={spec}
          outcome={outcome}
        />
      )}
    </Page>
  )
}

/** What it comes to, in round numbers, as what is wanted. */
function wishesOf({ finished, bottles }: DraftOutcome, before: DraftWishes): DraftWishes {
  if (!finished || bottles === 0) return before
  return {
    bottles,
    strengthPctVol: Math.round(finished.strengthPctVol * 10) / 10,
    sugarGPerL: Math.round(finished.sugarGPerL),
  }
}
