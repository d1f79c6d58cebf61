/** Batches: the list, opening one, and the page and curve of one, read off the ledger. */
import { allBatches, batchById, putBatch } from '../../cellar/batch-store.ts'
import { allJars } from '../../cellar/jar-store.ts'
import {
  curveOf,
  densityOfSpirit,
  describeJar,
  fruitOf,
  jarSpans,
  stepsOf,
  yieldOf,
  type CellarState,
  type Step,
} from '../../engine/index.ts'
import type { Batch, BatchYield, Caution, StageBand } from '../../../shared/schemas/cellar.ts'
import { batchSummary, cautionsOf, interpretationOf, jarsOf, ledgerStep } from '../describe.ts'
import { instant } from '../lot-rows.ts'
import { notFound, ServiceError } from '../service-error.ts'
import type { Session } from '../session.ts'
import { nowMs, type ChannelsOf, type Handlers } from './handler.ts'

function batchOf(session: Session, id: string): Batch {
  const batch = batchById(session.book, id)
  if (!batch) throw notFound('batch', id)
  return batch
}

function bands(session: Session, batchId: string): StageBand[] {
  const found = session.ledger.folded.cellar.batches.get(batchId)?.bands ?? []
  return found
    .map(({ stage, fromMs }, index) => ({
      stage,
      from: instant(fromMs),
      to: instant(found[index + 1]?.fromMs ?? Math.max(fromMs, nowMs(session))),
    }))
    .filter(({ from, to }) => from !== to)
}

/** Grams of ethanol in a millilitre at 20 °C: OIML R 22 at mass fraction 1. */
const ethanolGPerMl = densityOfSpirit({ massFraction: 1, temperatureC: 20 }) / 1000

function batchYield(own: readonly Step[], cellar: CellarState, batchId: string): BatchYield {
  const found = yieldOf(own, cellar, batchId)
  const { fruitG, sugarAddedG, ethanolPouredG, ethanolInHandG, liquidMl, bottledMl } = found
  return {
    fruitG,
    sugarAddedG,
    ethanolPouredMl: ethanolPouredG / ethanolGPerMl,
    ...(ethanolPouredG > 0 && { ethanolRecoveredFraction: ethanolInHandG / ethanolPouredG }),
    liquidMl,
    bottledMl,
  }
}

function cautions(session: Session, batchId: string): Caution[] {
  const now = nowMs(session)
  const jars = allJars(session.book)
  const { cellar } = session.ledger.folded
  const ofJars = [...jarsOf(cellar, batchId, now)].flatMap(([id, jar]) =>
    cautionsOf(id, jar, jars, now),
  )
  const ofFruit = (cellar.batches.get(batchId)?.fruitIds ?? [])
    .filter((fruitId) => fruitOf(fruitId).hazards.length > 0)
    .map((fruitId): Caution => ({ code: 'fruitHazard', severity: 'note', batchId, fruitId }))
  return [...ofJars, ...ofFruit]
}

export const batchHandlers: Handlers<ChannelsOf<'batches'>> = {
  'batches.list': (session) =>
    allBatches(session.book).map((batch) =>
      batchSummary(session.ledger.folded.cellar, batch, nowMs(session)),
    ),
  'batches.open': ({ book }, batch) => {
    if (batchById(book, batch.id))
      throw new ServiceError('alreadyThere', `batch ${batch.id} exists`, { id: batch.id })
    book.transaction(() => putBatch(book, batch)).immediate()
    return batch
  },
  'batches.change': (session, { id, name, colour, note }) => {
    const batch = batchOf(session, id)
    const changed = {
      ...batch,
      name: name ?? batch.name,
      colour: colour ?? batch.colour,
      note: note ?? batch.note,
    }
    session.book.transaction(() => putBatch(session.book, changed)).immediate()
    return changed
  },
  'batches.page': (session, { batchId }) => {
    const batch = batchOf(session, batchId)
    const { cellar, steps } = session.ledger.folded
    const own = stepsOf(steps, batchId)
    const now = nowMs(session)
    return {
      summary: batchSummary(cellar, batch, now),
      steps: own.map(ledgerStep),
      bands: bands(session, batchId),
      jarSpans: jarSpans(own, batchId, now).map((span) => ({
        jarId: span.jarId,
        batchId,
        stage: span.stage,
        from: instant(span.fromMs),
        to: instant(span.toMs ?? now),
        isOpen: span.toMs === undefined,
        contents: describeJar(span.jarId, span.last),
      })),
      yield: batchYield(own, cellar, batchId),
      cautions: cautions(session, batchId),
    }
  },
  'batches.curve': (session, { batchId, points }) => {
    batchOf(session, batchId)
    const own = stepsOf(session.ledger.folded.steps, batchId)
    const curves = curveOf(own, batchId, nowMs(session), points)
    return {
      series: [...curves].map(([key, samples]) => ({
        key,
        points: samples.map(({ atMs, ...sample }) => ({ at: instant(atMs), ...sample })),
      })),
      bands: bands(session, batchId),
      readings: own.flatMap((step) => {
        const { move, id } = step.recorded
        const interpretation = interpretationOf(step)
        if (move.kind !== 'read' || !interpretation) return []
        const isUsed = interpretation.doubts.length === 0 || move.isConfirmed === true
        return [{ moveId: id, jarId: move.jarId, at: move.at, interpretation, isUsed }]
      }),
    }
  },
}
