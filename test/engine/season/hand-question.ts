/** A question of round numbers, small enough to be reckoned by hand. */
import type { SeasonQuestion, Way } from '../../../main/engine/season/season-program.ts'

/** 2 L from a kg, over 2 L to steep and 1.6 L to settle; weeks 0 to 4, and 3 to 6. */
export const freshWay: Way = {
  kindIndex: 0,
  source: 'fresh',
  starts: [
    { week: 2, weeksFromPlenty: 0 },
    { week: 9, weeksFromPlenty: 3 },
  ],
  mostKg: Infinity,
  lPerKg: 2,
  steepMlPerKg: 2000,
  settleMlPerKg: 1600,
  emptiedWeek: 4,
  settleFromWeek: 3,
  settleToWeek: 6,
  fruitMinorPerKg: 100,
  spiritMlPerKg: [500],
  sweetenerGPerKg: [100],
}

/** The same kind from 1.5 kg in the pantry, with more room to settle than to steep. */
export const pantryWay: Way = {
  ...freshWay,
  source: 'pantry',
  starts: [{ week: 20, weeksFromPlenty: 0 }],
  mostKg: 1.5,
  steepMlPerKg: 1600,
  settleMlPerKg: 2000,
  fruitMinorPerKg: 0,
}

/** Another kind, dear and soon done. */
export const dearWay: Way = {
  ...freshWay,
  kindIndex: 1,
  starts: [{ week: 30, weeksFromPlenty: 0 }],
  lPerKg: 1,
  steepMlPerKg: 1000,
  settleMlPerKg: 1000,
  emptiedWeek: 2,
  settleFromWeek: 2,
  settleToWeek: 3,
  fruitMinorPerKg: 800,
  spiritMlPerKg: [1000],
  sweetenerGPerKg: [0],
}

/**
 * A litre costs 700 of the first kind bought fresh ((100 + 500 × 2 + 100 × 1) / 2 + 2 bottles at
 * 50), 650 from the pantry, and 3000 of the second (800 + 1000 × 2 + 4 bottles at 50).
 */
export const handQuestion = (change: Partial<SeasonQuestion> = {}): SeasonQuestion => ({
  kinds: [
    {
      kindId: 'cheap',
      tiers: [
        { priority: 'must', isSure: true, volumeMl: 1000 },
        { priority: 'should', isSure: false, volumeMl: 3000 },
      ],
      wantedL: 4,
      bottleSizeMl: 500,
    },
    {
      kindId: 'dear',
      tiers: [{ priority: 'could', isSure: true, volumeMl: 2000 }],
      wantedL: 2,
      bottleSizeMl: 250,
    },
  ],
  ways: [freshWay, pantryWay, dearWay],
  classes: [
    { capacityMl: 2000, isWide: true, jarIds: ['a', 'b'] },
    { capacityMl: 4000, isWide: false, jarIds: ['c'] },
  ],
  taken: [],
  mustSettle: [],
  cleaningWeeks: 1,
  spirits: [{ atHand: 500, minorPerUnit: 2, mayBuy: true }],
  sweeteners: [{ atHand: 100, minorPerUnit: 1, mayBuy: true }],
  minorPerBottle: 50,
  moneyMinor: undefined,
  shelfBottles: undefined,
  ...change,
})
