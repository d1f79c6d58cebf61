/** One wish, changed in place. While it lacks something the book keeps it as it was. */
import { useState } from 'react'
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { TextInput } from '../../../parts/fields/text-input.tsx'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import { WishPriority, type SeasonWish } from '../../../../shared/schemas/season.ts'
import { readWish, type WishDraft } from './wish-draft.ts'
import styles from './wishes.module.css'

export interface WishFormProps {
  first: WishDraft
  kind: string
  onChange: (wish: SeasonWish) => void
  onRemove: () => void
  autoFocus?: boolean
}

const amounts = { min: 0, max: 10_000_000 }

export function WishForm({ first, kind, onChange, onRemove, autoFocus = false }: WishFormProps) {
  const t = useWords()
  const { units } = useSettings()
  const [draft, setDraft] = useState(first)
  const reading = readWish(draft)
  const volumeUnit = units === 'us' ? 'quart' : 'L'

  function set(changed: Partial<WishDraft>) {
    const next = { ...draft, ...changed }
    setDraft(next)
    const read = readWish(next)
    if (read.ok) onChange(read.wish)
  }

  return (
    <fieldset className={styles.wish}>
      <legend className="visually-hidden">{t('season.wishes.wishFor', { kind })}</legend>
      <Segments
        label={t('season.wishes.purpose')}
        value={draft.purpose}
        onChange={(purpose) => set({ purpose })}
        choices={(['drink', 'gift'] as const).map((value) => ({
          value,
          label: t(`season.purpose.${value}`),
        }))}
      />
      <QuantityField
        label={t('season.wishes.atLeast')}
        dimension="volume"
        unit={volumeUnit}
        range={amounts}
        value={draft.atLeastMl}
        onChange={(atLeastMl) => set({ atLeastMl })}
        autoFocus={autoFocus}
      />
      <QuantityField
        label={t('season.wishes.atMost')}
        dimension="volume"
        unit={volumeUnit}
        range={amounts}
        value={draft.atMostMl}
        onChange={(atMostMl) => set({ atMostMl })}
        description={draft.atMostMl === 0 ? t('season.wishes.noneThisYear') : undefined}
      />
      <Segments
        label={t('season.wishes.priority')}
        value={draft.priority}
        onChange={(priority) => set({ priority })}
        choices={WishPriority.options.map((value) => ({
          value,
          label: t(`season.priority.${value}`),
        }))}
      />
      <QuantityField
        label={t('season.wishes.bottleSize')}
        dimension="volume"
        range={{ min: 10, max: 20_000 }}
        value={draft.bottleSizeMl}
        onChange={(bottleSizeMl) => set({ bottleSizeMl })}
      />
      <TextInput
        label={t('season.wishes.note')}
        value={draft.note}
        onChange={(note) => set({ note })}
        maxLength={4000}
      />
      <Button kind="quiet" onPress={onRemove} aria-label={t('season.wishes.removeFor', { kind })}>
        {t('season.wishes.remove')}
      </Button>
      <p className={styles.problem} aria-live="polite">
        {!reading.ok && t(`season.wishes.${reading.problem}`)}
      </p>
    </fieldset>
  )
}
