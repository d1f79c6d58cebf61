/** First and last month, the best ones, and how far the Mediterranean is ahead. */
import { CheckboxGroup, Label } from 'react-aria-components'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { classes } from '../../parts/classes.ts'
import { Check } from '../../parts/fields/check.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { Section } from '../../parts/page/page.tsx'
import { NumberField } from '../../parts/quantity/number-field.tsx'
import type { DraftFieldsProps } from './composition-fields.tsx'
import styles from './fruit-form.module.css'
import { allMonths, monthName } from './season-months.ts'

export function SeasonFields({ draft, onChange }: Omit<DraftFieldsProps, 'showsProblem'>) {
  const t = useWords()
  const { locale } = useSettings()
  const months = allMonths.map((month) => ({
    value: String(month),
    label: monthName(month, locale, 'long'),
  }))
  return (
    <Section title={t('fruits.form.season')}>
      <Check isSelected={draft.isSeasonal} onChange={(isSeasonal) => onChange({ isSeasonal })}>
        {t('fruits.form.isSeasonal')}
      </Check>
      {draft.isSeasonal && (
        <>
          <div className={styles.row}>
            <ChoiceField
              label={t('fruits.form.startMonth')}
              value={String(draft.startMonth)}
              onChange={(month) => onChange({ startMonth: Number(month) })}
              choices={months}
            />
            <ChoiceField
              label={t('fruits.form.endMonth')}
              value={String(draft.endMonth)}
              onChange={(month) => onChange({ endMonth: Number(month) })}
              choices={months}
            />
            <NumberField
              label={t('fruits.form.shift')}
              unit={t('fruits.unit.weeks')}
              value={draft.shiftWeeks}
              onChange={(shiftWeeks) => onChange({ shiftWeeks })}
              problemOf={(weeks) =>
                Math.abs(weeks) > 12 ? t('fruits.form.outside', { min: -12, max: 12 }) : undefined
              }
              isRequired={false}
            />
          </div>
          <CheckboxGroup
            className={classes(styles.peak)}
            value={draft.peakMonths.map(String)}
            onChange={(chosen) =>
              onChange({ peakMonths: allMonths.filter((month) => chosen.includes(String(month))) })
            }
          >
            <Label className={classes(styles.legend)}>{t('fruits.form.peak')}</Label>
            <div className={styles.months}>
              {months.map(({ value, label }) => (
                <Check key={value} value={value}>
                  {label}
                </Check>
              ))}
            </div>
          </CheckboxGroup>
        </>
      )}
    </Section>
  )
}
