/** Opens the service for a host: which files, which clock, which ids. */
import { randomUUID } from 'node:crypto'
import { mkdirSync } from 'node:fs'
import { homedir } from 'node:os'
import { dirname, join } from 'node:path'
import { fillDemo } from '../demo/alder-end.ts'
import { createService } from '../service/create-service.ts'
import type { Service } from '../service/service.ts'
import { dataFolder } from './data-folder.ts'
import { kindOfFile, lookIntoPath } from './file-to-open.ts'
import { StartProblem, startProblemOf } from './start-problem.ts'

export interface OpenServiceOptions {
  host: 'electron' | 'browser'
  version: string
  /** Undefined: the maker's usual book. */
  cellarFile: string | undefined
  /** A book that must be there already, or a backup or export to look into beside the book. */
  fileToOpen: string | undefined
  startsWithDemo: boolean
}

export interface OpenedService {
  service: Service
  /** The maker's own book, whether or not the demo is open now. */
  ownFile: string
  /** The screen that the window opens with. */
  firstPath: string
}

export async function openService(options: OpenServiceOptions): Promise<OpenedService> {
  const { fileToOpen, cellarFile } = options
  const isArchive = fileToOpen !== undefined && kindOfFile(fileToOpen) === 'archive'
  const bookToOpen = isArchive ? undefined : fileToOpen
  if (bookToOpen !== undefined && cellarFile !== undefined)
    throw new StartProblem('twoBooks', bookToOpen)
  const ownFile = bookToOpen ?? cellarFile ?? join(usualFolder(), 'cellar.ratafia')
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
    return { service, ownFile, firstPath: isArchive ? lookIntoPath(fileToOpen) : '/' }
  } catch (error) {
    // Started with the demo, the maker's own book is not opened at all.
    throw startProblemOf(error, options.startsWithDemo ? demoFile : ownFile) ?? error
  }
}

const usualFolder = () =>
  dataFolder({ platform: process.platform, home: homedir(), env: process.env })
