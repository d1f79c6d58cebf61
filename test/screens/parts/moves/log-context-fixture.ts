/** A cellar for the forms: two charged jars, an extract, an empty demijohn and a flask too small. */
import type {
  LogContext,
  StandingJar,
} from '../../../../renderer/parts/moves/drafts/log-context.ts'
import { bottleLot, contents, jar, liquid, spiritLot } from '../../cellar-fixture.ts'

export const at = '2026-11-25T18:00:00.000Z'

export const north: StandingJar = { jar: jar(), contents: contents() }
export const south: StandingJar = {
  jar: jar({ id: 'south', name: 'South jar' }),
  contents: contents({ jarId: 'south', liquid: liquid({ volumeMl: 1300 }) }),
}
export const extract: StandingJar = {
  jar: jar({ id: 'extract', name: 'Carboy', shape: 'demijohn', capacityMl: 5000 }),
  contents: contents({
    jarId: 'extract',
    fruits: [],
    liquid: liquid({ volumeMl: 900 }),
    fillMl: 900,
  }),
}
export const demijohn: StandingJar = {
  jar: jar({ id: 'demijohn', name: 'Demijohn', shape: 'demijohn', capacityMl: 5000 }),
}
export const flask: StandingJar = {
  jar: jar({ id: 'flask', name: 'Flask', shape: 'flask', capacityMl: 2000 }),
}

export function logContext(changed: Partial<LogContext> = {}): LogContext {
  let serial = 0
  return {
    batchId: 'damson',
    jars: [north, south, demijohn, flask],
    pantry: [
      spiritLot(),
      {
        id: 'sugar',
        goods: { kind: 'sweetener', sweetenerId: 'sugar' },
        boughtAt: '2026-09-01T08:00:00Z',
        boughtMassG: 5000,
        massG: 3400,
      },
    ],
    bottleLots: [bottleLot({ id: 'damson-lot', batchId: 'damson' })],
    now: () => at,
    newId: () => `new-${(serial += 1)}`,
    ...changed,
  }
}
