/** One thing that can go in: its drawing, what is there, and its limits once it is chosen. */
import { memo, useId } from 'react'
import { Button as AriaButton, Disclosure, DisclosurePanel } from 'react-aria-components'
import { useWords } from '../../../app/words/use-words.ts'
import type { AmountUnit, PartLimits } from '../../../../shared/schemas/marrying.ts'
import { classes } from '../../../parts/classes.ts'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import type { Dimension } from '../../../parts/quantity/units.ts'
import type { PlaceShown } from '../places.ts'
import { useAmounts } from '../use-amounts.ts'
import { PlaceVessel } from './place-vessel.tsx'
import styles from './part-list.module.css'

export interface PartRowProps {
  shown: PlaceShown
  /** Undefined while it is not chosen. */
  limits: PartLimits | undefined
  onChange: (place: string, limits: PartLimits | undefined) => void
  /** In the part's own unit. */
  taken: number
  mmPerPixel: number
}

const dimensions = {
  ml: 'volume',
  g: 'mass',
  bottles: 'count',
} as const satisfies Record<AmountUnit, Dimension>

/** Drawn anew only when something of its own changes: a cellar has forty of them. */
export const PartRow = memo(function PartRow(props: PartRowProps) {
  const { shown, limits, onChange, taken, mmPerPixel } = props
  const t = useWords()
  const id = useId()
  const { amount } = useAmounts()
  const { drawn, name, batchName, there, unit, liquid } = shown
  return (
    <li className={classes(styles.row, limits && styles.chosen)}>
      <input
        id={id}
        type="checkbox"
        className={styles.tick}
        checked={limits !== undefined}
        onChange={({ target }) => onChange(shown.place, target.checked ? {} : undefined)}
      />
      <label htmlFor={id} className={styles.label}>
        <span className={styles.vessel}>
          {drawn && <PlaceVessel drawn={drawn} mmPerPixel={mmPerPixel} />}
        </span>
        <span className={styles.words}>
          <span className={styles.name}>
            {name}
            {batchName !== undefined && (
              <span className={styles.batch}>
                {' '}
                {t('marry.parts.ofBatch', { batch: batchName })}
              </span>
            )}
          </span>
          <span className={styles.there}>
            {there !== undefined && t('marry.parts.there', { amount: amount(there, unit) })}
            {liquid && (
              <>
                <Strength pctVol={liquid.strengthPctVol} />
                <Sugar gPerL={liquid.sugarGPerL} />
              </>
            )}
          </span>
        </span>
      </label>
      {limits && (
        <span className={styles.taken}>
          {t('marry.parts.takes', { amount: amount(taken, unit) })}
        </span>
      )}
      {limits && <Limits shown={shown} limits={limits} onChange={onChange} />}
    </li>
  )
})

type LimitsProps = Pick<PartRowProps, 'shown' | 'onChange'> & { limits: PartLimits }

function Limits({ shown: { place, name, unit, there }, limits, onChange }: LimitsProps) {
  const t = useWords()
  const dimension = dimensions[unit]
  const fields =
    there === undefined ? (['least', 'most'] as const) : (['least', 'most', 'keepBack'] as const)
  return (
    <Disclosure className={classes(styles.limits)}>
      <AriaButton slot="trigger" className={classes(styles.limitsButton)}>
        {t('marry.parts.limits', { name })}
      </AriaButton>
      <DisclosurePanel className={classes(styles.fields)}>
        {fields.map((field) => (
          <QuantityField
            key={field}
            label={t(`marry.parts.${field}`)}
            dimension={dimension}
            value={limits[field]}
            onChange={(value) => onChange(place, { ...limits, [field]: value })}
          />
        ))}
        {there !== undefined && (
          <AriaButton
            className={classes(styles.limitsButton)}
            onPress={() => onChange(place, { ...limits, least: there, keepBack: undefined })}
          >
            {t('marry.parts.all')}
          </AriaButton>
        )}
      </DisclosurePanel>
    </Disclosure>
  )
}
