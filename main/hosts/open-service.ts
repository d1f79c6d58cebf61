/** Opens the service for a host: which files, which clock, which ids. */
import { randomUUID } from 'node:crypto'
import { mkdirSync } from 'node:fs'
import { homedir } from 'node:os'
import { dirname, join } from 'node:path'
import { fillDemo } from '../demo/alder-end.ts'
import { createService } from '../service/create-service.ts'
import type { Service } from '../service/service.ts'
import { bookToOpen } from './book-to-open.ts'
import { dataFolder } from './data-folder.ts'
import { startProblemOf } from './start-problem.ts'

export interface OpenServiceOptions {
  host: 'electron' | 'browser'
  version: string
  /** Undefined: the maker's usual book. */
  cellarFile: string | undefined
  /** A file that must be a book already; it goes before `cellarFile`. */
  fileToOpen: string | undefined
  startsWithDemo: boolean
}

export interface OpenedService {
  service: Service
  /** The maker's own book, whether or not the demo is open now. */
  ownFile: string
}

export async function openService(options: OpenServiceOptions): Promise<OpenedService> {
  const ownFile =
    options.fileToOpen === undefined
      ? (options.cellarFile ?? join(usualFolder(), 'cellar.ratafia'))
      : bookToOpen(options.fileToOpen)
  const folder = dirname(ownFile)
  const demoFile = join(folder, 'alder-end-demo.ratafia')
  try {
    // Private to this user when it has to be made; an existing folder keeps its rights.
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    const service = await createService({
      ownFile,
      demoFile,
      startWithDemo: options.startsWithDemo,
      host: options.host,
      version: options.version,
      now: () => new Date(),
      newId: randomUUID,
      backsUp: true,
      fillDemo,
    })
    return { service, ownFile }
  } catch (error) {
    // Started with the demo, the maker's own book is not opened at all.
    throw startProblemOf(error, options.startsWithDemo ? demoFile : ownFile) ?? error
  }
}

const usualFolder = () =>
  dataFolder({ platform: process.platform, home: homedir(), env: process.env })
