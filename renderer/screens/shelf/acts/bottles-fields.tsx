/** How many bottles, from which place, and where to. */
import { useWords } from '../../../app/words/use-words.ts'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { useShelfName, useShelves } from '../../../parts/names/use-names.ts'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import type { Act } from './act.ts'
import { thereFor } from './act-draft.ts'
import type { ActFieldsProps } from './act-fields-props.ts'

type LotAct = Extract<Act, { lot: unknown }>

/** Ids hold no spaces: these can be no shelf's. */
const anywhere = 'any where'
const noPlace = 'no place'

export function BottlesFields(props: ActFieldsProps<LotAct>) {
  const { act, draft, onChange, problems, showsMissing } = props
  const t = useWords()
  const { lot, kind } = act
  const there = thereFor(lot, draft.fromShelfId)
  const left = draft.count === undefined ? undefined : there - draft.count
  const hasCount = kind !== 'openBottle'
  return (
    <>
      {hasCount && (
        <QuantityField
          label={t('shelf.form.count')}
          dimension="count"
          value={draft.count}
          onChange={(count) => onChange({ ...draft, count })}
          isRequired
          showsProblem={showsMissing}
          problem={problems.count}
          description={
            left === undefined || left < 0 ? undefined : t('shelf.form.countOf', { there, left })
          }
          autoFocus
        />
      )}
      <FromField {...props} />
      {kind === 'shelve' && <ToField {...props} />}
    </>
  )
}

/** Only where there is something to choose; to carry bottles the place must be told. */
function FromField({ act: { kind, lot }, draft, onChange }: ActFieldsProps<LotAct>) {
  const t = useWords()
  const shelfName = useShelfName()
  if (lot.places.length < 2) return null
  const places = lot.places.map(({ shelfId, count }) => ({
    value: shelfId ?? noPlace,
    label: t('shelf.form.placeOption', { place: shelfName(shelfId), count }),
  }))
  const isCarried = kind === 'shelve'
  // Left out, bottles without a place go first: that cannot be asked for by itself.
  const choices = isCarried
    ? places
    : [
        { value: anywhere, label: t('shelf.form.anywhere') },
        ...places.filter(({ value }) => value !== noPlace),
      ]
  const { fromShelfId } = draft
  const value = fromShelfId === undefined ? anywhere : (fromShelfId ?? noPlace)
  return (
    <ChoiceField
      label={t('shelf.form.place')}
      value={value}
      onChange={(chosen) => onChange({ ...draft, fromShelfId: shelfIdOf(chosen) })}
      choices={choices}
    />
  )
}

function ToField({ draft, onChange, problems }: ActFieldsProps<LotAct>) {
  const t = useWords()
  const shelves = [...useShelves().values()]
  const { fromShelfId, toShelfId } = draft
  const choices = [
    ...shelves
      .filter(({ id, isRetired }) => !isRetired && id !== fromShelfId)
      .map(({ id, name }) => ({ value: id, label: name })),
    ...(fromShelfId === null ? [] : [{ value: noPlace, label: t('parts.place.noShelf') }]),
  ]
  return (
    <ChoiceField
      label={t('shelf.form.to')}
      value={toShelfId === undefined ? '' : (toShelfId ?? noPlace)}
      onChange={(chosen) => onChange({ ...draft, toShelfId: shelfIdOf(chosen) })}
      choices={choices}
      placeholder={t('shelf.form.choose')}
      problem={problems.to}
      description={choices.length === 0 ? t('shelf.form.noOtherPlace') : undefined}
    />
  )
}

function shelfIdOf(value: string): string | null | undefined {
  if (value === anywhere) return undefined
  return value === noPlace ? null : value
}
