/** A small cellar with something of everything, so that a made-up call finds what it could be about. */
import type { Answer, Channel, Request } from '../../shared/channels.ts'
import type { Move } from '../../shared/schemas/moves.ts'

export type Asks = <C extends Channel>(channel: C, request: Request<C>) => Promise<unknown>

const at = (day: number) => new Date(Date.UTC(2026, 5, day, 8)).toISOString()
const inJar = (batch: string, jar: string) => ({ batchId: batch, jarId: jar })

const moves: readonly Move[] = [
  {
    at: at(1),
    kind: 'buy',
    lotId: 'spirit',
    goods: { kind: 'spirit', strengthPctVol: 95 },
    volumeMl: 60_000,
    priceMinor: 90_000,
  },
  {
    at: at(1),
    kind: 'buy',
    lotId: 'sugar',
    goods: { kind: 'sweetener', sweetenerId: 'sugar' },
    massG: 40_000,
    priceMinor: 4000,
  },
  {
    at: at(1),
    kind: 'buy',
    lotId: 'honey',
    goods: { kind: 'sweetener', sweetenerId: 'honey' },
    massG: 8000,
  },
  { at: at(1), kind: 'buy', lotId: 'citric', goods: { kind: 'acid' }, massG: 500 },
  ...['sour_cherry', 'raspberry', 'damson'].flatMap((fruitId, index): Move[] => [
    {
      at: at(2),
      kind: 'buy',
      lotId: `lot-${fruitId}`,
      goods: { kind: 'fruit', fruitId },
      massG: 20_000,
      priceMinor: 6000,
    },
    {
      at: at(2),
      kind: 'charge',
      ...inJar(`batch${index}`, `jar${index}`),
      lotId: `lot-${fruitId}`,
      massG: 1500,
      cut: 'whole',
    },
    {
      at: at(2),
      kind: 'pourSpirit',
      ...inJar(`batch${index}`, `jar${index}`),
      lotId: 'spirit',
      volumeMl: 1400,
    },
    { at: at(2), kind: 'pourWater', ...inJar(`batch${index}`, `jar${index}`), volumeMl: 400 },
  ]),
  { at: at(20), kind: 'stir', ...inJar('batch0', 'jar0') },
  { at: at(40), kind: 'drawOff', batchId: 'batch0', fromJarId: 'jar0', toJarId: 'jar3' },
  { at: at(41), kind: 'coverWithSugar', ...inJar('batch0', 'jar0'), lotId: 'sugar', massG: 700 },
  {
    at: at(60),
    kind: 'bottle',
    batchId: 'batch0',
    fromJarId: 'jar3',
    bottleLotId: 'bottles0',
    bottleSizeMl: 250,
    count: 4,
    shelfId: 'cellar',
  },
  { at: at(61), kind: 'openBottle', bottleLotId: 'bottles0', openedId: 'opened0' },
]

export async function beginCellar(ask: Asks): Promise<void> {
  await ask('jars.add', {
    jars: Array.from({ length: 8 }, (_, index) => ({
      id: `jar${index}`,
      name: `Jar ${index}`,
      shape: 'jar' as const,
      capacityMl: 4000 + 2000 * index,
      isRetired: false,
    })),
  })
  await ask('shelves.add', {
    id: 'cellar',
    name: 'Cellar',
    temperatureC: 12,
    light: 'dark',
    isRetired: false,
  })
  for (const index of [0, 1, 2])
    await ask('batches.open', {
      id: `batch${index}`,
      name: `Batch ${index}`,
      colour: '#7a1f3d',
      note: '',
      openedAt: at(1),
    })
  // One by one: each can be taken back alone.
  for (const [index, move] of moves.entries())
    await ask('moves.record', { key: `begun${index}`, moves: [move] })
  await ask('recipes.keepBatch', { id: 'recipe0', name: 'First', note: '', batchId: 'batch0' })
  for (const channel of lists) await ask(channel, {})
  await askExamples(ask)
}

/** What the lists name, to be asked about. */
const lists = [
  'jars.list',
  'batches.list',
  'pantry.list',
  'bottles.list',
  'shelves.list',
  'fruits.list',
  'recipes.list',
  'schedule.list',
] as const

/** A sound request for each channel that one would hardly be made up for. */
async function askExamples(ask: Asks): Promise<void> {
  await ask('batches.page', { batchId: 'batch0' })
  await ask('drafts.usual', { fruitId: 'sour_cherry', massG: 3000, spiritPctVol: 95 })
  const wishes = (await ask('season.wishes', {})) as Answer<'season.wishes'>
  await ask('season.keepWishes', {
    ...wishes,
    wishes: [
      { id: 'w', kindId: 'damson', purpose: 'drink', priority: 'must', atLeastMl: 2000, note: '' },
    ],
  })
  await ask('marry.solve', {
    parts: [{ place: 'jar:jar1' }, { place: 'lot:spirit' }, { place: 'outside:tap' }],
    wishes: { strengthPctVol: { low: 30, high: 30 }, volumeMl: { low: 700, high: 700 } },
    prefer: 'cheapest',
    holds: 'composition',
  })
  await ask('mend.solve', {
    jarId: 'jar1',
    wishes: { strengthPctVol: { low: 25, high: 25 } },
    parts: [{ place: 'lot:sugar' }, { place: 'outside:tap' }],
  })
  const { usual } = (await ask('labels.sheets', {})) as Answer<'labels.sheets'>
  const {
    strengthPrefix,
    sheetId: _,
    ...style
  } = (await ask('labels.style', {})) as Answer<'labels.style'>
  const labels = (await ask('labels.usual', {
    bottleLotIds: ['bottles0'],
    strengthPrefix,
  })) as Answer<'labels.usual'>
  const [sheet] = usual
  if (!sheet) throw new Error('there is no usual sheet of labels')
  await ask('labels.draw', {
    ...style,
    sheet,
    firstPosition: 1,
    labels: labels.map(({ bottleLotId, text, colour, bottleSizeMl }) => ({
      bottleLotId,
      text,
      colour,
      bottleSizeMl,
      copies: 2,
    })),
  })
}
