/** Nine axes from 0 to 10, the verdict on its age, and the glass: the same in dialog and log. */
import { useWords } from '../../app/words/use-words.ts'
import { TasteAxis, Verdict } from '../../../shared/schemas/moves.ts'
import { Segments } from '../fields/segments.tsx'
import { TextInput } from '../fields/text-input.tsx'
import { ScoreField } from './score-field.tsx'
import type { Tasting } from './tasting.ts'
import styles from './taste-fields.module.css'

export interface TasteFieldsProps {
  tasting: Tasting
  onChange: (tasting: Tasting) => void
}

export function TasteFields({ tasting, onChange }: TasteFieldsProps) {
  const t = useWords()
  const { scores } = tasting
  function score(axis: TasteAxis, value: number | undefined) {
    const { [axis]: _before, ...others } = scores
    onChange({ ...tasting, scores: value === undefined ? others : { ...others, [axis]: value } })
  }
  return (
    <>
      <fieldset className={styles.scores}>
        <legend className={styles.legend}>
          {t('shelf.taste.scores')}{' '}
          <span className={styles.hint}>{t('shelf.taste.scoresHint')}</span>
        </legend>
        {TasteAxis.options.map((axis, index) => (
          <ScoreField
            key={axis}
            label={t(`shelf.axis.${axis}`)}
            ends={t(`shelf.axisEnds.${axis}`)}
            value={scores[axis]}
            onChange={(value) => score(axis, value)}
            autoFocus={index === 0}
          />
        ))}
      </fieldset>
      <Segments
        label={t('shelf.taste.verdict')}
        value={tasting.verdict ?? 'none'}
        onChange={(verdict) =>
          onChange({ ...tasting, verdict: verdict === 'none' ? undefined : verdict })
        }
        choices={(['none', ...Verdict.options] as const).map((value) => ({
          value,
          label: t(`shelf.taste.verdicts.${value}`),
        }))}
      />
      <TextInput
        label={t('shelf.taste.glass')}
        description={t('shelf.taste.glassHint')}
        value={tasting.glass}
        onChange={(glass) => onChange({ ...tasting, glass })}
      />
    </>
  )
}
