/** How much of an opened bottle, drawn as it stands and as it will stand. */
import { useWords } from '../../../app/words/use-words.ts'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { Act } from './act.ts'
import type { ActFieldsProps } from './act-fields-props.ts'
import { OpenedVessel } from './opened-vessel.tsx'
import styles from './acts.module.css'

type OpenedAct = Extract<Act, { opened: unknown }>

export function OpenedFields(props: ActFieldsProps<OpenedAct>) {
  const { act, draft, onChange, problems, showsMissing } = props
  const t = useWords()
  const { text } = useQuantities()
  const { opened } = act
  const left = opened.liquid?.volumeMl ?? 0
  const leftWords = text(left, 'volume')
  return (
    <>
      <div className={styles.about}>
        <OpenedVessel opened={opened} />
        <p className={styles.aboutWords}>
          {t('shelf.lot.levelLeft', {
            left: leftWords,
            size: text(opened.bottleSizeMl, 'volume'),
          })}
        </p>
      </div>
      {act.kind === 'topUp' && <FromOpened act={act} draft={draft} onChange={onChange} />}
      {act.kind !== 'discardOpened' && (
        <QuantityField
          label={t(act.kind === 'correctOpened' ? 'shelf.form.levelFound' : 'shelf.form.volume')}
          dimension="volume"
          value={draft.volumeMl}
          onChange={(volumeMl) => onChange({ ...draft, volumeMl })}
          {...(act.kind === 'correctOpened' && {
            range: { min: 0, max: opened.bottleSizeMl * 1.1 },
            isRequired: true,
          })}
          showsProblem={showsMissing}
          problem={problems.volume}
          description={
            act.kind === 'pourGlass'
              ? t('shelf.form.volumeLeft', { left: leftWords })
              : act.kind === 'topUp'
                ? t('shelf.form.topUpHint')
                : undefined
          }
          autoFocus
        />
      )}
    </>
  )
}

function FromOpened({
  act,
  draft,
  onChange,
}: Pick<ActFieldsProps<OpenedAct>, 'act' | 'draft' | 'onChange'>) {
  const t = useWords()
  const { text } = useQuantities()
  const times = useTimes()
  if (act.others.length === 0) return <p>{t('shelf.form.noOther')}</p>
  return (
    <ChoiceField
      label={t('shelf.form.from')}
      value={draft.fromOpenedId ?? ''}
      onChange={(fromOpenedId) => onChange({ ...draft, fromOpenedId })}
      choices={act.others.map(({ id, name, openedAt, liquid }) => ({
        value: id,
        label: t('shelf.form.openedOption', {
          name,
          day: times.day(openedAt),
          left: text(liquid?.volumeMl ?? 0, 'volume'),
        }),
      }))}
    />
  )
}
