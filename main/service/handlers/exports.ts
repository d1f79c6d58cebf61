/** The whole cellar in open form: writing it out, looking into one, bringing one in. */
import { basename, dirname, join } from 'node:path'
import { failureOfSystem } from '../../cellar/backup-file.ts'
import { dropUnfinishedOf } from '../../cellar/dated-file.ts'
import { exportEnding, exportsIn, foundExport } from '../../cellar/open-export/export-file.ts'
import { removeBookFiles } from '../../cellar/open-book.ts'
import type { ExportFolder } from '../../../shared/schemas/safekeeping.ts'
import { note } from '../backup-job.ts'
import { mustBePath } from '../machine-path.ts'
import { notFound } from '../service-error.ts'
import { rebuild, type Session } from '../session.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

const usualFolder = (ownFile: string): string => join(dirname(ownFile), 'exports')

async function listed({ options }: Session, asked: string | undefined): Promise<ExportFolder> {
  const usual = usualFolder(options.ownFile)
  const folder = asked ?? usual
  try {
    return { folder, failure: null, exports: await exportsIn(mustBePath(folder)) }
  } catch (error) {
    const failure = failureOfSystem(error)
    if (!failure) throw error
    // The usual folder is made with the first export.
    const isToCome = folder === usual && failure === 'folderGone'
    return { folder, failure: isToCome ? null : failure, exports: [] }
  }
}

export const exportHandlers: Handlers<ChannelsOf<'exports'>> = {
  'exports.list': (session, { folder }) => listed(session, folder),
  'exports.start': ({ book, jobs, options }, { jobId, folder: asked }) => {
    const usual = usualFolder(options.ownFile)
    const folder = asked === undefined ? usual : mustBePath(asked)
    const madeAt = options.now().toISOString()
    const bookFile = book.name
    return jobs.start({
      jobId,
      kind: 'export',
      order: (workFolder) => ({
        task: 'export',
        bookFile,
        folder,
        makesFolder: folder === usual,
        workFolder,
        madeAt,
        programVersion: options.version,
      }),
      onEnd: ({ state }) => {
        if (state !== 'done')
          dropUnfinishedOf(folder, { bookName: basename(bookFile), madeAt, ending: exportEnding })
      },
    })
  },
  'exports.look': ({ jobs, options }, { jobId, file }) =>
    jobs.start({
      jobId,
      kind: 'lookIntoExport',
      order: (workFolder) => ({
        task: 'lookIntoExport',
        file: mustBePath(file),
        workFolder,
        bookFile: options.ownFile,
      }),
    }),
  'exports.import': async (session, { file }) => {
    const { ownFile, newId } = session.options
    const into = `${ownFile}.importing`
    removeBookFiles(into)
    try {
      await session.jobs.run({
        jobId: newId(),
        kind: 'lookIntoExport',
        order: () => ({ task: 'readExport', file: mustBePath(file), into }),
      })
      const { manifest } = await foundExport(file)
      if (!manifest) throw notFound('export', file)
      const asideFile = await session.replaceOwn(into)
      // Lots are not carried over: they follow from the moves.
      rebuild(session)
      // None of the backups there are is of this book.
      note(ownFile, { lastMade: null, lastFailure: null })
      return { asideFile, manifest }
    } finally {
      removeBookFiles(into)
    }
  },
}
