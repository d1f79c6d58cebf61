/** Batches, lines and plans written down by hand, to be told, added up and compared. */
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import type { SeasonBatch, SeasonPlan, SeasonTotals } from '../../../shared/schemas/season.ts'
import { plainWishes } from './season-cellar.ts'

/** 2 kg of sour cherry under 1.5 L at 70 % vol, layered, drawn once, finished. */
export const paperSpec = (change: Partial<DraftSpec> = {}): DraftSpec => ({
  startAt: '2027-07-05T00:00:00.000Z',
  fruits: [{ fruitId: 'sour_cherry', massG: 2000, refuseShare: 0.1, cut: 'pricked' }],
  sweetenerId: 'sugar',
  layeringSugarG: 100,
  layeringDays: 2,
  spirits: [{ strengthPctVol: 70, volumeMl: 1500 }],
  steepWaterMl: 0,
  steepWeeks: 6,
  temperatureC: 20,
  turned: 'weekly',
  sugarDraws: [{ sugarG: 300, days: 7 }],
  isPressed: false,
  finishWaterMl: 200,
  finishSugarG: 50,
  finishSpiritMl: 250,
  settleDays: 14,
  filters: ['paper'],
  bottleSizeMl: 500,
  vessels: { steep: [], extracts: [] },
  ...change,
})

export const paperBatch = (change: Partial<SeasonBatch> = {}): SeasonBatch => ({
  key: 'sour_cherry-w0',
  kindId: 'sour_cherry',
  source: 'fresh',
  week: 0,
  fruitG: 2000,
  volumeMl: { value: 3200, low: 2400, high: 4000 },
  bottleSizeMl: 500,
  bottles: 6,
  startAt: '2027-07-05T00:00:00.000Z',
  drawnAt: '2027-08-18T00:00:00.000Z',
  bottledAt: '2027-09-08T12:00:00.000Z',
  readyAt: '2028-03-08T12:00:00.000Z',
  steepJars: [],
  settleJars: [],
  spec: paperSpec(),
  replay: { bottles: 6, volumeMl: 3200, isWithinBand: true },
  ...change,
})

export const paperTotals = (change: Partial<SeasonTotals> = {}): SeasonTotals => ({
  batches: 0,
  volumeMl: { value: 0, low: 0, high: 0 },
  bottles: 0,
  shortMl: 0,
  fruitG: 0,
  spirits: [],
  sugarG: 0,
  moneyMinor: 0,
  isWholeMoney: true,
  ...change,
})

export const paperKind = (kindId: string): SeasonPlan['kinds'][number] => ({
  kindId,
  stock: {
    bottledMl: 0,
    inJarsMl: 0,
    perYearMl: { value: 0, low: 0, high: 0 },
    givenShare: 0,
    isOwnHistory: true,
  },
  readyAt: '2028-03-08T12:00:00.000Z',
  leftThenMl: { value: 0, low: 0, high: 0 },
  needs: [],
  wantedMl: 0,
  yield: { lPerKg: { value: 1.6, low: 1.2, high: 2 }, basis: 'recipe', batchIds: [] },
  bottleSizeMl: 500,
  plannedMl: { value: 0, low: 0, high: 0 },
  bottles: 0,
  shortMl: 0,
  cutBy: [],
  jarLWeeksPerL: 0,
})

export const paperPlan = (change: Partial<SeasonPlan> = {}): SeasonPlan => ({
  madeAt: '2026-11-25T18:00:00.000Z',
  startAt: '2026-11-23T00:00:00.000Z',
  weekCount: 52,
  wishes: plainWishes,
  kinds: [],
  batches: [],
  jars: [],
  spans: [],
  purchases: [],
  totals: paperTotals(),
  binding: [],
  reliefs: [],
  variants: [],
  proof: { isProven: true, gapShare: 0, seconds: 0 },
  notices: [],
  ...change,
})
