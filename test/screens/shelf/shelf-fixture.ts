/** A shelf to show: five lots of three kinds on two places, one opened bottle, tastings, a lineage. */
import { matterOf } from '../../../shared/matter.ts'
import type { BottleLot } from '../../../shared/schemas/cellar.ts'
import type { Move, MoveOf, RecordedMove, Verdict } from '../../../shared/schemas/moves.ts'
import type {
  AgeingWindow,
  KindStock,
  Lineage,
  OpenedBottle,
  Shelf,
  ShelfLot,
  ShelfLots,
  ShelfPage,
  ShelfStock,
} from '../../../shared/schemas/shelf.ts'
import { bottleLot, liquid } from '../cellar-fixture.ts'
import type { Answers } from '../fake-bridge.ts'

const month = (year: number, ofYear: number) => new Date(Date.UTC(year, ofYear, 1)).toISOString()

export const shelf = (changed: Partial<Shelf> = {}): Shelf => ({
  id: 'rack',
  name: 'Cellar rack',
  temperatureC: 12,
  light: 'dark',
  isRetired: false,
  ...changed,
})

export const shelves = [
  shelf(),
  shelf({ id: 'dresser', name: 'Kitchen dresser', temperatureC: 21, light: 'daylight' }),
]

/** A band of three months either side. */
const edge = (year: number, ofYear: number) => ({
  early: month(year, ofYear - 3),
  likely: month(year, ofYear),
  late: month(year, ofYear + 3),
})

export const ageingWindow = (
  phase: Verdict,
  ready: readonly [number, number],
  fading: readonly [number, number],
  changed: Partial<AgeingWindow> = {},
): AgeingWindow => ({
  phase,
  readyAt: edge(...ready),
  fadingAt: edge(...fading),
  because: [],
  ...changed,
})

export const shelfLot = (lot: Partial<BottleLot>, changed: Partial<ShelfLot> = {}): ShelfLot => ({
  lot: bottleLot(lot),
  kindId: 'damson',
  fruitIds: ['damson'],
  vintage: 2024,
  window: ageingWindow('ready', [2025, 5], [2029, 2]),
  costPerBottle: 650,
  ...changed,
})

const lots: ShelfLot[] = [
  shelfLot(
    {
      count: 7,
      places: [
        { shelfId: 'rack', count: 5 },
        { shelfId: 'dresser', count: 2 },
      ],
    },
    {
      kindId: 'raspberry',
      fruitIds: ['raspberry'],
      window: ageingWindow('fading', [2025, 0], [2026, 7], {
        because: ['light', 'warm', 'tastedFading'],
        colourLeft: { value: 0.62, low: 0.5, high: 0.72 },
      }),
      lastTasted: { at: '2026-10-02T18:00:00Z', verdict: 'fading' },
    },
  ),
  shelfLot({
    id: 'damson-old',
    batchId: 'damson',
    name: 'Damson 2021',
    bottleSizeMl: 700,
    filledCount: 9,
    count: 4,
    bottledAt: '2022-03-05T10:00:00Z',
    places: [{ shelfId: 'rack', count: 4 }],
  }),
  shelfLot(
    {
      id: 'damson-new',
      batchId: 'damson',
      name: 'Damson 2025',
      filledCount: 14,
      count: 14,
      bottledAt: '2026-02-20T10:00:00Z',
      liquid: liquid({ strengthPctVol: 30.5, sugarGPerL: 190 }),
    },
    { vintage: 2025, window: ageingWindow('young', [2027, 3], [2032, 1]) },
  ),
  shelfLot(
    {
      id: 'quince-lot',
      batchId: 'quince',
      name: 'Quince 2023',
      bottleSizeMl: 350,
      filledCount: 20,
      count: 1,
      bottledAt: '2024-01-20T10:00:00Z',
    },
    {
      kindId: 'other',
      fruitIds: [],
      vintage: 2023,
      costPerBottle: undefined,
      window: ageingWindow('ready', [2024, 9], [2028, 0]),
    },
  ),
]

export const goneLot = shelfLot(
  {
    id: 'gone',
    batchId: 'damson',
    name: 'Damson 2019',
    count: 0,
    places: [],
    bottledAt: '2020-02-01T10:00:00Z',
  },
  { vintage: 2019 },
)

export const opened = (changed: Partial<OpenedBottle> = {}): OpenedBottle => ({
  id: 'open-1',
  bottleLotId: 'raspberry-lot',
  batchId: 'raspberry',
  name: 'Raspberry 2024',
  openedAt: '2026-10-02T18:00:00Z',
  bottleSizeMl: 500,
  liquid: liquid({ volumeMl: 210, strengthPctVol: 28, sugarGPerL: 210 }),
  bestBy: { early: month(2026, 11), likely: month(2027, 0), late: month(2027, 2) },
  ...changed,
})

export const shelfLots = (changed: Partial<ShelfLots> = {}): ShelfLots => ({
  lots,
  opened: [opened()],
  drinkFirst: [
    { bottleLotId: 'raspberry-lot', because: 'opened', by: month(2027, 0) },
    { bottleLotId: 'raspberry-lot', because: 'fading', by: month(2026, 7) },
    { bottleLotId: 'quince-lot', because: 'fadingSoon', by: month(2028, 0) },
  ],
  ...changed,
})

export const recorded = (move: Move, seq: number): RecordedMove => ({
  id: `move-${seq}`,
  seq,
  groupId: `group-${seq}`,
  recordedAt: move.at,
  version: 1,
  move,
})

export const taste = (changed: Partial<MoveOf<'taste'>> = {}): MoveOf<'taste'> => ({
  kind: 'taste',
  at: '2026-10-02T18:00:00Z',
  batchId: 'raspberry',
  bottleLotId: 'raspberry-lot',
  glass: 'tulip',
  scores: { aroma: 5, fruit: 4, sweetness: 7, colour: 6 },
  verdict: 'fading',
  note: 'The fruit steps back.',
  ...changed,
})

const tastings = [
  taste({
    at: '2024-12-20T18:00:00Z',
    scores: { aroma: 7, fruit: 9, sweetness: 8, heat: 6, colour: 10 },
    verdict: 'young',
    note: 'Hot, and all fruit.',
  }),
  taste({
    at: '2025-12-20T18:00:00Z',
    scores: { aroma: 8, fruit: 7, sweetness: 7, heat: 3, colour: 8 },
    verdict: 'ready',
  }),
  taste(),
].map((move, index) => recorded(move, index + 10))

const step = (move: Move, seq: number) => ({
  recorded: recorded(move, seq),
  transfers: [],
  after: [],
  emptied: [],
})

export const shelfPage = (changed: Partial<ShelfPage> = {}): ShelfPage => ({
  shelfLot: lots[0] as ShelfLot,
  opened: [opened()],
  steps: [
    step(
      {
        kind: 'bottle',
        at: '2024-09-08T10:00:00Z',
        batchId: 'raspberry',
        fromJarId: 'north',
        bottleLotId: 'raspberry-lot',
        bottleSizeMl: 500,
        count: 12,
      },
      1,
    ),
    step(
      {
        kind: 'shelve',
        at: '2025-01-08T10:00:00Z',
        bottleLotId: 'raspberry-lot',
        count: 2,
        fromShelfId: 'rack',
        toShelfId: 'dresser',
      },
      2,
    ),
    ...tastings.map((one) => step(one.move, one.seq)),
  ],
  tastings,
  stays: [
    { shelfId: 'rack', from: '2024-09-08T10:00:00Z', count: 12 },
    { shelfId: 'dresser', from: '2025-01-08T10:00:00Z', count: 2 },
  ],
  colour: Array.from({ length: 13 }, (_, half) => {
    const value = 0.5 ** ((half * 6) / 40)
    const at = month(2024, 8 + half * 6)
    return { at, left: { value, low: value * 0.85, high: Math.min(1, value * 1.1) } }
  }),
  siblingIds: [],
  costPerGlass: 52,
  cost: { minor: 4550, isComplete: true },
  ...changed,
})

export const kindStock = (changed: Partial<KindStock> = {}): KindStock => ({
  kindId: 'raspberry',
  bottleCount: 7,
  volumeMl: 3500,
  past: Array.from({ length: 24 }, (_, back) => ({
    at: month(2024, 11 + back),
    volumeMl: 9500 - 250 * back,
  })),
  forecast: Array.from({ length: 24 }, (_, ahead) => {
    const value = Math.max(0, 3500 - 230 * (ahead + 1))
    return {
      at: month(2026, 11 + ahead),
      volumeMl: {
        value,
        low: Math.max(0, value - 60 * (ahead + 1)),
        high: value + 45 * (ahead + 1),
      },
    }
  }),
  perYearMl: { value: 2760, low: 2100, high: 3400 },
  givenShare: 0.3,
  runsOut: { early: month(2027, 7), likely: month(2028, 1), late: null },
  isOwnHistory: true,
  ...changed,
})

export const shelfStock: ShelfStock = {
  kinds: [
    kindStock(),
    kindStock({
      kindId: 'damson',
      bottleCount: 18,
      volumeMl: 9800,
      runsOut: undefined,
      isOwnHistory: false,
    }),
  ],
  all: kindStock({ kindId: 'other', bottleCount: 26, volumeMl: 13_650, runsOut: undefined }),
}

const passed = matterOf({ ethanolG: 400, waterG: 700, sugarG: 250 })
const sugarOnly = matterOf({ sugarG: 250 })
const spiritOnly = matterOf({ ethanolG: 400, waterG: 200 })

export const lineage: Lineage = {
  nodes: [
    { key: 'lot:spirit', kind: 'lot', id: 'spirit', depth: 0, matter: spiritOnly },
    { key: 'outside:tap', kind: 'outside', depth: 0, matter: matterOf({ waterG: 500 }) },
    { key: 'lot:sugar', kind: 'lot', id: 'sugar', depth: 0, matter: sugarOnly },
    {
      key: 'jar:north@raspberry',
      kind: 'jar',
      id: 'north',
      batchId: 'raspberry',
      depth: 1,
      matter: passed,
    },
    {
      key: 'bottles:raspberry-lot',
      kind: 'bottles',
      id: 'raspberry-lot',
      batchId: 'raspberry',
      depth: 2,
      matter: passed,
    },
    { key: 'outside:glass', kind: 'outside', depth: 3, matter: matterOf({ ethanolG: 100 }) },
  ],
  links: [
    { from: 'lot:spirit', to: 'jar:north@raspberry', matter: spiritOnly },
    { from: 'lot:sugar', to: 'jar:north@raspberry', matter: sugarOnly },
    { from: 'outside:tap', to: 'jar:north@raspberry', matter: matterOf({ waterG: 500 }) },
    { from: 'jar:north@raspberry', to: 'bottles:raspberry-lot', matter: passed },
    {
      from: 'bottles:raspberry-lot',
      to: 'outside:glass',
      matter: matterOf({ ethanolG: 100, waterG: 175, sugarG: 62 }),
    },
  ],
  origins: [
    { key: 'lot:spirit', matter: spiritOnly },
    { key: 'lot:sugar', matter: sugarOnly },
    { key: 'outside:tap', matter: matterOf({ waterG: 500 }) },
  ],
  destinations: [
    { key: 'bottles:raspberry-lot', matter: matterOf({ ethanolG: 300, waterG: 150 }) },
    { key: 'outside:glass', matter: matterOf({ ethanolG: 100, waterG: 50 }) },
  ],
}

export const preview = { refusals: [], steps: [], warnings: [], breaks: [] }
export const wasRecorded = { groupId: 'g', moveIds: ['m'], warnings: [] }

export const shelfAnswers: Answers = {
  'shelves.list': shelves,
  'bottles.list': [...lots, goneLot].map(({ lot }) => lot),
  'shelf.lots': ({ withGone }) => shelfLots(withGone ? { lots: [...lots, goneLot] } : {}),
  'shelf.page': ({ bottleLotId }) =>
    shelfPage({ shelfLot: lots.find(({ lot }) => lot.id === bottleLotId) ?? goneLot }),
  'shelf.stock': shelfStock,
  'lineage.of': lineage,
  'moves.preview': preview,
  'moves.record': wasRecorded,
  'moves.undo': { groupId: 'u', undoes: 'g', changes: [] },
}
