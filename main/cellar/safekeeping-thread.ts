/** The thread in which backups are made and looked into, so that the service answers meanwhile. */
import { BackupUnfit } from './backup-file.ts'
import { failureOf, messageOf } from './failure-of.ts'
import { lookIntoBackup, verifyBackup } from './look-into-backup.ts'
import { makeBackup } from './make-backup.ts'
import { runAsThread, type ThreadWork } from './run-as-thread.ts'
import type { BackupTask } from './safekeeping-orders.ts'
import { salvageBook } from './salvage-book.ts'

const work: ThreadWork<BackupTask> = {
  carryOut: async (order, onStep) => {
    switch (order.task) {
      case 'backup':
        return { backup: await makeBackup(order, onStep) }
      case 'look':
        return { preview: await lookIntoBackup(order.file, { ...order, onStep }) }
      case 'unpack':
        await verifyBackup(order.file, { into: order.into, onStep })
        return {}
      case 'salvage': {
        const onTable = (done: number, of: number) => onStep('copying', done / of)
        return { salvage: salvageBook(order.damagedFile, { into: order.into, onTable }) }
      }
    }
  },
  failed: (error, { task }) => {
    const message = messageOf(error)
    if (!(error instanceof BackupUnfit))
      return { kind: 'failed', failure: failureOf(error), message }
    const { problem } = error
    // A fresh copy that is damaged inside comes from a damaged book.
    const isOfBook = task === 'backup' && problem === 'damagedInside'
    return { kind: 'failed', failure: isOfBook ? 'bookDamaged' : 'notVerified', problem, message }
  },
}

await runAsThread(work)
