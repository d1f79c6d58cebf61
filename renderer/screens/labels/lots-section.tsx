/** Which bottles get labels, and how many. */
import type { Answer } from '../../../shared/channels.ts'
import type { UsualLabel } from '../../../shared/schemas/labels.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { Section } from '../../parts/page/page.tsx'
import { NumberField } from '../../parts/quantity/number-field.tsx'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import { copiesOf, mostCopies, type LabelChoices } from './label-job.ts'
import styles from './labels.module.css'

export interface LotsSectionProps {
  bottles: Answer<'bottles.list'>
  usual: readonly UsualLabel[]
  choices: LabelChoices
  onChange: (choices: LabelChoices) => void
}

export function LotsSection({ bottles, usual, choices, onChange }: LotsSectionProps) {
  const t = useWords()
  const quantities = useQuantities()
  const times = useTimes()
  const chosen = new Set(choices.lots.map(({ bottleLotId }) => bottleLotId))
  const others = bottles
    .filter(({ id, count }) => count > 0 && !chosen.has(id))
    .toSorted((a, b) => b.bottledAt.localeCompare(a.bottledAt))
  const nameOf = (lot: Answer<'bottles.list'>[number]) =>
    t('labels.lots.lot', {
      name: lot.name,
      size: quantities.size(lot.bottleSizeMl, 'volume').text,
      bottled: times.day(lot.bottledAt),
    })
  const change = (bottleLotId: string, copies: number | undefined) =>
    onChange({
      ...choices,
      lots: choices.lots.map((lot) =>
        lot.bottleLotId === bottleLotId ? { bottleLotId, copies } : lot,
      ),
    })
  const remove = (bottleLotId: string) =>
    onChange({ ...choices, lots: choices.lots.filter((lot) => lot.bottleLotId !== bottleLotId) })
  return (
    <Section title={t('labels.lots.title')}>
      <ul className={styles.lots}>
        {choices.lots.map(({ bottleLotId }) => {
          const lot = bottles.find(({ id }) => id === bottleLotId)
          const label = usual.find((one) => one.bottleLotId === bottleLotId)
          if (!lot) return null
          return (
            <li key={bottleLotId} className={styles.lot}>
              <span className={styles.lotName}>{nameOf(lot)}</span>
              <NumberField
                label={t('labels.lots.copies', { name: lot.name })}
                unit={t('labels.lots.unit')}
                value={label && copiesOf(choices, label)}
                onChange={(copies) => change(bottleLotId, copies)}
                digits={4}
                problemOf={(copies) =>
                  Number.isInteger(copies) && copies >= 1 && copies <= mostCopies
                    ? undefined
                    : t('labels.lots.notWhole')
                }
              />
              <Button
                kind="quiet"
                aria-label={t('labels.lots.removeNamed', { name: lot.name })}
                onPress={() => remove(bottleLotId)}
              >
                {t('labels.lots.remove')}
              </Button>
            </li>
          )
        })}
      </ul>
      {others.length > 0 && (
        <ChoiceField
          label={t('labels.lots.add')}
          value=""
          placeholder={t('labels.lots.addChoice')}
          isRequired={chosen.size === 0}
          choices={others.map((lot) => ({ value: lot.id, label: nameOf(lot) }))}
          onChange={(bottleLotId) =>
            onChange({ ...choices, lots: [...choices.lots, { bottleLotId }] })
          }
        />
      )}
    </Section>
  )
}
