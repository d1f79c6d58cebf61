/** Something bought for the pantry. */
import { useWords } from '../../../app/words/use-words.ts'
import { Segments } from '../../fields/segments.tsx'
import type { BuyDraft } from '../drafts/purchase.ts'
import type { DraftFormProps } from './form-basics.ts'
import { PurchaseFields } from './purchase-fields.tsx'
import { WhenAndNote } from './when-and-note.tsx'

export function BuyForm({ draft, onChange, problems }: DraftFormProps<BuyDraft>) {
  const t = useWords()
  const { purchase } = draft
  return (
    <>
      <Segments
        label={t('batch.buy.goods')}
        value={purchase.goodsKind}
        onChange={(goodsKind) =>
          onChange({ ...draft, purchase: { ...purchase, goodsKind, amount: undefined } })
        }
        choices={(['fruit', 'spirit', 'sweetener', 'acid'] as const).map((value) => ({
          value,
          label: t(`batch.buy.kinds.${value}`),
        }))}
      />
      <PurchaseFields
        purchase={purchase}
        onChange={(changed) => onChange({ ...draft, purchase: changed })}
        problems={problems}
      />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
