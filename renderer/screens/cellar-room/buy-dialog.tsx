/** Writes down goods as they are bought. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { Button } from '../../parts/button/button.tsx'
import { Form } from '../../parts/dialog/form.tsx'
import { DialogActions, SheetDialog } from '../../parts/dialog/sheet-dialog.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { Segments } from '../../parts/fields/segments.tsx'
import { TextInput } from '../../parts/fields/text-input.tsx'
import { QuantityField } from '../../parts/quantity/quantity-field.tsx'
import { DateTimeField } from '../../parts/time/date-time-field.tsx'
import { newBuying, purchaseOf, type Buying } from './buying.ts'
import { GoodsFields } from './goods-fields.tsx'

export function BuyDialog({ isOpen, onClose }: { isOpen: boolean; onClose: () => void }) {
  const t = useWords()
  return (
    <SheetDialog title={t('cellarRoom.buyForm.title')} isOpen={isOpen} onClose={onClose}>
      <BuyForm onClose={onClose} />
    </SheetDialog>
  )
}

function BuyForm({ onClose }: { onClose: () => void }) {
  const t = useWords()
  const record = useWrite('moves.record')
  // One key and one lot for the form's life: sending twice buys once.
  const [ids] = useState(() => ({ key: newId(), lotId: newId() }))
  const [buying, setBuying] = useState(() => newBuying(new Date()))
  const [wasTried, setTried] = useState(false)
  const change = (changed: Partial<Buying>) => setBuying({ ...buying, ...changed })

  function submit() {
    setTried(true)
    const purchase = purchaseOf(buying, ids.lotId)
    if (!purchase || record.isPending) return
    record.mutate({ key: ids.key, moves: [purchase] }, { onSuccess: onClose })
  }

  return (
    <Form onSubmit={submit}>
      <Segments
        label={t('cellarRoom.buyForm.kind')}
        value={buying.kind}
        onChange={(kind) => change({ kind })}
        choices={(['fruit', 'spirit', 'sweetener', 'acid'] as const).map((value) => ({
          value,
          label: t(`cellarRoom.buyForm.kinds.${value}`),
        }))}
      />
      <GoodsFields buying={buying} onChange={change} showsProblem={wasTried} />
      <QuantityField
        label={t('cellarRoom.buyForm.price')}
        dimension="money"
        value={buying.priceMinor}
        onChange={(priceMinor) => change({ priceMinor })}
      />
      <TextInput
        label={t('cellarRoom.buyForm.name')}
        value={buying.name}
        onChange={(name) => change({ name })}
      />
      <DateTimeField
        label={t('cellarRoom.buyForm.at')}
        value={buying.at}
        onChange={(at) => change({ at })}
      />
      <FailureNote error={record.error} />
      <DialogActions>
        <Button kind="primary" type="submit" isBusy={record.isPending}>
          {t('cellarRoom.buyForm.go')}
        </Button>
        <Button onPress={onClose}>{t('parts.cancel')}</Button>
      </DialogActions>
    </Form>
  )
}
