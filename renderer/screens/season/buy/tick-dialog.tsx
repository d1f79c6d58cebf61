/** What was really bought, and what it cost: as planned until the maker says otherwise. */
import { useState } from 'react'
import { newId } from '../../../app/new-id.ts'
import { useWrite } from '../../../app/queries.ts'
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { Form } from '../../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import { DateTimeField } from '../../../parts/time/date-time-field.tsx'
import type { PurchaseLine } from '../../../../shared/schemas/season.ts'
import { fieldOf, roundedForShop } from './bought-amount.ts'
import { useGoodsWords, type Amount } from './use-goods-words.ts'
import styles from './buy.module.css'

export interface TickDialogProps {
  /** Undefined while none is being ticked off. */
  line: PurchaseLine | undefined
  onClose: () => void
  onBought: (line: PurchaseLine, amount: Amount) => void
}

export function TickDialog({ line, onClose, onBought }: TickDialogProps) {
  const t = useWords()
  const { goods } = useGoodsWords()
  return (
    <SheetDialog
      title={line ? t('season.buy.dialog', { goods: goods(line) }) : ''}
      isOpen={line !== undefined}
      onClose={onClose}
    >
      {line && <TickForm line={line} onClose={onClose} onBought={onBought} />}
    </SheetDialog>
  )
}

function TickForm({ line, onClose, onBought }: TickDialogProps & { line: PurchaseLine }) {
  const t = useWords()
  const { units } = useSettings()
  const tick = useWrite('purchases.tick')
  const field = fieldOf(line)
  // One key for the form's life: pressing twice buys once.
  const [key] = useState(newId)
  const [amount, setAmount] = useState<number | undefined>(() =>
    roundedForShop(line[field.name] ?? 0, field, units),
  )
  const [priceMinor, setPrice] = useState(
    line.priceMinor === undefined ? undefined : Math.round(line.priceMinor),
  )
  const [at, setAt] = useState<string | undefined>(() => new Date().toISOString())
  const [wasTried, setTried] = useState(false)
  const becomesLot = field.name !== 'count'

  function submit() {
    setTried(true)
    if (amount === undefined || at === undefined || tick.isPending) return
    tick.mutate(
      {
        key,
        lineKey: line.key,
        isTicked: true,
        at,
        [field.name]: amount,
        ...(priceMinor !== undefined && { priceMinor }),
      },
      { onSuccess: () => onBought(line, { [field.name]: amount }) },
    )
  }

  return (
    <Form onSubmit={submit}>
      <QuantityField
        label={t(becomesLot ? 'season.buy.amount' : 'season.buy.count')}
        dimension={field.dimension}
        unit={field.unit[units]}
        value={amount}
        onChange={setAmount}
        isRequired
        showsProblem={wasTried}
        autoFocus
      />
      <QuantityField
        label={t('season.buy.paidFor')}
        dimension="money"
        value={priceMinor}
        range={{ min: 0, max: 1_000_000_000 }}
        onChange={setPrice}
      />
      <DateTimeField label={t('season.buy.when')} value={at} onChange={setAt} />
      <p className={styles.ticked}>
        {t(becomesLot ? 'season.buy.intoPantry' : 'season.buy.notIntoPantry')}
      </p>
      <FailureNote error={tick.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={tick.isPending}>
          {t('season.buy.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}
