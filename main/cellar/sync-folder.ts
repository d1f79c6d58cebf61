/** A rename is on disk only once the folder that holds the name is. */
import { closeSync, fsyncSync, openSync } from 'node:fs'

export function syncFolder(folder: string): void {
  try {
    const handle = openSync(folder, 'r')
    try {
      fsyncSync(handle)
    } finally {
      closeSync(handle)
    }
  } catch {
    // Not every system lets a folder be opened: it is then written in the system's own time.
  }
}
