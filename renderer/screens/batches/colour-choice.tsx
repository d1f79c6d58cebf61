/** The colour of a batch's liquid, shown as it will be drawn: in a jar. */
import { useId } from 'react'
import { Label, Radio, RadioGroup } from 'react-aria-components'
import { useWords } from '../../app/words/use-words.ts'
import { classes } from '../../parts/classes.ts'
import field from '../../parts/fields/field.module.css'
import { Vessel } from '../../parts/vessel/vessel.tsx'
import { batchColourNames, batchColours } from './batch-colours.ts'
import styles from './colour-choice.module.css'

export interface ColourChoiceProps {
  value: string
  onChange: (colour: string) => void
}

export function ColourChoice({ value, onChange }: ColourChoiceProps) {
  const t = useWords()
  const otherId = useId()
  return (
    <div className={styles.choice}>
      <RadioGroup value={value} onChange={onChange} orientation="horizontal">
        <Label className={classes(field['label'])}>{t('batches.form.colour')}</Label>
        <div className={styles.swatches}>
          {batchColourNames.map((name) => (
            <Radio
              key={name}
              value={batchColours[name]}
              aria-label={t(`batches.colour.${name}`)}
              className={classes(styles.swatch)}
            >
              <Vessel
                shape="jar"
                capacityMl={1000}
                heightPx={44}
                fillMl={850}
                liquidMl={850}
                colour={batchColours[name]}
                isDecorative
              />
            </Radio>
          ))}
        </div>
      </RadioGroup>
      <span className={styles.other}>
        <label htmlFor={otherId}>{t('batches.form.colourOther')}</label>
        <input
          id={otherId}
          type="color"
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      </span>
    </div>
  )
}
