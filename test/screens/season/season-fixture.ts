/** A season to show: three kinds, four jars, a plan that falls short, a list to buy, a fruit year. */
import { msPerDay } from '../../../shared/spans-of-time.ts'
import type { DraftSpec } from '../../../shared/schemas/drafts.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import type {
  FruitSeason,
  KeptSeasonPlan,
  PurchaseLine,
  PurchaseList,
  SeasonBatch,
  SeasonCalendar,
  SeasonComparison,
  SeasonJob,
  SeasonKind,
  SeasonPlan,
  SeasonWishes,
  Supply,
} from '../../../shared/schemas/season.ts'
import { damson } from '../cellar-fixture.ts'
import type { Answers } from '../fake-bridge.ts'

const msPerWeek = 7 * msPerDay

/** The Monday of the present week, as the plan counts its weeks. */
export const startMs =
  4 * msPerDay + Math.floor((Date.now() - 4 * msPerDay) / msPerWeek) * msPerWeek
export const weekAt = (week: number): string => new Date(startMs + week * msPerWeek).toISOString()

export const fruits: Fruit[] = [
  damson,
  { ...damson, id: 'sour_cherry', nameEn: 'Sour cherry', namePl: 'Wiśnia' },
  { ...damson, id: 'quince', nameEn: 'Quince', namePl: 'Pigwa', kind: 'pome' },
]

export const wishes = (changed: Partial<SeasonWishes> = {}): SeasonWishes => ({
  wishes: [
    {
      id: 'quince-gifts',
      kindId: 'quince',
      purpose: 'gift',
      priority: 'should',
      atLeastMl: 2000,
      note: '',
    },
  ],
  limits: { isSpiritAtHandOnly: false },
  prices: { fruits: [{ fruitId: 'quince', minorPerKg: 320 }], spirits: [] },
  reserveMonths: 6,
  spiritPctVol: 96,
  bottleSizeMl: 500,
  cleaningWeeks: 1,
  ...changed,
})

export const kind = (changed: Partial<SeasonKind> = {}): SeasonKind => ({
  kindId: 'damson',
  stock: {
    bottledMl: 4200,
    inJarsMl: 3000,
    perYearMl: { value: 4000, low: 3000, high: 5200 },
    givenShare: 0.2,
    isOwnHistory: true,
  },
  readyAt: weekAt(70),
  leftThenMl: { value: 1800, low: 400, high: 3100 },
  needs: [
    { because: 'drinking', priority: 'should', volumeMl: 2200 },
    { because: 'reserve', priority: 'could', volumeMl: 2000 },
  ],
  wantedMl: 4200,
  yield: {
    lPerKg: { value: 1.4, low: 1.2, high: 1.6 },
    basis: 'own',
    batchIds: ['damson'],
  },
  bottleSizeMl: 500,
  plannedMl: { value: 4200, low: 3600, high: 4800 },
  bottles: 8,
  shortMl: 0,
  cutBy: [],
  jarLWeeksPerL: 20,
  minorPerL: 950,
  ...changed,
})

const spec: DraftSpec = {
  startAt: weekAt(40),
  fruits: [{ fruitId: 'damson', massG: 3000, refuseShare: 0, cut: 'pricked' }],
  sweetenerId: 'sugar',
  layeringSugarG: 0,
  layeringDays: 0,
  spirits: [{ strengthPctVol: 96, volumeMl: 2000 }],
  steepWaterMl: 1000,
  steepWeeks: 8,
  temperatureC: 16,
  turned: 'weekly',
  sugarDraws: [],
  isPressed: false,
  finishWaterMl: 300,
  finishSugarG: 600,
  finishSpiritMl: 0,
  settleDays: 21,
  filters: ['paper'],
  bottleSizeMl: 500,
  vessels: { steep: [], extracts: [] },
}

export const seasonBatch = (changed: Partial<SeasonBatch> = {}): SeasonBatch => ({
  key: 'damson-40',
  kindId: 'damson',
  source: 'fresh',
  week: 40,
  fruitG: 3000,
  volumeMl: { value: 4200, low: 3600, high: 4800 },
  bottleSizeMl: 500,
  bottles: 8,
  startAt: weekAt(40),
  drawnAt: weekAt(48),
  bottledAt: weekAt(51),
  readyAt: weekAt(70),
  steepJars: [{ jarId: 'south', fillMl: 7600, fillShare: 0.76, fruitG: 3000 }],
  settleJars: [{ jarId: 'north', fillMl: 3900, fillShare: 0.97 }],
  spec,
  replay: { bottles: 8, volumeMl: 4150, isWithinBand: true },
  ...changed,
})

const cherry = seasonBatch({
  key: 'cherry-32',
  kindId: 'sour_cherry',
  week: 32,
  fruitG: 4000,
  startAt: weekAt(32),
  drawnAt: weekAt(38),
  bottledAt: weekAt(41),
  readyAt: weekAt(60),
  steepJars: [{ jarId: 'big', fillMl: 8200, fillShare: 0.82, fruitG: 4000 }],
  settleJars: [{ jarId: 'south', fillMl: 5600, fillShare: 0.56 }],
  volumeMl: { value: 5600, low: 4900, high: 6300 },
  bottles: 11,
  spec: { ...spec, startAt: weekAt(32) },
  replay: { bottles: 11, volumeMl: 5600, isWithinBand: true },
})

export const seasonPlan = (changed: Partial<SeasonPlan> = {}): SeasonPlan => ({
  madeAt: new Date(startMs + msPerDay).toISOString(),
  startAt: weekAt(0),
  weekCount: 52,
  wishes: wishes(),
  kinds: [
    kind(),
    kind({
      kindId: 'sour_cherry',
      wantedMl: 5600,
      plannedMl: { value: 5600, low: 4900, high: 6300 },
      bottles: 11,
      runsDryAt: weekAt(30),
      yield: {
        lPerKg: { value: 1.4, low: 1, high: 1.8 },
        basis: 'recipe',
        batchIds: [],
      },
    }),
    kind({
      kindId: 'quince',
      needs: [{ because: 'gift', priority: 'should', volumeMl: 2000 }],
      wantedMl: 2000,
      plannedMl: { value: 0, low: 0, high: 0 },
      bottles: 0,
      shortMl: 2000,
      cutBy: ['jars', 'money'],
    }),
  ],
  batches: [seasonBatch(), cherry],
  jars: [
    { jarId: 'north', name: 'North jar', shape: 'jar', capacityMl: 4000, usedWeeks: 12 },
    { jarId: 'south', name: 'South jar', shape: 'demijohn', capacityMl: 10_000, usedWeeks: 12 },
    { jarId: 'big', name: 'Old crock', shape: 'crock', capacityMl: 10_000, usedWeeks: 14 },
    { jarId: 'spare', name: 'Spare', shape: 'jar', capacityMl: 3000, usedWeeks: 0 },
  ],
  spans: [
    { jarId: 'north', fromWeek: 0, toWeek: 7, use: 'standing', batchId: 'damson', fillMl: 2320 },
    {
      jarId: 'big',
      fromWeek: 7,
      toWeek: 11,
      use: 'standingSettle',
      batchId: 'damson',
      fillMl: 1500,
    },
    { jarId: 'north', fromWeek: 7, toWeek: 8, use: 'cleaning', fillMl: 0 },
    { jarId: 'big', fromWeek: 32, toWeek: 38, use: 'steep', batchKey: 'cherry-32', fillMl: 8200 },
    { jarId: 'big', fromWeek: 38, toWeek: 39, use: 'cleaning', fillMl: 0 },
    {
      jarId: 'spare',
      fromWeek: 38,
      toWeek: 41,
      use: 'settle',
      batchKey: 'cherry-32',
      fillMl: 2800,
    },
    { jarId: 'south', fromWeek: 40, toWeek: 48, use: 'steep', batchKey: 'damson-40', fillMl: 7600 },
    {
      jarId: 'north',
      fromWeek: 48,
      toWeek: 51,
      use: 'settle',
      batchKey: 'damson-40',
      fillMl: 3900,
    },
  ],
  purchases: [],
  totals: {
    batches: 2,
    volumeMl: { value: 9800, low: 8500, high: 11_100 },
    bottles: 19,
    shortMl: 2000,
    fruitG: 7000,
    spirits: [{ strengthPctVol: 96, volumeMl: 4600 }],
    sugarG: 1900,
    moneyMinor: 14_250,
    isWholeMoney: true,
  },
  binding: [
    {
      limit: 'jars',
      used: 2,
      of: 2,
      unit: 'jars',
      capacityMl: 10_000,
      weeks: [40, 41, 45, 46, 47],
      kindIds: ['quince'],
    },
  ],
  reliefs: [
    {
      eases: 'jars',
      by: 10_000,
      unit: 'jarMl',
      gainsMl: 2000,
      costsMinor: 2400,
      kinds: [{ kindId: 'quince', gainsMl: 2000 }],
      isProven: true,
    },
    {
      eases: 'money',
      by: 10_000,
      unit: 'minor',
      gainsMl: 0,
      costsMinor: 0,
      kinds: [],
      isProven: false,
    },
  ],
  variants: [
    {
      harvest: 'poor',
      factors: { fruitPrice: 1.5, yield: 0.85, seasonWeeks: -1 },
      totals: {
        batches: 2,
        volumeMl: { value: 8300, low: 7200, high: 9400 },
        bottles: 16,
        shortMl: 3500,
        fruitG: 7000,
        spirits: [{ strengthPctVol: 96, volumeMl: 4600 }],
        sugarG: 1900,
        moneyMinor: 16_900,
        isWholeMoney: true,
      },
      kinds: [],
      isProven: true,
    },
    {
      harvest: 'good',
      factors: { fruitPrice: 0.8, yield: 1.1, seasonWeeks: 1 },
      totals: {
        batches: 3,
        volumeMl: { value: 11_800, low: 10_400, high: 13_000 },
        bottles: 23,
        shortMl: 0,
        fruitG: 8100,
        spirits: [{ strengthPctVol: 96, volumeMl: 5300 }],
        sugarG: 2300,
        moneyMinor: 13_100,
        isWholeMoney: true,
      },
      kinds: [],
      isProven: true,
    },
  ],
  proof: { isProven: true, gapShare: 0, seconds: 2.4 },
  notices: [],
  ...changed,
})

export const keptPlan = (plan = seasonPlan()): KeptSeasonPlan => ({
  id: 'kept',
  keptAt: plan.madeAt,
  plan,
})

export const job = (changed: Partial<SeasonJob> = {}): SeasonJob => ({
  jobId: 'job',
  state: 'done',
  step: 'variants',
  progress: 1,
  seconds: 3,
  ...changed,
})

export const line = (changed: Partial<PurchaseLine> = {}): PurchaseLine => ({
  key: 'w0 spirit 96',
  week: 0,
  from: weekAt(0),
  shop: 'spirits',
  what: 'spirit',
  strengthPctVol: 96,
  volumeMl: 3600,
  atHandMl: 1000,
  priceMinor: 6840,
  batchKeys: ['cherry-32'],
  batches: [{ kindId: 'sour_cherry', startAt: weekAt(32) }],
  ...changed,
})

export const purchases = (changed: Partial<PurchaseList> = {}): PurchaseList => ({
  planId: 'kept',
  planKeptAt: weekAt(0),
  weekStarts: Array.from({ length: 52 }, (_, week) => weekAt(week)),
  lines: [
    line(),
    line({
      key: 'w32 fruit sour_cherry',
      week: 32,
      from: weekAt(32),
      shop: 'market',
      what: 'fruit',
      fruitId: 'sour_cherry',
      strengthPctVol: undefined,
      volumeMl: undefined,
      atHandMl: undefined,
      massG: 4000,
      priceMinor: 2400,
    }),
    line({
      key: 'w40 fruit damson',
      week: 40,
      from: weekAt(40),
      shop: 'hedgerow',
      what: 'fruit',
      fruitId: 'damson',
      strengthPctVol: undefined,
      volumeMl: undefined,
      atHandMl: undefined,
      massG: 3000,
      priceMinor: undefined,
    }),
    line({
      key: 'w41 bottle 500',
      week: 41,
      from: weekAt(41),
      shop: 'supplies',
      what: 'bottle',
      strengthPctVol: undefined,
      volumeMl: undefined,
      atHandMl: undefined,
      bottleSizeMl: 500,
      count: 19,
      priceMinor: 1900,
    }),
  ],
  openMinor: 11_140,
  paidMinor: 0,
  ...changed,
})

const weeks = (from: number, to: number): Supply[] =>
  Array.from({ length: 52 }, (_, week) => {
    if (week < from || week >= to) return 'none'
    if (week === from || week === to - 1) return 'maybe'
    return week > from + 1 && week < to - 2 ? 'plenty' : 'likely'
  })

export const fruitSeason = (changed: Partial<FruitSeason> = {}): FruitSeason => ({
  fruitId: 'damson',
  isAllYear: false,
  spans: [
    {
      from: { early: weekAt(37), likely: weekAt(38), late: weekAt(39) },
      to: { early: weekAt(43), likely: weekAt(44), late: weekAt(45) },
      peakFrom: weekAt(40),
      peakTo: weekAt(42),
    },
  ],
  weeks: weeks(37, 45),
  learned: {
    shiftWeeks: { own: 1.5, library: 0, blended: 1, batchIds: ['damson'] },
    boughtAt: ['2024-09-08T09:00:00Z', '2025-09-14T09:00:00Z'],
  },
  pantryG: 0,
  isOwnKind: true,
  ...changed,
})

export const calendar = (changed: Partial<SeasonCalendar> = {}): SeasonCalendar => ({
  region: { zone: 'northTemperate', ownShiftWeeks: 0 },
  weekStarts: Array.from({ length: 52 }, (_, week) => weekAt(week)),
  fruits: [
    fruitSeason({ fruitId: 'quince', weeks: weeks(43, 51), isOwnKind: false, learned: undefined }),
    fruitSeason(),
    fruitSeason({
      fruitId: 'sour_cherry',
      weeks: weeks(30, 37),
      spans: [
        {
          from: { early: weekAt(30), likely: weekAt(31), late: weekAt(32) },
          to: { early: weekAt(35), likely: weekAt(36), late: weekAt(37) },
        },
      ],
      learned: undefined,
      pantryG: 1500,
    }),
  ],
  ...changed,
})

export const comparison: SeasonComparison = {
  from: weekAt(-52),
  to: weekAt(0),
  earlier: { id: 'before', keptAt: weekAt(-52) },
  kinds: [
    {
      kindId: 'damson',
      now: { fruitG: 3000, volumeMl: 4200, bottles: 8 },
      earlier: { fruitG: 4000, volumeMl: 5200, bottles: 10, startAt: weekAt(-12) },
      happened: {
        fruitG: 3400,
        volumeMl: 1500,
        bottles: 3,
        inJarsMl: 2320,
        spent: { minor: 3100, isComplete: false },
        firstAt: weekAt(-11),
        batchIds: ['damson'],
      },
    },
    {
      kindId: 'quince',
      happened: { fruitG: 900, volumeMl: 0, bottles: 0, inJarsMl: 900, batchIds: [] },
    },
  ],
  money: {
    now: { minor: 14_250, isComplete: true },
    earlier: { minor: 16_000, isComplete: true },
    happened: { minor: 12_480, isComplete: false },
  },
}

export const season: Answers = {
  'fruits.list': fruits,
  'season.wishes': wishes(),
  'season.lastPlan': null,
  'purchases.list': { weekStarts: [], lines: [], openMinor: 0, paidMinor: 0 },
  'season.calendar': calendar(),
  'season.compare': comparison,
}
