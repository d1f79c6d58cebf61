/** Fruit, sugar or spirit into jars, out of the pantry or just bought. */
import { useWords } from '../../../app/words/use-words.ts'
import { Cut } from '../../../../shared/schemas/moves.ts'
import { Button } from '../../button/button.tsx'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import { useQuantities } from '../../quantity/use-quantities.ts'
import { evenShare, goodsFor, type AddingDraft } from '../drafts/adding.ts'
import { lotsOf } from '../drafts/log-context.ts'
import inset from '../inset.module.css'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { IntoJars } from './into-jars.tsx'
import { justBought, LotField } from './lot-field.tsx'
import { PurchaseFields } from './purchase-fields.tsx'
import { WhenAndNote } from './when-and-note.tsx'

export function AddingForm(props: DraftFormProps<AddingDraft>) {
  const { draft, onChange, context, problems, isAmending } = props
  const t = useWords()
  const { text } = useQuantities()
  const problemWords = useProblemWords(problems)
  const change = (part: Partial<AddingDraft>) => onChange({ ...draft, ...part })
  const goodsKind = goodsFor[draft.kind]
  const lots = lotsOf(context, goodsKind)
  const chosen = context.pantry.find(({ id }) => id === draft.lotId)
  const isSpirit = draft.kind === 'pourSpirit'
  return (
    <>
      <IntoJars {...props} jarIds={draft.jarIds} onChoose={(jarIds) => change({ jarIds })} />
      <LotField
        label={t(`batch.form.take.${goodsKind}`)}
        lots={chosen && !lots.includes(chosen) ? [chosen, ...lots] : lots}
        value={draft.isJustBought ? justBought : draft.lotId}
        onChange={(lotId) =>
          change({
            tissue: undefined,
            ...(lotId === justBought ? { isJustBought: true } : { isJustBought: false, lotId }),
          })
        }
        takesPurchase={!isAmending}
        problem={problemWords('lotId', 'chooseLot')}
      />
      {draft.isJustBought && (
        <div className={inset.inset}>
          <p className={inset.title}>{t('batch.buy.title')}</p>
          <PurchaseFields
            purchase={draft.purchase}
            onChange={(purchase) => change({ purchase })}
            problems={problems}
            isAmountOptional
            hasFocus={draft.jarIds.length > 0}
          />
        </div>
      )}
      <QuantityField
        label={t(draft.jarIds.length > 1 ? 'batch.form.amountEach' : 'batch.form.amount')}
        dimension={isSpirit ? 'volume' : 'mass'}
        value={draft.amount}
        onChange={(amount) => change({ amount })}
        isRequired
        showsProblem={problems.length > 0}
        autoFocus={draft.jarIds.length > 0 && !draft.isJustBought}
      />
      {!isAmending && (
        <AllOfIt draft={draft} context={context} onTake={(amount) => change({ amount })} />
      )}
      {draft.kind === 'charge' && (
        <ChoiceField
          label={t('batch.form.cut')}
          value={draft.cut}
          onChange={(cut) => change({ cut })}
          choices={Cut.options.map((value) => ({ value, label: t(`codes.cut.${value}`) }))}
        />
      )}
      <WhenAndNote
        draft={draft}
        onChange={onChange}
        problems={problems}
        isMoreFilled={[draft.refuseG, draft.pieceMm, draft.temperatureC].some(
          (value) => value !== undefined,
        )}
      >
        {draft.kind === 'charge' && (
          <>
            <QuantityField
              label={t('batch.form.refuse')}
              dimension="mass"
              value={draft.refuseG}
              onChange={(refuseG) => change({ refuseG })}
              description={t('batch.form.refuseHint')}
            />
            <QuantityField
              label={t('batch.form.pieceSize')}
              dimension="length"
              value={draft.pieceMm}
              onChange={(pieceMm) => change({ pieceMm })}
              description={t('batch.form.pieceSizeHint')}
            />
          </>
        )}
        {isSpirit && (
          <QuantityField
            label={t('batch.form.temperature')}
            dimension="temperature"
            value={draft.temperatureC}
            onChange={(temperatureC) => change({ temperatureC })}
            description={t('batch.form.temperatureHint', { usual: text(20, 'temperature') })}
          />
        )}
      </WhenAndNote>
    </>
  )
}

interface AllOfItProps extends Pick<DraftFormProps<AddingDraft>, 'draft' | 'context'> {
  onTake: (amount: number) => void
}

function AllOfIt({ draft, context, onTake }: AllOfItProps) {
  const t = useWords()
  const { text } = useQuantities()
  const share = evenShare(draft, context)
  if (share === undefined || share === draft.amount) return null
  const amount = text(share, draft.kind === 'pourSpirit' ? 'volume' : 'mass')
  return (
    <div>
      <Button kind="quiet" onPress={() => onTake(share)}>
        {t(draft.jarIds.length > 1 ? 'batch.form.allShared' : 'batch.form.allOfItIs', { amount })}
      </Button>
    </div>
  )
}
