/** Batches: the list, opening one, and the page and curve of one, read off the ledger. */
import { allBatches, batchById, putBatch } from '../../cellar/batch-store.ts'
import { allJars } from '../../cellar/jar-store.ts'
import {
  densityOfSpirit,
  describeJar,
  jarSpans,
  stepsOf,
  yieldOf,
  type CellarState,
  type Step,
} from '../../engine/index.ts'
import type { BatchYield, Caution } from '../../../shared/schemas/cellar.ts'
import { batchSummary, cautionsOf, jarsOf, ledgerStep } from '../describe.ts'
import { instant } from '../lot-rows.ts'
import { nextTasks } from '../next-tasks.ts'
import { scheduledTasks } from '../schedule.ts'
import { ServiceError } from '../service-error.ts'
import { bandsOfBatch, batchOf } from '../one-batch.ts'
import type { Session } from '../session.ts'
import { curveHandlers } from './curves.ts'
import { nowMs, type ChannelsOf, type Handlers } from './handler.ts'

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
  const { fruits } = session
  const { cellar } = session.ledger.folded
  const ofJars = [...jarsOf(cellar, batchId, now)].flatMap(([id, jar]) =>
    cautionsOf(id, jar, { jars, fruits }, now),
  )
  const ofFruit = (cellar.batches.get(batchId)?.fruitIds ?? [])
    .filter((fruitId) => fruits.fruitOf(fruitId).hazards.length > 0)
    .map((fruitId): Caution => ({ code: 'fruitHazard', severity: 'note', batchId, fruitId }))
  return [...ofJars, ...ofFruit]
}

export const batchHandlers: Handlers<ChannelsOf<'batches'>> = {
  'batches.list': (session) => {
    const next = nextTasks(session)
    const now = nowMs(session)
    return allBatches(session.book).map((batch) =>
      batchSummary(session, batch, { nowMs: now, next: next.get(batch.id) }),
    )
  },
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
    const next = nextTasks(session, scheduledTasks(session, batchId))
    return {
      summary: batchSummary(session, batch, { nowMs: now, next: next.get(batchId) }),
      steps: own.map(ledgerStep),
      bands: bandsOfBatch(session, batchId),
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
  ...curveHandlers,
}
