/** What the starter or the system handed to Electron, picked out among the switches of Electron's own. */
import { resolve } from 'node:path'
import { parseArgs } from 'node:util'

export interface Handing {
  /** Packed, Electron knows its program; else the first argument names its folder. */
  isPackaged: boolean
  /** Where the arguments were typed. */
  folder: string
}

export function readHandedArguments(
  argv: readonly string[],
  { isPackaged, folder }: Handing,
): {
  cellarFile: string | undefined
  fileToOpen: string | undefined
  startsWithDemo: boolean
} {
  const { values, positionals } = parseArgs({
    args: argv.slice(1),
    options: { cellar: { type: 'string' }, demo: { type: 'boolean' } },
    strict: false,
  })
  const file = positionals[isPackaged ? 0 : 1]
  return {
    cellarFile: typeof values.cellar === 'string' ? resolve(folder, values.cellar) : undefined,
    fileToOpen: file === undefined ? undefined : resolve(folder, file),
    startsWithDemo: values.demo === true,
  }
}
