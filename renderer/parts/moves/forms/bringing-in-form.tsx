/** What bottles brought in from elsewhere are: how many, how large, how strong, how sweet. */
import { useWords } from '../../../app/words/use-words.ts'
import { TextInput } from '../../fields/text-input.tsx'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import type { BringingInDraft } from '../drafts/bringing-in.ts'
import type { DraftFormProps } from './form-basics.ts'
import { ShelfField } from './shelf-field.tsx'
import { WhenAndNote } from './when-and-note.tsx'

export function BringingInForm({ draft, onChange, problems }: DraftFormProps<BringingInDraft>) {
  const t = useWords()
  const change = (part: Partial<BringingInDraft>) => onChange({ ...draft, ...part })
  const field = { isRequired: true, showsProblem: problems.length > 0 } as const
  return (
    <>
      <QuantityField
        label={t('batch.form.bottleSize')}
        dimension="volume"
        value={draft.bottleSizeMl}
        onChange={(bottleSizeMl) => change({ bottleSizeMl })}
        {...field}
      />
      <QuantityField
        label={t('batch.form.bottleCount')}
        dimension="count"
        value={draft.count}
        onChange={(count) => change({ count })}
        {...field}
        autoFocus
      />
      <QuantityField
        label={t('parts.quantity.strength')}
        dimension="strength"
        value={draft.strengthPctVol}
        onChange={(strengthPctVol) => change({ strengthPctVol })}
        {...field}
      />
      <QuantityField
        label={t('parts.quantity.sugar')}
        dimension="sugar"
        value={draft.sugarGPerL}
        onChange={(sugarGPerL) => change({ sugarGPerL })}
        {...field}
      />
      <TextInput
        label={t('batch.form.bottleName')}
        value={draft.name}
        onChange={(name) => change({ name })}
      />
      <ShelfField value={draft.shelfId} onChange={(shelfId) => change({ shelfId })} />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
