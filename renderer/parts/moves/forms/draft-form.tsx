/** The form of a draft, by its kind. */
import type { Draft } from '../drafts/draft.ts'
import { AddingForm } from './adding-form.tsx'
import { BottlesOutForm, BottlingForm } from './bottle-forms.tsx'
import { BringingInForm } from './bringing-in-form.tsx'
import { BuyForm } from './buy-form.tsx'
import { FilteringForm } from './filtering-form.tsx'
import type { DraftFormProps } from './form-basics.ts'
import { RemarkForm, TendingForm, WaterForm } from './jar-forms.tsx'
import { KeepingForm } from './keeping-form.tsx'
import { MarryingForm } from './marrying-form.tsx'
import { CorrectForm, DiscardForm } from './mending-forms.tsx'
import { PouringOffForm } from './pouring-off-form.tsx'
import { ReadingForm } from './reading-form.tsx'
import { ShelfMoveForm } from './shelf-move-form.tsx'
import { TasteForm } from './taste-form.tsx'
import { UnbottlingForm } from './unbottling-form.tsx'

export function DraftForm({ draft, ...rest }: DraftFormProps<Draft>) {
  switch (draft.kind) {
    case 'charge':
    case 'sugar':
    case 'coverWithSugar':
    case 'addAcid':
    case 'pourSpirit':
      return <AddingForm draft={draft} {...rest} />
    case 'pourWater':
      return <WaterForm draft={draft} {...rest} />
    case 'stir':
    case 'crush':
      return <TendingForm draft={draft} {...rest} />
    case 'keep':
      return <KeepingForm draft={draft} {...rest} />
    case 'remark':
      return <RemarkForm draft={draft} {...rest} />
    case 'read':
      return <ReadingForm draft={draft} {...rest} />
    case 'drawOff':
    case 'press':
      return <PouringOffForm draft={draft} {...rest} />
    case 'marry':
      return <MarryingForm draft={draft} {...rest} />
    case 'filter':
      return <FilteringForm draft={draft} {...rest} />
    case 'bottle':
      return <BottlingForm draft={draft} {...rest} />
    case 'bringIn':
      return <BringingInForm draft={draft} {...rest} />
    case 'unbottle':
      return <UnbottlingForm draft={draft} {...rest} />
    case 'drawBottle':
    case 'give':
      return <BottlesOutForm draft={draft} {...rest} />
    case 'discard':
      return <DiscardForm draft={draft} {...rest} />
    case 'correct':
      return <CorrectForm draft={draft} {...rest} />
    case 'taste':
      return <TasteForm draft={draft} {...rest} />
    case 'breakBottle':
    case 'shelve':
    case 'openBottle':
    case 'pourGlass':
    case 'topUp':
      return <ShelfMoveForm draft={draft} {...rest} />
    case 'buy':
      return <BuyForm draft={draft} {...rest} />
  }
}
