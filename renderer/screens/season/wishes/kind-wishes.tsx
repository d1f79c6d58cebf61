/** Kind by kind: what drinking asks for, in words, and under it the maker's own wishes. */
import { useState } from 'react'
import { newId } from '../../../app/new-id.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { useFruitColour } from '../../../parts/names/use-fruit-colour.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { useFruitName, useFruits } from '../../../parts/names/use-names.ts'
import type { SeasonPlan, SeasonWish } from '../../../../shared/schemas/season.ts'
import { useKindWords } from '../use-kind-words.ts'
import { draftOfWish, newWish, type WishDraft } from './wish-draft.ts'
import { WishForm } from './wish-form.tsx'
import styles from './wishes.module.css'

export interface KindWishesProps {
  wishes: readonly SeasonWish[]
  plan: SeasonPlan | undefined
  onChange: (wishes: SeasonWish[]) => void
}

export function KindWishes({ wishes, plan, onChange }: KindWishesProps) {
  const t = useWords()
  const fruits = useFruits()
  const fruitName = useFruitName()
  const kindName = useKindName()
  const colourOf = useFruitColour()
  const words = useKindWords()
  // Forms stay in their order and as written, whatever of them is kept so far.
  const [drafts, setDrafts] = useState<WishDraft[]>(() => wishes.map(draftOfWish))
  const [begunId, setBegunId] = useState<string>()
  const kinds = (plan?.kinds ?? []).toSorted((a, b) => b.wantedMl - a.wantedMl)
  const kindIds = [
    ...new Set([...kinds.map(({ kindId }) => kindId), ...drafts.map(({ kindId }) => kindId)]),
  ]
  const others = [...fruits.values()].filter(({ id }) => !kindIds.includes(id))

  function begin(kindId: string) {
    const draft = newWish(newId(), kindId)
    setDrafts([...drafts, draft])
    setBegunId(draft.id)
  }

  function keep(wish: SeasonWish) {
    const isKnown = wishes.some(({ id }) => id === wish.id)
    onChange(isKnown ? wishes.map((one) => (one.id === wish.id ? wish : one)) : [...wishes, wish])
  }

  function remove(id: string) {
    setDrafts(drafts.filter((draft) => draft.id !== id))
    if (wishes.some((wish) => wish.id === id)) onChange(wishes.filter((wish) => wish.id !== id))
  }

  return (
    <>
      {kinds.length === 0 && <p className={styles.quiet}>{t('season.wishes.noNeeds')}</p>}
      <ul className={styles.kinds}>
        {kindIds.map((kindId) => {
          const name = kindName(kindId)
          const kind = kinds.find((one) => one.kindId === kindId)
          const own = drafts.filter((draft) => draft.kindId === kindId)
          return (
            <li key={kindId} className={styles.kind}>
              <h3 className={styles.name} style={{ '--liquid': colourOf(kindId) }}>
                <span className={styles.swatch} aria-hidden />
                {name}
              </h3>
              {kind && <p className={styles.story}>{words.story(kind)}</p>}
              {own.length > 0 && (
                <div className={styles.wishes}>
                  {own.map((draft) => (
                    <WishForm
                      key={draft.id}
                      first={draft}
                      kind={name}
                      onChange={keep}
                      onRemove={() => remove(draft.id)}
                      autoFocus={draft.id === begunId}
                    />
                  ))}
                </div>
              )}
              <Button
                kind="quiet"
                onPress={() => begin(kindId)}
                aria-label={t('season.wishes.addFor', { kind: name })}
              >
                {t('season.wishes.add')}
              </Button>
            </li>
          )
        })}
      </ul>
      <ChoiceField
        label={t('season.wishes.another')}
        value=""
        isRequired={false}
        placeholder={t('season.wishes.choose')}
        onChange={begin}
        choices={others.map((fruit) => ({ value: fruit.id, label: fruitName(fruit) }))}
      />
    </>
  )
}
