/** What a sheet of each kind can tell, and how its makers name it at the head of a column. */
import type { Sheet } from '../../../shared/schemas/sheets.ts'
import type { Dimension } from '../../parts/quantity/units.ts'

export type SheetKind = Sheet['kind']
export const sheetKinds: readonly SheetKind[] = ['bottles', 'stock']

export type FieldId =
  | 'name'
  | 'fruits'
  | 'date'
  | 'count'
  | 'size'
  | 'strength'
  | 'sugar'
  | 'shelf'
  | 'note'
  | 'goods'
  | 'bought'
  | 'volume'
  | 'mass'
  | 'price'

export interface SheetField {
  readonly id: FieldId
  readonly reads: 'text' | 'fruits' | 'shelf' | 'date' | Dimension
  readonly isRequired: boolean
  /** Words of heads that mean it, in English and Polish, in lower case and without accents. */
  readonly heads: readonly string[]
}

const bottleFields: readonly SheetField[] = [
  {
    id: 'name',
    reads: 'text',
    isRequired: true,
    heads: ['name', 'liqueur', 'batch', 'what', 'nazwa', 'nalewka', 'nastaw', 'partia', 'co'],
  },
  {
    id: 'fruits',
    reads: 'fruits',
    isRequired: false,
    heads: ['fruit', 'fruits', 'made of', 'owoc', 'owoce', 'z czego'],
  },
  {
    id: 'date',
    reads: 'date',
    isRequired: true,
    heads: ['date', 'bottled', 'year', 'vintage', 'data', 'rok', 'rocznik', 'rozlano', 'rozlew'],
  },
  {
    id: 'count',
    reads: 'count',
    isRequired: true,
    heads: [
      'count',
      'bottles',
      'number',
      'how many',
      'left',
      'qty',
      'pcs',
      'sztuk',
      'szt',
      'ilosc',
      'liczba',
      'ile',
      'butelek',
    ],
  },
  {
    id: 'size',
    reads: 'volume',
    isRequired: true,
    heads: ['size', 'bottle size', 'volume', 'pojemnosc', 'objetosc', 'wielkosc', 'butelka'],
  },
  {
    id: 'strength',
    reads: 'strength',
    isRequired: true,
    heads: ['strength', 'abv', 'alcohol', 'proof', 'vol', 'moc', 'alkohol', 'procent', '%'],
  },
  {
    id: 'sugar',
    reads: 'sugar',
    isRequired: true,
    heads: ['sugar', 'sweetness', 'g/l', 'cukier', 'slodycz'],
  },
  {
    id: 'shelf',
    reads: 'shelf',
    isRequired: false,
    heads: ['shelf', 'place', 'where', 'stands', 'polka', 'miejsce', 'gdzie'],
  },
  {
    id: 'note',
    reads: 'text',
    isRequired: false,
    heads: ['note', 'notes', 'remark', 'remarks', 'comment', 'uwagi', 'uwaga', 'notatka', 'opis'],
  },
]

const stockFields: readonly SheetField[] = [
  {
    id: 'goods',
    reads: 'text',
    isRequired: true,
    heads: ['what', 'goods', 'name', 'fruit', 'item', 'co', 'nazwa', 'towar', 'owoc', 'surowiec'],
  },
  {
    id: 'strength',
    reads: 'strength',
    isRequired: false,
    heads: ['strength', 'abv', 'alcohol', 'proof', 'vol', 'moc', 'alkohol', 'procent', '%'],
  },
  {
    id: 'volume',
    reads: 'volume',
    isRequired: false,
    heads: ['volume', 'litres', 'liters', 'ml', 'l', 'objetosc', 'litry', 'litrow'],
  },
  {
    id: 'mass',
    reads: 'mass',
    isRequired: false,
    heads: ['weight', 'mass', 'kg', 'g', 'lb', 'masa', 'waga', 'ciezar', 'kilo'],
  },
  {
    id: 'bought',
    reads: 'date',
    isRequired: true,
    heads: ['bought', 'date', 'day', 'kupiono', 'data', 'zakup', 'dzien'],
  },
  {
    id: 'price',
    reads: 'money',
    isRequired: false,
    heads: ['price', 'paid', 'cost', 'cena', 'koszt', 'zaplacono'],
  },
  {
    id: 'note',
    reads: 'text',
    isRequired: false,
    heads: ['note', 'notes', 'remark', 'remarks', 'comment', 'uwagi', 'uwaga', 'notatka', 'opis'],
  },
]

export const fieldsOf: Readonly<Record<SheetKind, readonly SheetField[]>> = {
  bottles: bottleFields,
  stock: stockFields,
}

export const isAmount = (reads: SheetField['reads']): reads is Dimension =>
  reads !== 'text' && reads !== 'fruits' && reads !== 'shelf' && reads !== 'date'
