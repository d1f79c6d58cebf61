/** Every number of a draft that its maker may turn, in the order in which a batch is made. */
import { memo, type ReactNode } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { FilterMedium, Turned } from '../../../shared/schemas/moves.ts'
import type { DraftOutcome, DraftPin, DraftSpec } from '../../../shared/schemas/drafts.ts'
import { Button } from '../../parts/button/button.tsx'
import { ChoiceField } from '../../parts/fields/choice-field.tsx'
import { Toggles } from '../../parts/fields/toggles.tsx'
import { NumberField } from '../../parts/quantity/number-field.tsx'
import { DateTimeField } from '../../parts/time/date-time-field.tsx'
import { AmountField, niceCeiling } from './amount-field.tsx'
import { setByHand, withPin, type Change, type Way } from './draft-state.ts'
import { FruitRows } from './fruit-rows.tsx'
import { PriceFields } from './price-fields.tsx'
import { SpiritRows } from './spirit-rows.tsx'
import { SteadyQuantityField } from '../../parts/quantity/steady-quantity-field.tsx'
import type { Turning } from './turning.ts'
import { useDraftWords } from './use-draft-words.ts'
import styles from './numbers-form.module.css'

export interface NumbersFormProps {
  way: Way
  pins: readonly DraftPin[]
  /** The numbers shown: the maker's own, or those a solve found for what is wanted. */
  spec: DraftSpec
  outcome: DraftOutcome | undefined
  onChange: Change
}

export const NumbersForm = memo(function NumbersForm(props: NumbersFormProps) {
  const { way, pins, spec, outcome, onChange } = props
  const t = useWords()
  const words = useDraftWords()
  const turning: Turning = {
    spec,
    turn: (pin, change) => onChange(setByHand({ way, pins }, pin, change, spec)),
    set: (change) => onChange({ spec: { ...spec, ...change } }),
    pin: (pin) =>
      way === 'want'
        ? {
            isHeld: pins.includes(pin),
            onHold: (isHeld) => onChange({ spec, pins: withPin(pins, pin, isHeld) }),
          }
        : undefined,
    usual: (window) => {
      const shown = outcome?.windows.find((one) => one.window === window)
      if (!shown) return undefined
      const [low, high] = [words.inWindow(window, shown.low), words.inWindow(window, shown.high)]
      if (window === 'steepingWeeks')
        return t('draft.form.usual', { low: shown.low, high: shown.high })
      const value = words.inWindow(window, shown.value)
      return window === 'fruitKgPerLSpirit'
        ? t('draft.form.ratio', { value, low, high })
        : t('draft.form.steepStrength', { value, low, high })
    },
  }
  return (
    <div className={styles.groups}>
      <Group title={t('draft.form.fruit')}>
        <FruitRows {...turning} />
      </Group>
      <Group title={t('draft.form.spirit')}>
        <SpiritRows {...turning} />
        <Keeping {...turning} />
      </Group>
      <Group title={t('draft.form.draws')}>
        <Draws {...turning} />
      </Group>
      <Group title={t('draft.form.finish')}>
        <Finish {...turning} />
      </Group>
      <Group title={t('draft.form.bottles')}>
        <SteadyQuantityField
          label={t('draft.form.bottleSize')}
          dimension="volume"
          value={spec.bottleSizeMl}
          range={{ min: 10, max: 20_000 }}
          onChange={(bottleSizeMl) => turning.set({ bottleSizeMl })}
        />
        <DateTimeField
          label={t('draft.form.startAt')}
          value={spec.startAt}
          onChange={(startAt) => startAt !== undefined && turning.set({ startAt })}
          isPastOnly={false}
        />
      </Group>
      <Group title={t('draft.form.prices')}>
        <PriceFields {...turning} />
      </Group>
    </div>
  )
})

const Group = ({ title, children }: { title: string; children: ReactNode }) => (
  <fieldset className={styles.group}>
    <legend className={styles.legend}>{title}</legend>
    {children}
  </fieldset>
)

function Keeping({ spec, set, usual }: Turning) {
  const t = useWords()
  return (
    <>
      <NumberField
        label={t('draft.form.steepWeeks')}
        unit={usual('steepingWeeks') ?? t('draft.form.weeks')}
        value={spec.steepWeeks}
        onChange={(steepWeeks) =>
          steepWeeks !== undefined && steepWeeks >= 0.1 && steepWeeks <= 260 && set({ steepWeeks })
        }
      />
      <SteadyQuantityField
        label={t('draft.form.temperature')}
        dimension="temperature"
        value={spec.temperatureC}
        range={{ min: 0, max: 40 }}
        onChange={(temperatureC) => set({ temperatureC })}
      />
      <ChoiceField
        label={t('draft.form.turned')}
        value={spec.turned}
        onChange={(turned) => set({ turned })}
        choices={Turned.options.map((value) => ({ value, label: t(`codes.turned.${value}`) }))}
      />
    </>
  )
}

function Draws({ spec, turn, set, pin }: Turning) {
  const t = useWords()
  const draws = spec.sugarDraws
  const changed = (at: number, change: Partial<DraftSpec['sugarDraws'][number]>) =>
    draws.map((draw, index) => (index === at ? { ...draw, ...change } : draw))
  const held = pin('drawSugar')
  return (
    <>
      {draws.map((draw, at) => (
        <div key={at} className={styles.row}>
          <AmountField
            label={t('draft.amount.drawSugar', { count: at + 1 })}
            dimension="mass"
            value={draw.sugarG}
            min={1}
            max={niceCeiling(draw.sugarG * 1.5)}
            onChange={(sugarG) => turn('drawSugar', { sugarDraws: changed(at, { sugarG }) })}
            {...(at === 0 && held && { pin: held })}
          />
          <NumberField
            label={t('draft.form.drawDays', { count: at + 1 })}
            unit={t('draft.form.days')}
            value={draw.days}
            onChange={(days) =>
              days !== undefined &&
              days >= 0.1 &&
              days <= 365 &&
              set({ sugarDraws: changed(at, { days }) })
            }
          />
        </div>
      ))}
      <div className={styles.buttons}>
        {draws.length < 4 && (
          <Button
            kind="quiet"
            onPress={() =>
              set({ sugarDraws: [...draws, { sugarG: draws.at(-1)?.sugarG ?? 200, days: 10 }] })
            }
          >
            {t('draft.form.addDraw')}
          </Button>
        )}
        {draws.length > 0 && (
          <Button kind="quiet" onPress={() => set({ sugarDraws: draws.slice(0, -1) })}>
            {t('draft.form.takeDraw')}
          </Button>
        )}
      </div>
      <Toggles
        label={t('draft.form.press')}
        value={spec.isPressed ? ['press'] : []}
        onChange={(value) => set({ isPressed: value.includes('press') })}
        choices={[{ value: 'press', label: t('draft.form.press') }]}
      />
    </>
  )
}

function Finish({ spec, turn, set, pin }: Turning) {
  const t = useWords()
  const spiritMl = spec.spirits.reduce((sum, { volumeMl }) => sum + volumeMl, 0)
  const reach = niceCeiling(spiritMl)
  const amount = (
    name: 'finishWater' | 'finishSugar' | 'finishSpirit',
    field: 'finishWaterMl' | 'finishSugarG' | 'finishSpiritMl',
  ) => {
    const held = pin(name)
    return (
      <AmountField
        label={t(`draft.amount.${name}`)}
        dimension={name === 'finishSugar' ? 'mass' : 'volume'}
        value={spec[field]}
        max={reach}
        onChange={(value) => turn(name, { [field]: value })}
        {...(held && { pin: held })}
      />
    )
  }
  return (
    <>
      {amount('finishWater', 'finishWaterMl')}
      {amount('finishSugar', 'finishSugarG')}
      {amount('finishSpirit', 'finishSpiritMl')}
      <NumberField
        label={t('draft.form.settle')}
        unit={t('draft.form.days')}
        value={spec.settleDays}
        onChange={(settleDays) =>
          settleDays !== undefined && settleDays >= 0 && settleDays <= 365 && set({ settleDays })
        }
      />
      <div>
        <p className={styles.quiet}>{t('draft.form.filters')}</p>
        <Toggles
          label={t('draft.form.filters')}
          value={spec.filters}
          onChange={(filters) => set({ filters })}
          choices={FilterMedium.options.map((value) => ({
            value,
            label: t(`codes.medium.${value}`),
          }))}
        />
      </div>
    </>
  )
}
