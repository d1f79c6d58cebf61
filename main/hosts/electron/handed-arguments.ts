/** What the starter handed to Electron, picked out among the switches of Electron's own. */
import { resolve } from 'node:path'
import { parseArgs } from 'node:util'

export function readHandedArguments(argv: readonly string[]): {
  cellarFile: string | undefined
  startsWithDemo: boolean
} {
  const { values } = parseArgs({
    args: argv.slice(1),
    options: { cellar: { type: 'string' }, demo: { type: 'boolean' } },
    strict: false,
  })
  return {
    cellarFile: typeof values.cellar === 'string' ? resolve(values.cellar) : undefined,
    startsWithDemo: values.demo === true,
  }
}
