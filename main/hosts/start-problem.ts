/** Why Ratafia cannot start, in words for whoever started it: no screen is there yet to say so. */
import { bookErrorOf } from '../cellar/book-error.ts'
import { ServiceError } from '../service/service-error.ts'
import type { StartProblemCode } from './words/en.ts'
import { hostWords } from './words/host-words.ts'

export class StartProblem extends Error {
  override name = 'StartProblem'
  readonly code: StartProblemCode
  /** `where` is the file, or the port. */
  constructor(code: StartProblemCode, where: string, options?: ErrorOptions) {
    super(hostWords().problem[code](where), options)
    this.code = code
  }
}

/** The problem behind an error met while starting; undefined for anything else, which is a bug. */
export function startProblemOf(error: unknown, bookFile: string): StartProblem | undefined {
  if (error instanceof StartProblem) return error
  const bookError = bookErrorOf(error)
  if (bookError) return new StartProblem(bookError.kind, bookFile, { cause: error })
  if (error instanceof ServiceError && (error.code === 'demoBusy' || error.code === 'demoSpoilt'))
    return new StartProblem(error.code, bookFile, { cause: error })
  const code = error instanceof Error && 'code' in error ? error.code : undefined
  if (code === 'EACCES' || code === 'EROFS' || code === 'ENOTDIR' || code === 'EEXIST')
    return new StartProblem('noFolder', bookFile, { cause: error })
  return undefined
}
