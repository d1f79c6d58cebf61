/** The thread in which backups are made and looked into, so that the service answers meanwhile. */
import { parentPort, workerData } from 'node:worker_threads'
import type { BackupFailure } from '../../shared/schemas/safekeeping.ts'
import { BackupUnfit, failureOfSystem } from './backup-file.ts'
import { bookErrorOf, type BookErrorKind } from './book-error.ts'
import { lookIntoBackup, verifyBackup } from './look-into-backup.ts'
import { makeBackup } from './make-backup.ts'
import type { FromThread, Outcome, SafekeepingOrder, Step } from './safekeeping-orders.ts'
import { salvageBook } from './salvage-book.ts'

// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin
const tell = (message: FromThread) => parentPort?.postMessage(message)
const onStep = (step: Step, share: number) => tell({ kind: 'progress', step, share })

async function carryOut(order: SafekeepingOrder): Promise<Outcome> {
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
}

const failures: Readonly<Record<BookErrorKind, BackupFailure>> = {
  bookDamaged: 'bookDamaged',
  bookForeign: 'bookDamaged',
  bookNewer: 'notVerified',
  bookReadOnly: 'folderReadOnly',
  bookBusy: 'internal',
  diskFull: 'diskFull',
}

function failed(error: unknown, { task }: SafekeepingOrder): FromThread {
  const message = error instanceof Error ? (error.stack ?? error.message) : String(error)
  if (error instanceof BackupUnfit) {
    const { problem } = error
    // A fresh copy that is damaged inside comes from a damaged book.
    const isOfBook = task === 'backup' && problem === 'damagedInside'
    return { kind: 'failed', failure: isOfBook ? 'bookDamaged' : 'notVerified', problem, message }
  }
  const inBook = bookErrorOf(error)
  const failure = inBook ? failures[inBook.kind] : failureOfSystem(error)
  return { kind: 'failed', failure: failure ?? 'internal', message }
}

const order = workerData as SafekeepingOrder
try {
  tell({ kind: 'done', outcome: await carryOut(order) })
} catch (error) {
  tell(failed(error, order))
}
