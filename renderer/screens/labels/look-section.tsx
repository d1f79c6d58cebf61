/** How labels look and what they say. */
import {
  labelFields,
  LabelDesign,
  LabelPart,
  StrengthPrefix,
  type LabelStyle,
} from '../../../shared/schemas/labels.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { Segments } from '../../parts/fields/segments.tsx'
import { Toggles } from '../../parts/fields/toggles.tsx'
import { Section } from '../../parts/page/page.tsx'
import { neckFields } from './label-job.ts'
import styles from './labels.module.css'

export interface LookSectionProps {
  style: LabelStyle
  onChange: (style: LabelStyle) => void
}

const drawnParts = ['code', 'emblem', 'cutMarks'] as const

export function LookSection({ style, onChange }: LookSectionProps) {
  const t = useWords()
  const { units } = useSettings()
  const isNeck = style.part === 'neck'
  const drawn = drawnParts.filter(
    (part) => ({ code: style.hasCode, emblem: style.hasEmblem, cutMarks: style.hasCutMarks })[part],
  )
  return (
    <Section title={t('labels.look.title')}>
      <div className={styles.row}>
        <Segments
          label={t('labels.look.part')}
          value={style.part}
          onChange={(part) => onChange({ ...style, part })}
          choices={LabelPart.options.map((value) => ({ value, label: t(`labels.part.${value}`) }))}
        />
        <Segments
          label={t('labels.look.design')}
          value={style.design}
          onChange={(design) => onChange({ ...style, design })}
          choices={LabelDesign.options.map((value) => ({
            value,
            label: t(`labels.design.${value}`),
          }))}
        />
      </div>
      <Toggles
        label={t('labels.look.shown')}
        value={style.shown}
        onChange={(shown) => onChange({ ...style, shown })}
        choices={labelFields.map((value) => ({
          value,
          label: t(`labels.field.${value}`),
          isDisabled: isNeck && !neckFields.includes(value),
        }))}
      />
      {isNeck && <p className={styles.quiet}>{t('labels.look.neckSays')}</p>}
      <Toggles
        label={t('labels.look.parts')}
        value={drawn}
        onChange={(parts) =>
          onChange({
            ...style,
            hasCode: parts.includes('code'),
            hasEmblem: parts.includes('emblem'),
            hasCutMarks: parts.includes('cutMarks'),
          })
        }
        choices={drawnParts.map((value) => ({
          value,
          label: t(`labels.look.${value}`),
          isDisabled: isNeck && value === 'code',
        }))}
      />
      {units === 'metric' && (
        <Segments
          label={t('labels.look.prefix')}
          value={style.strengthPrefix}
          onChange={(strengthPrefix) => onChange({ ...style, strengthPrefix })}
          choices={StrengthPrefix.options.map((value) => ({
            value,
            label: t(`labels.prefix.${value}`),
          }))}
        />
      )}
    </Section>
  )
}
