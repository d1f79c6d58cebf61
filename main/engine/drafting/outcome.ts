/**
 * What does a draft come to?
 *
 * The draft's moves go through the ledger's own fold and steeping model, as real ones do; all that
 * is told here is read off its steps. In: the numbers a maker turns, and the fruit library. Out:
 * stages with what flowed into them, vessels with how full they get, bottles, dates, purchases,
 * cost, and warnings. A move that cannot be is a warning, not an error.
 * Leaves out: what else stands in the maker's cellar (the plan of a started batch sees that).
 */
import { noMatter } from '../../../shared/matter.ts'
import type { DraftOutcome, DraftSpec, PlannedVessel } from '../../../shared/schemas/drafts.ts'
import type { Fruit } from '../../../shared/schemas/fruits.ts'
import { msPerDay } from '../../../shared/spans-of-time.ts'
import { describeJar, describeLiquid, freeVolumeMl } from '../ledger/jar-liquid.ts'
import { chainStages } from './chain-stages.ts'
import { sized } from './draft-vessels.ts'
import { cautionWarnings, fillWarnings, refusedWarnings, type Judging } from './draft-warnings.ts'
import type { DraftFacts } from './buying.ts'
import { draftBatchId } from './planned-moves.ts'
import { costOf, purchasesOf } from './purchases.ts'
import { runDraft, type DraftRun } from './run-draft.ts'
import { leadingFruit, windowsOf, windowWarnings } from './windows.ts'

const daysPerMonth = 30.44
const daysPerYear = 365.25

export function outcomeOf(spec: DraftSpec, facts: DraftFacts): DraftOutcome {
  const run = runDraft(spec, facts)
  const moves = run.moves.map(({ move }) => move)
  const { planned, folded } = run
  const stages = chainStages(folded.steps, draftBatchId, planned.bottlingAtMs)
  const vessels = vesselsOf(run)
  const fruit = leadingFruit(spec, facts.fruitOf)

  const lot = [...folded.cellar.bottles.values()][0]
  const bottles = lot?.filledCount ?? 0
  const left = folded.cellar.jars.get(planned.lastJar.jarId)
  const finished = describeLiquid(lot?.perBottle ?? left?.bodies.free ?? noMatter)
  const windows = windowsOf(spec, fruit, finished)
  const judging: Judging = { run, stages, vessels, facts }
  const purchases = purchasesOf(spec, moves, bottles)
  return {
    moves,
    stages,
    vessels,
    windows,
    warnings: [
      ...refusedWarnings(judging),
      ...fillWarnings(judging),
      ...cautionWarnings(judging),
      ...windowWarnings(windows, stages),
    ],
    ...(finished && { finished }),
    bottles,
    bottledMl: bottles * spec.bottleSizeMl,
    remainderMl: left ? freeVolumeMl(left) : 0,
    ...(lot && laterDates(planned.bottlingAtMs, fruit)),
    purchases,
    ...costOf(purchases),
  }
}

function laterDates(bottledMs: number, { restMonths, drinkByYears }: Fruit) {
  const after = (days: number) => new Date(Math.round(bottledMs + days * msPerDay)).toISOString()
  return {
    bottledAt: after(0),
    ...(restMonths && { readyAt: after(restMonths.typical * daysPerMonth) }),
    ...(drinkByYears && { drinkBy: after(drinkByYears.typical * daysPerYear) }),
  }
}

/** Every vessel that held something, with the highest it was filled. */
function vesselsOf({ planned, folded }: DraftRun): PlannedVessel[] {
  const peaks = new Map<string, number>()
  for (const { effect } of folded.steps)
    for (const [jarId, jar] of effect.jars ?? [])
      if (jar) peaks.set(jarId, Math.max(peaks.get(jarId) ?? 0, describeJar(jarId, jar).fillMl))
  const { steep, extract, married } = planned.jars
  const extracts = folded.steps
    .filter(({ recorded: { move } }) => move.kind === 'drawOff' || move.kind === 'press')
    .map((_, index) => extract(Math.floor(index / steep.length)))
  const seen = new Set<string>()
  return [...steep, ...extracts, married].flatMap((jar) => {
    const peakFillMl = peaks.get(jar.jarId)
    if (peakFillMl === undefined || seen.has(jar.jarId)) return []
    seen.add(jar.jarId)
    return [sized(jar, peakFillMl)]
  })
}
