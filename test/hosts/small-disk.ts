/** A disk of a few megabytes in memory, to be filled or locked; only root can have one. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, statfsSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

export interface SmallDisk {
  readonly folder: string
  /** Leaves so many bytes free. */
  fill: (freeBytes: number) => void
  makeRoom: () => void
  setReadOnly: (isReadOnly: boolean) => void
  remove: () => void
}

/** Undefined where this system does not let us have one. */
export function smallDisk(megabytes: number): SmallDisk | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'small-disk-'))
  const options = `size=${megabytes}m`
  if (!mounted('-t', 'tmpfs', '-o', options, 'tmpfs', folder)) {
    rmSync(folder, { recursive: true })
    return undefined
  }
  const filler = join(folder, 'filler')
  return {
    folder,
    fill: (freeBytes) => {
      const { bavail, bsize } = statfsSync(folder)
      writeFileSync(filler, Buffer.alloc(Math.max(0, bavail * bsize - freeBytes)))
    },
    makeRoom: () => rmSync(filler, { force: true }),
    setReadOnly: (isReadOnly) => {
      if (!mounted('-o', `remount,${isReadOnly ? 'ro' : 'rw'}`, folder))
        throw new Error(`${folder} cannot be mounted anew`)
    },
    remove: () => {
      spawnSync('umount', ['-l', folder])
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

const mounted = (...args: string[]): boolean => spawnSync('mount', args).status === 0

/** Asked once: a file of tests is skipped as a whole where there is none. */
export const hasSmallDisks = (): boolean => {
  const disk = smallDisk(1)
  disk?.remove()
  return disk !== undefined
}
