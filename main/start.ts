/** `npm start`: builds what is out of date, picks the host, and says which in one line. */
import { spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type * as BrowserHost from './hosts/browser/main.ts'
import { buildIfStale } from './hosts/build-if-stale.ts'
import {
  electronBinary,
  fetchElectron,
  fetchElectronOnce,
} from './hosts/electron/electron-binary.ts'
import { ArgumentError, readStartArguments, type StartArguments } from './hosts/start-arguments.ts'
import { hostWords } from './hosts/words/host-words.ts'

const root = join(import.meta.dirname, '..')
const fetchLimitS = 20
const words = hostWords()

try {
  const wanted = readStartArguments(process.argv.slice(2))
  if (wanted.wantsHelp) console.log(words.argument.help)
  else await start(wanted)
} catch (error) {
  if (error instanceof ArgumentError) {
    console.error(`${error.message}\n\n${words.argument.help}`)
    process.exitCode = 2
  } else {
    // Problems have words of their own; a bug is shown with where it happened.
    const isProblem = error instanceof Error && error.name === 'StartProblem'
    console.error(isProblem ? error.message : error)
    process.exitCode = 1
  }
}

async function start(wanted: StartArguments): Promise<void> {
  buildIfStale(root)
  const binary = wanted.host === 'browser' ? undefined : findElectron(wanted)
  if (binary) {
    console.log(words.starts.inElectron)
    startElectron(binary, wanted)
  } else if (wanted.host === 'electron') {
    console.error(words.starts.noElectron)
    process.exitCode = 1
  } else {
    const { inBrowser, withoutElectron } = words.starts
    console.log(wanted.host === 'browser' ? inBrowser : withoutElectron)
    await startBrowser(wanted)
  }
}

function findElectron(wanted: StartArguments): string | undefined {
  const found = electronBinary(root)
  if (found) return found
  if (wanted.fetchesElectron) return fetchElectron(root)
  const notice = () => console.error(words.starts.fetching(fetchLimitS))
  return fetchElectronOnce(root, fetchLimitS * 1000, notice)
}

/** In this very process, so that whoever ends it ends the host. */
async function startBrowser(wanted: StartArguments): Promise<void> {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    version: string
  }
  const built = pathToFileURL(join(root, 'out', 'main', 'browser.js')).href
  const { startBrowserHost } = (await import(built)) as typeof BrowserHost
  await startBrowserHost({ ...wanted, version })
}

function startElectron(binary: string, wanted: StartArguments): void {
  const args = [
    // Electron refuses to run as root with its sandbox.
    ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    root,
    ...(wanted.fileToOpen === undefined ? [] : [wanted.fileToOpen]),
    ...(wanted.cellarFile === undefined ? [] : [`--cellar=${wanted.cellarFile}`]),
    ...(wanted.startsWithDemo ? ['--demo'] : []),
  ]
  const child = spawn(binary, args, { stdio: 'inherit' })
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const)
    process.on(signal, () => child.kill(signal))
  child.on('error', (error) => {
    console.error(words.starts.electronFails(error.message))
    process.exitCode = 1
  })
  child.on('exit', (code) => {
    process.exitCode = code ?? 1
  })
}
