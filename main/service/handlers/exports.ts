/** The whole cellar in open form: writing it out, looking into one, bringing one in. */
import { basename, dirname, join } from 'node:path'
import { dropUnfinishedOf } from '../../cellar/dated-file.ts'
import { exportEnding, exportsIn, foundExport } from '../../cellar/open-export/export-file.ts'
import { note } from '../backup-job.ts'
import { listedFolder } from '../listed-folder.ts'
import { mustBePath } from '../machine-path.ts'
import { replaceBook } from '../replace-book.ts'
import { notFound } from '../service-error.ts'
import { rebuild } from '../session.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

const usualFolder = (ownFile: string): string => join(dirname(ownFile), 'exports')

export const exportHandlers: Handlers<ChannelsOf<'exports'>> = {
  'exports.list': async ({ options }, { folder: asked }) => {
    const usual = usualFolder(options.ownFile)
    const { files, ...listed } = await listedFolder(asked ?? usual, { usual, read: exportsIn })
    return { ...listed, exports: files }
  },
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
    const { asideFile, made: manifest } = await replaceBook(session, {
      ending: 'importing',
      kind: 'lookIntoExport',
      order: (into) => ({ task: 'readExport', file: mustBePath(file), into }),
      made: async () => {
        const found = await foundExport(file)
        if (!found.manifest) throw notFound('export', file)
        return found.manifest
      },
    })
    // Lots are not carried over: they follow from the moves.
    rebuild(session)
    // None of the backups there are is of this book.
    note(session.options.ownFile, { lastMade: null, lastFailure: null })
    return { asideFile, manifest }
  },
}
