/** Which vessel to pour into: empty ones and those that take part; one that would run over is marked. */
import type { Fill } from '../../../../shared/schemas/marrying.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { useJars } from '../../../parts/names/use-names.ts'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { Entries } from '../entries.ts'
import styles from './result.module.css'

export interface TargetChoiceProps {
  parts: Entries['parts']
  toJarId: string | undefined
  onChange: (jarId: string) => void
}

export function TargetChoice({ parts, toJarId, onChange }: TargetChoiceProps) {
  const t = useWords()
  const { size, text } = useQuantities()
  const jars = [...useJars().values()]
    .filter(({ jar, contents }) => !jar.isRetired && (!contents || parts[`jar:${jar.id}`]))
    .sort((a, b) => a.jar.capacityMl - b.jar.capacityMl)
  return (
    <ChoiceField
      label={t('marry.target.label')}
      value={toJarId ?? ''}
      onChange={onChange}
      placeholder={t('marry.target.choose')}
      isRequired={false}
      choices={jars.map(({ jar, contents }) => {
        const told = { jar: jar.name, size: size(jar.capacityMl, 'volume').text }
        return {
          value: jar.id,
          label: contents
            ? t('marry.target.holds', { ...told, volume: text(contents.fillMl, 'volume') })
            : t('marry.target.empty', told),
        }
      })}
    />
  )
}

/** Said where the vessel is too small, or filled above its safe line. */
export function FillNote({ fill }: { fill: Fill | undefined }) {
  const t = useWords()
  const { size, text } = useQuantities()
  const jar = useJars().get(fill?.jarId ?? '')?.jar.name
  const isOver = overflows(fill)
  return (
    <p className={isOver ? styles.over : styles.quiet} aria-live="polite">
      {fill &&
        jar !== undefined &&
        fill.fillMl > fill.safeMl &&
        (isOver
          ? t('marry.target.overBrim', {
              jar,
              size: size(fill.capacityMl, 'volume').text,
              over: text(fill.fillMl - fill.capacityMl, 'volume'),
            })
          : t('marry.target.overSafe', { jar, over: text(fill.fillMl - fill.safeMl, 'volume') }))}
    </p>
  )
}

/** A brim is known no finer than this. */
const hairMl = 0.5

export const overflows = (fill: Fill | undefined): boolean =>
  fill !== undefined && fill.fillMl > fill.capacityMl + hairMl
