/** Labels to lay out: plain ones, long ones, and such as no maker means well with. */
import {
  labelFields,
  type LabelDesign,
  type LabelJob,
  type LabelPart,
  type LabelSheet,
  type LabelText,
} from '../../../shared/schemas/labels.ts'
import { usualSheets } from '../../../main/papers/labels/usual-sheets.ts'

export const usual: LabelText = {
  name: 'Wiśniówka z Żółtych Łąk',
  kind: 'Sour cherry liqueur',
  vintage: '2024',
  strength: '29.5\u00a0%\u00a0vol',
  volume: '500\u00a0ml',
  batch: 'Batch cherry-2024',
  bottled: 'Bottled 8\u00a0September\u00a02025',
  ingredients: 'Sour cherry, spirit, sugar, water',
  allergens: 'Contains nuts: green walnut',
  energy: 'Energy in 100\u00a0ml: 1,012\u00a0kJ / 243\u00a0kcal',
  drinks: '14.8 UK units',
  cautions: 'Keep out of the reach of children.',
  note: 'From the hedge behind the orchard.',
}

export const shownUsually = [
  'name',
  'kind',
  'vintage',
  'strength',
  'volume',
  'bottled',
  'ingredients',
  'allergens',
] as const

export const designs: readonly LabelDesign[] = ['parlour', 'ledger', 'glass', 'lamplight']
export const parts: readonly LabelPart[] = ['front', 'neck']

export function sheetOf(id: string): LabelSheet {
  const sheet = usualSheets.find((one) => one.id === id)
  if (!sheet) throw new Error(`no sheet ${id}`)
  return sheet
}

export const job = (
  texts: readonly Partial<LabelText>[],
  change: Partial<LabelJob> = {},
): LabelJob => ({
  design: 'parlour',
  part: 'front',
  shown: [...shownUsually],
  hasCode: true,
  hasEmblem: true,
  hasCutMarks: false,
  sheet: sheetOf('a4-2x4-99x68'),
  firstPosition: 1,
  labels: texts.map((text, index) => ({
    bottleLotId: `lot-${index}`,
    text: { ...usual, ...text },
    colour: ['#8f1d2c', '#d9a441', '#2f5d3a', '#f4efe4'][index % 4] ?? '#8f1d2c',
    bottleSizeMl: [500, 700, 200, 1000][index % 4] ?? 500,
    copies: 1,
  })),
  ...change,
})

export const everything = [...labelFields]

/** What a field may be handed: markup, quotes, other directions, no letters at all, far too much. */
export const hostile: Readonly<Record<string, string>> = {
  markup: '</svg><script>alert(1)</script> & "it\'s" <b>',
  quotes: "“Old” ‚Hof‘ «Łąka» 's \\ `x` %s ${y} (unbalanced",
  hebrew: 'ליקר דובדבנים',
  arabic: 'خمر الكرز',
  emoji: 'Cherry 🍒👩‍👩‍👧‍👦🏴󠁧󠁢󠁥󠁮󠁧󠁿 day',
  chinese: '樱桃酒 cherry',
  controls: 'Da\u0000m\u0007son\u202e\u200b\u2066 2024\u0085',
  combining: 'a\u0301\u0323\u0308e\u030a\u0331 Ẫ q\u0303',
  halfPair: 'Dam\ud83cson',
  vietnamese: 'Rượu mận Ẫ Ở ễ',
  blank: ' \n\t ',
  oneWord: 'Donaudampfschifffahrtskirschlikörflaschenetikett'.repeat(6),
  long: 'The slow one that stood behind the door and nobody wanted to open. '
    .repeat(9)
    .slice(0, 600),
  number: '0',
}
