/** What `npm start` can be told on the command line. */
import { resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { hostWords } from './words/host-words.ts'

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
  const { argument: words } = hostWords()
  const [fileToOpen, ...others] = positionals
  const { host } = values
  if (host !== undefined && host !== 'electron' && host !== 'browser')
    throw new ArgumentError(words.host(host))
  const needsBrowser = values['no-open'] === true || values.port !== undefined
  if (host === 'electron' && needsBrowser) throw new ArgumentError(words.browserOnly)
  if (values.cellar === '') throw new ArgumentError(words.needsValue('--cellar'))
  if (others.length > 0) throw new ArgumentError(words.oneFile(others[0] ?? ''))
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
    throw new ArgumentError(wordsOf(error instanceof Error ? error : new Error(String(error))))
  }
}

/** Of an option that Node cannot read: it names it in quotes, in English. */
function wordsOf(error: Error): string {
  const [, name = error.message] = /'([^' ]*)/.exec(error.message) ?? []
  const { unknown, needsValue, takesNone } = hostWords().argument
  const known = Object.entries(options).find(([option]) => `--${option}` === name)
  if (!known) return unknown(name)
  return known[1].type === 'boolean' ? takesNone(name) : needsValue(name)
}

function readPort(typed: string | undefined): number {
  if (typed === undefined) return 0
  const port = Number(typed)
  if (!/^\d+$/.test(typed) || port > 65_535)
    throw new ArgumentError(hostWords().argument.port(typed))
  return port
}
