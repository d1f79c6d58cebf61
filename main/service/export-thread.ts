/** The thread in which exports are made and looked into; its tables for people are papers. */
import { failureOf, messageOf } from '../cellar/failure-of.ts'
import { ExportUnfit } from '../cellar/open-export/export-unfit.ts'
import { lookIntoExport } from '../cellar/open-export/look-into-export.ts'
import { makeExport } from '../cellar/open-export/make-export.ts'
import { readExport } from '../cellar/open-export/read-export.ts'
import { runAsThread, type ThreadWork } from '../cellar/run-as-thread.ts'
import type { ExportTask } from '../cellar/safekeeping-orders.ts'
import { peopleTables } from './people-tables.ts'

const work: ThreadWork<ExportTask> = {
  carryOut: async (order, onStep) => {
    switch (order.task) {
      case 'export':
        return { exported: await makeExport(order, { onStep, peopleTables }) }
      case 'lookIntoExport':
        return { importPreview: await lookIntoExport(order.file, { ...order, onStep }) }
      case 'readExport':
        await readExport(order.file, { into: order.into, onStep })
        return {}
    }
  },
  failed: (error) => {
    const message = messageOf(error)
    return error instanceof ExportUnfit
      ? { kind: 'failed', failure: 'notVerified', exportProblem: error.problem, message }
      : { kind: 'failed', failure: failureOf(error), message }
  },
}

await runAsThread(work)
