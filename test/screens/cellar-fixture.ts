/** A small cellar to show: two jars, three batches, a lot of bottles, a pantry. */
import type { CellarStatus } from '../../shared/channels.ts'
import { matterOf } from '../../shared/matter.ts'
import type {
  Batch,
  BatchSummary,
  BottleLot,
  Jar,
  JarContents,
  Liquid,
  PantryLot,
} from '../../shared/schemas/cellar.ts'
import type { Fruit } from '../../shared/schemas/fruits.ts'
import type { Answers } from './fake-bridge.ts'
import { spiritTask, task, tasting, today } from './task-fixture.ts'

export const status = (changed: Partial<CellarStatus> = {}): CellarStatus => ({
  host: 'browser',
  version: '0.1.0',
  file: '/home/maker/cellar.ratafia',
  isDemo: false,
  hasDemo: false,
  isEmpty: false,
  settings: {
    locale: 'en-GB',
    units: 'metric',
    temperature: 'celsius',
    strength: 'pctVol',
    language: 'en',
    theme: 'system',
    currency: 'EUR',
    reminders: false,
  },
  ...changed,
})

export const jar = (changed: Partial<Jar> = {}): Jar => ({
  id: 'north',
  name: 'North jar',
  shape: 'jar',
  capacityMl: 4000,
  isRetired: false,
  ...changed,
})

export const liquid = (changed: Partial<Liquid> = {}): Liquid => ({
  volumeMl: 1500,
  strengthPctVol: 32.4,
  sugarGPerL: 180,
  acidGPerL: 9,
  densityKgPerM3: 1020,
  ...changed,
})

export const contents = (changed: Partial<JarContents> = {}): JarContents => ({
  jarId: 'north',
  batchId: 'damson',
  free: matterOf({ ethanolG: 380, waterG: 880, sugarG: 270 }),
  held: matterOf({ ethanolG: 150, waterG: 500, sugarG: 110, pulpG: 90 }),
  bed: matterOf({}),
  liquid: liquid(),
  resting: liquid({ strengthPctVol: 31 }),
  heldMl: 760,
  pulpMl: 60,
  bedMl: 0,
  fillMl: 2320,
  fruits: [{ fruitId: 'damson', massG: 1000 }],
  sugarDraws: 0,
  ...changed,
})

export const batch = (changed: Partial<Batch> = {}): Batch => ({
  id: 'damson',
  name: 'Hedge damson',
  colour: '#5a1f45',
  note: '',
  openedAt: '2026-09-10T08:00:00Z',
  ...changed,
})

export const summary = (changed: Partial<BatchSummary> = {}): BatchSummary => ({
  batch: batch(),
  stage: 'steeping',
  startedAt: '2026-09-10T08:00:00Z',
  jars: [contents()],
  bottleLots: [],
  liquid: liquid(),
  fruitIds: ['damson'],
  next: task(),
  moveCount: 5,
  ...changed,
})

export const bottleLot = (changed: Partial<BottleLot> = {}): BottleLot => ({
  id: 'raspberry-lot',
  batchId: 'raspberry',
  name: 'Raspberry 2024',
  bottledAt: '2024-09-08T10:00:00Z',
  bottleSizeMl: 500,
  filledCount: 12,
  count: 7,
  places: [{ shelfId: null, count: changed.count ?? 7 }],
  liquid: liquid({ volumeMl: 3500, strengthPctVol: 28, sugarGPerL: 210 }),
  ...changed,
})

export const spiritLot = (changed: Partial<PantryLot> = {}): PantryLot => ({
  id: 'spirit',
  goods: { kind: 'spirit', strengthPctVol: 96 },
  boughtAt: '2026-09-01T08:00:00Z',
  boughtMassG: 1614,
  massG: 807,
  boughtVolumeMl: 2000,
  volumeMl: 1000,
  priceMinor: 3800,
  ...changed,
})

export const damson: Fruit = {
  id: 'damson',
  nameEn: 'Damson',
  namePl: 'Damaszka',
  latin: 'Prunus domestica subsp. insititia',
  kind: 'stoneFruit',
  composition: {
    edibleFraction: 0.9,
    waterPct: 80,
    sugarPct: 10,
    acidPct: 2,
    solublesPct: 3,
    pulpPct: 5,
  },
  bulkDensityKgPerL: 0.65,
  kineticClass: 'waxySkin',
  drainedLPerKg: 0.8,
  pressedLPerKg: 0.4,
  preparation: '',
  hazards: [],
  sources: {},
}

const raspberry = summary({
  batch: batch({ id: 'raspberry', name: 'Raspberry, north hedge', colour: '#b32448' }),
  stage: 'resting',
  startedAt: '2024-07-10T08:00:00Z',
  jars: [],
  bottleLots: [bottleLot()],
  liquid: liquid({ volumeMl: 3500, strengthPctVol: 28, sugarGPerL: 210 }),
  fruitIds: [],
  next: tasting({ due: '2024-12-08T10:00:00Z' }),
})

const quince = summary({
  batch: batch({ id: 'quince', name: 'Quince and ginger', colour: '#d9a441' }),
  stage: 'layered',
  startedAt: '2026-11-22T09:00:00Z',
  jars: [],
  liquid: liquid({ volumeMl: 900, strengthPctVol: 0, sugarGPerL: 640 }),
  fruitIds: [],
  next: spiritTask(),
})

export const batches = [summary(), raspberry, quince]

const massOfOne = matterOf({ ethanolG: 1000, waterG: 2000, sugarG: 500 })

export const cellar: Answers = {
  'cellar.status': status(),
  'fruits.list': [damson],
  'jars.list': [
    { jar: jar(), contents: contents() },
    { jar: jar({ id: 'south', name: 'South jar', shape: 'demijohn', capacityMl: 10_000 }) },
  ],
  'pantry.list': [spiritLot()],
  'bottles.list': [bottleLot()],
  'batches.list': batches,
  'today.list': today({ batches }),
  'cellar.costs': {
    glassMl: 40,
    places: [
      {
        place: 'bottles:raspberry-lot',
        cost: { minor: 4550, isComplete: true },
        amount: 7,
        unit: 'bottles',
        perBottle: 650,
        perLitre: 1300,
        perGlass: 52,
      },
      {
        place: 'jar:north',
        cost: { minor: 2100, isComplete: false },
        amount: 1500,
        unit: 'ml',
        perLitre: 1400,
        perGlass: 56,
      },
    ],
    spent: { minor: 9000, isComplete: false },
    drunk: { minor: 0, isComplete: true },
    given: { minor: 0, isComplete: true },
    wasted: { minor: 0, isComplete: true },
  },
  'cellar.balance': {
    bought: massOfOne,
    tap: matterOf({}),
    inPantry: matterOf({ ethanolG: 400 }),
    inJars: matterOf({ ethanolG: 600, waterG: 2000, sugarG: 500 }),
    inBottles: matterOf({}),
    drunk: matterOf({}),
    given: matterOf({}),
    wasted: matterOf({}),
    broughtIn: matterOf({}),
    corrected: matterOf({}),
    missing: matterOf({}),
  },
}
