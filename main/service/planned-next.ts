/** What comes next for a batch that follows a plan: the plan's own day instead of the usual one. */
import { planOfBatch } from '../cellar/plan-store.ts'
import { nextPlanned, stepsOf } from '../engine/index.ts'
import type { NextStep } from '../../shared/schemas/cellar.ts'
import type { Move } from '../../shared/schemas/moves.ts'
import { msPerDay } from '../../shared/spans-of-time.ts'
import { instant } from './lot-rows.ts'
import type { Session } from './session.ts'

/** A planned day may slip by so much before it is late. */
const graceDays = 7

export function plannedNext(
  { book, ledger }: Pick<Session, 'book' | 'ledger'>,
  batchId: string,
  usual: NextStep,
): NextStep {
  const plan = planOfBatch(book, batchId)
  if (!plan) return usual
  const { cellar, steps } = ledger.folded
  const real = stepsOf(steps, batchId).map(({ recorded }) => recorded)
  const move = nextPlanned(plan, real, (planned) => actionOf(planned) !== undefined)
  const planned = move && actionOf(move)
  if (!move || !planned) return usual
  const jarIds = jarsOf(move).filter((jarId) => cellar.jars.get(jarId)?.batchId === batchId)
  const isUnderSugar = jarIds.some((jarId) => cellar.jars.get(jarId)?.fruit?.isUnderSugar)
  const action = planned === 'drawOff' && isUnderSugar ? 'pourOffSugarDraw' : planned
  const dueMs = Date.parse(move.at)
  return {
    action,
    due: move.at,
    early: instant(dueMs - msPerDay),
    late: instant(dueMs + graceDays * msPerDay),
    jarIds: jarIds.length > 0 || action !== usual.action ? jarIds : usual.jarIds,
  }
}

/** The step that a move is logged as; undefined where it goes with one of the others. */
function actionOf({ kind }: Move): NextStep['action'] | undefined {
  switch (kind) {
    case 'pourSpirit':
      return 'addSpirit'
    case 'charge':
    case 'drawOff':
    case 'coverWithSugar':
    case 'marry':
    case 'filter':
    case 'bottle':
      return kind
    default:
      return undefined
  }
}

function jarsOf(move: Move): string[] {
  if (move.kind === 'marry') return move.parts.map(({ jarId }) => jarId)
  if ('fromJarId' in move) return [move.fromJarId]
  return 'jarId' in move && move.jarId !== undefined ? [move.jarId] : []
}
