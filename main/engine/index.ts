/** The engine's face: what the cellar, the service and the papers may import. */
export { DomainError } from './domain-error.ts'
export { densityOfSpirit } from './alcoholometry/density-of-spirit.ts'
export {
  massFractionOfProof,
  proofOfStrength,
  strengthOfProof,
  trueProof,
  volumeAtSixtyFahrenheit,
} from './alcoholometry/proof.ts'
export { reduce, reduceByWeight, reduceToVolume } from './alcoholometry/reduce.ts'
export { massFractionOfDensity, strengthOfDensity } from './alcoholometry/strength-of-density.ts'
export { massFractionOfStrength, strengthOfMassFraction } from './alcoholometry/strength.ts'
export { trueStrength } from './alcoholometry/true-strength.ts'
export { measure } from './bench/measure.ts'
export type {
  AgeingFruit,
  AgeingLot,
  AgeingWindowFound,
  MsBand,
  Stay,
  TastedVerdict,
} from './ageing/ageing-lot.ts'
export { forecastStock } from './ageing/stock-forecast.ts'
export type {
  FirstToDrink,
  KindStockFound,
  StockChange,
  StockFound,
  StockNow,
  StockQuestion,
  WaitingLot,
} from './ageing/stock-question.ts'
export { ageingWindow } from './ageing/ageing-window.ts'
export { colourStabilityOf, type ColourStability } from './ageing/colour-stability.ts'
export {
  anthocyaninHalfLifeWeeks,
  colourLeft,
  halfLifeAt,
  type ColourQuestion,
} from './ageing/colour.ts'
export { drinkFirst } from './ageing/drink-first.ts'
export { bestByOnceOpened } from './ageing/opened-bottle.ts'
export { usualStorage } from './ageing/storage.ts'
export { alongLedger } from './ledger/along-ledger.ts'
export { fold, batchIdOf, inLedgerOrder, type Folded, type Step } from './ledger/fold.ts'
export { balance } from './ledger/balance.ts'
export { curveOf, ethanolMl, sampleTimes, type CurveSample } from './ledger/batch-curve.ts'
export { jarSpans, stepsOf, yieldOf, type Span } from './ledger/batch-story.ts'
export {
  bottlesPlace,
  isStanding,
  jarPlace,
  lotPlace,
  matterInBottles,
  openedPlace,
  settledJar,
  type BottleState,
  type CellarState,
  type Effect,
  type JarState,
  type LotState,
  type OpenedState,
} from './ledger/cellar-state.ts'
export { costsIn, costsOf, openPurses, payStep, type Costs } from './ledger/cost.ts'
export { describeJar, describeLiquid } from './ledger/jar-liquid.ts'
export { fruitsInBottles } from './ledger/fruits-in-bottles.ts'
export { lineageBack, lineageForward } from './ledger/lineage.ts'
export type {
  FruitInBottles,
  LineageFound,
  LineageLink,
  LineagePlace,
  LineageShare,
} from './ledger/lineage-found.ts'
export { wholeMatter } from './ledger/moves/jar-access.ts'
export { takePouring, type Pouring } from './ledger/pourings.ts'
export { batchTasks } from './schedule/batch-tasks.ts'
export type { BatchToSchedule, DrawForecast } from './schedule/batch-to-schedule.ts'
export { addDays, dayOf, hourOf } from './schedule/day-of.ts'
export { fadingTasks, type FadingBottles } from './schedule/lot-tasks.ts'
export { nextTask } from './schedule/next-task.ts'
export type { ScheduledTask } from './schedule/scheduled-task.ts'
export { byDay, byNeed, isHidden, toldTask } from './schedule/tell-tasks.ts'
export { draftOfBatch } from './drafting/draft-of-batch.ts'
export { compareStages, followPlan } from './drafting/follow-plan.ts'
export { nextPlanned } from './drafting/match-plan.ts'
export { outcomeOf } from './drafting/outcome.ts'
export { scaledDraft } from './drafting/scale-draft.ts'
export { solveDraft } from './drafting/solve-draft.ts'
export { usualDraft } from './drafting/usual-draft.ts'
export { flammablePctVol, jarCautions } from './cautions/jar-cautions.ts'
export { openedSpirit } from './cautions/opened-spirit.ts'
export { fruitLibrary, fruitOf, sweetenerComposition } from './fruit/fruit-library.ts'
export { fruitTissue, learnedTissue } from './fruit/fruit-tissue.ts'
export { keptFruit } from './fruit/kept-fruit.ts'
export { learn } from './fruit/learn.ts'
export { measuredHold } from './fruit/measured-hold.ts'
export { explainSource } from './fruit/sources.ts'
export { acidPart, acidPlace, tapPlace, waterPart, type BlendPart } from './marrying/blend-part.ts'
export type { LinearProgram, SolveLinear, Variable } from './marrying/linear-program.ts'
export { marry, type MarryQuestion } from './marrying/marry.ts'
export { mend } from './marrying/mend.ts'
export { compareSeasons, seasonBefore } from './season/compare-seasons.ts'
export { fruitCalendar } from './season/fruit-calendar.ts'
export { freshPurchases } from './season/learned-dates.ts'
export { planSeason, type PlanOptions, type Progress } from './season/plan-season.ts'
export type { KnownRecipe, SeasonFacts } from './season/season-facts.ts'
export type { IntegerSolved, SolveInteger } from './season/solve-season.ts'
export { standingOf } from './season/standing.ts'
export { densityByWeighing, flaskByWater } from './readings/density-by-weighing.ts'
export { densityOfHydrometer } from './readings/hydrometer.ts'
export { interpretReading } from './readings/interpret.ts'
export { brixAt20 } from './readings/refractometer.ts'
export { strengthByBoilOff } from './readings/boil-off.ts'
export { strengthByTwoInstruments } from './readings/two-instruments.ts'
export { bandedCurve, ensembleOf, type Belief, type Ensemble } from './steeping/banded-curve.ts'
export { bandsOf, noNews, spreadOf, tuningOf } from './steeping/beliefs.ts'
export { fitSteeping, type FitReading, type SteepingFit } from './steeping/fit-steeping.ts'
export { forecastJars, type Arrival, type JarForecastFound } from './steeping/forecast.ts'
export { replayOf, type Replay } from './steeping/replay.ts'
export { steep } from './steeping/steep.ts'
export { sugarDraw } from './steeping/sugar-draw.ts'
export { uptakeFraction } from './steeping/uptake-fraction.ts'
export {
  handledFromNow,
  handledFromStart,
  outcomesAt,
  type OutcomeFound,
} from './steeping/what-if.ts'
export { apparentStrength } from './solution/apparent-strength.ts'
export { composeSolution } from './solution/compose-solution.ts'
export { densityOfSucrose } from './solution/density-of-sucrose.ts'
export { densityOfWater } from './solution/density-of-water.ts'
export { describeSolution } from './solution/describe-solution.ts'
export { energyOf } from './solution/energy.ts'
export {
  invertSugar,
  isWithinLabelTolerance,
  labelTolerancePctVol,
  legalCategory,
  legalRules,
} from './solution/legal-category.ts'
export { liquidVolumeMl } from './solution/liquid-volume.ts'
export {
  brixOfRefractiveIndex,
  refractiveIndex,
  refractiveIndexOfBrix,
} from './solution/refraction.ts'
export { standardDrinks } from './solution/standard-drinks.ts'
export { sucroseSolubility } from './solution/sucrose-solubility.ts'
export { sweeten } from './solution/sweeten.ts'
export { extractOfDensity, massFractionOfSyrup } from './solution/syrup-of-density.ts'
export { volumeAt20 } from './solution/volume-at-20.ts'
