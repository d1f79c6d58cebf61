/** Why a file cannot be brought in; whatever goes wrong while one is read is told as one of these. */
import type { ExportProblem } from '../../../shared/schemas/exports.ts'
import { bookErrorOf } from '../book-error.ts'
import { ZipProblem, type ZipProblemKind } from '../zip-reader.ts'

export class ExportUnfit extends Error {
  override name = 'ExportUnfit'
  readonly problem: ExportProblem
  constructor(problem: ExportProblem, message: string, options?: ErrorOptions) {
    super(message, options)
    this.problem = problem
  }
}

const ofZip: Readonly<Record<ZipProblemKind, ExportProblem>> = {
  notAZip: 'notAnExport',
  cutShort: 'cutShort',
  damaged: 'damagedInside',
  unsafeNames: 'unsafeNames',
}

export async function asExport<T>(read: () => Promise<T>): Promise<T> {
  try {
    return await read()
  } catch (error) {
    if (error instanceof ZipProblem)
      throw new ExportUnfit(ofZip[error.kind], error.message, { cause: error })
    throw error
  }
}

/** A row that the book's own schema refuses is no row of a book; a full disk stays what it is. */
export function asRow<T>(where: string, write: () => T): T {
  try {
    return write()
  } catch (error) {
    if (isConstraint(error))
      throw new ExportUnfit('notBySchema', `${where}: ${error.message}`, { cause: error })
    throw bookErrorOf(error) ?? error
  }
}

/** A number that orders the rows and is none is a mismatch; the rest are constraints. */
const isConstraint = (error: unknown): error is Error =>
  error instanceof Error &&
  'code' in error &&
  /^SQLITE_(CONSTRAINT|MISMATCH|TOOBIG)/.test(String(error.code))
