/** What `npm start` can be told on the command line. */
import { resolve } from 'node:path'
import { parseArgs } from 'node:util'

export interface StartArguments {
  host: 'electron' | 'browser' | 'any'
  /** False: print the link and wait, open no window. */
  opensWindow: boolean
  /** 0 lets the system choose. */
  port: number
  /** Another cellar file than the usual one. */
  cellarFile: string | undefined
  /** A book that must be there already, or a backup or export to look into. */
  fileToOpen: string | undefined
  startsWithDemo: boolean
  fetchesElectron: boolean
  wantsHelp: boolean
}

/** The command line cannot be understood; the message is for whoever typed it. */
export class ArgumentError extends Error {
  override name = 'ArgumentError'
}

export const startHelp = `Usage: npm start [-- [OPTIONS] [FILE]]

  FILE                     open the book that is in FILE, or look into the backup or export
  --host browser|electron  where Ratafia opens (default: Electron when it is here, else a browser)
  --no-open                print the link and wait; open no window (browser only)
  --port N                 the port of 127.0.0.1 to use (browser only; default: any free one)
  --cellar FILE            keep the book in FILE; a new one if there is none
  --demo                   open the demo cellar, apart from your own
  --fetch-electron         fetch Electron first, however long that takes
  --help                   this text`

const options = {
  host: { type: 'string' },
  'no-open': { type: 'boolean' },
  port: { type: 'string' },
  cellar: { type: 'string' },
  demo: { type: 'boolean' },
  'fetch-electron': { type: 'boolean' },
  help: { type: 'boolean' },
} as const

export function readStartArguments(typed: readonly string[]): StartArguments {
  const { values, positionals } = parse(typed)
  const [fileToOpen, ...others] = positionals
  const { host } = values
  if (host !== undefined && host !== 'electron' && host !== 'browser')
    throw new ArgumentError(`--host is browser or electron, not '${host}'`)
  const needsBrowser = values['no-open'] === true || values.port !== undefined
  if (host === 'electron' && needsBrowser)
    throw new ArgumentError('--no-open and --port go with --host browser only')
  if (values.cellar === '') throw new ArgumentError('--cellar needs the name of a file')
  if (others.length > 0) throw new ArgumentError(`one file at a time: '${others[0]}' is too many`)
  return {
    host: host ?? (needsBrowser ? 'browser' : 'any'),
    opensWindow: values['no-open'] !== true,
    port: readPort(values.port),
    cellarFile: values.cellar === undefined ? undefined : resolve(values.cellar),
    fileToOpen: fileToOpen === undefined ? undefined : resolve(fileToOpen),
    startsWithDemo: values.demo === true,
    fetchesElectron: values['fetch-electron'] === true,
    wantsHelp: values.help === true,
  }
}

function parse(typed: readonly string[]) {
  try {
    return parseArgs({ args: [...typed], options, strict: true, allowPositionals: true })
  } catch (error) {
    throw new ArgumentError(error instanceof Error ? error.message : String(error))
  }
}

function readPort(typed: string | undefined): number {
  if (typed === undefined) return 0
  const port = Number(typed)
  if (!/^\d+$/.test(typed) || port > 65_535)
    throw new ArgumentError(`--port is a whole number from 0 to 65535, not '${typed}'`)
  return port
}
