/** Folders and files that a page names. */
import { isAbsolute } from 'node:path'
import { ServiceError } from './service-error.ts'

/** What a relative path stands for would depend on where the program was started. */
export function mustBePath(path: string): string {
  if (!isAbsolute(path))
    throw new ServiceError('badInput', 'a folder or file is named from its root', { path })
  return path
}
