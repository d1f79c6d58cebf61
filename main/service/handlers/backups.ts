/** Backups: how they stand, where they are, making one, looking into one, going back to one. */
import { existsSync, mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import { backupsIn, failureOfSystem, foundBackup, tryFolder } from '../../cellar/backup-file.ts'
import { folderOf, readWhereabouts, usualFolder } from '../../cellar/whereabouts.ts'
import { note, noteMade } from '../backup-job.ts'
import { backupState, startBackup } from '../backups.ts'
import { listedFolder } from '../listed-folder.ts'
import { mustBePath } from '../machine-path.ts'
import { replaceBook } from '../replace-book.ts'
import { notFound, ServiceError } from '../service-error.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

const failed = (error: unknown): ServiceError => {
  const failure = failureOfSystem(error)
  if (!failure) throw error
  return new ServiceError('backupFailed', `the folder will not do: ${failure}`, { failure })
}

/** Made here and nowhere else: a stick that is away must not be taken for an empty folder. */
async function chosenFolder(folder: string): Promise<string> {
  try {
    // Where one name only is to be made, the system says why it cannot be.
    if (!existsSync(mustBePath(folder)))
      mkdirSync(folder, { recursive: !existsSync(dirname(folder)) })
    await tryFolder(folder)
    return folder
  } catch (error) {
    if (error instanceof ServiceError) throw error
    throw failed(error)
  }
}

export const backupHandlers: Handlers<ChannelsOf<'backups'>> = {
  'backups.state': (session) => backupState(session),
  'backups.list': async ({ options: { ownFile } }, { folder: asked }) => {
    const { files, ...listed } = await listedFolder(
      asked ?? folderOf(ownFile, readWhereabouts(ownFile)),
      { usual: usualFolder(ownFile), read: backupsIn },
    )
    return { ...listed, backups: files }
  },
  'backups.change': async (session, { folder, schedule }) => {
    const { ownFile } = session.options
    const isUsual = folder === usualFolder(ownFile)
    const chosen = folder && !isUsual ? await chosenFolder(folder) : null
    note(ownFile, {
      ...(folder !== undefined && { folder: chosen, lastFailure: null }),
      ...(schedule && { schedule }),
    })
    return backupState(session)
  },
  'backups.start': (session, { jobId }) => {
    if (session.isDemo) throw new ServiceError('demoOpen', 'the demo is not backed up')
    return startBackup(session, jobId, 'asked')
  },
  'backups.look': ({ jobs, options }, { jobId, file }) =>
    jobs.start({
      jobId,
      kind: 'look',
      order: (workFolder) => ({
        task: 'look',
        file: mustBePath(file),
        workFolder,
        bookFile: options.ownFile,
      }),
    }),
  'backups.job': ({ jobs }, { jobId }) => jobs.state(jobId),
  'backups.cancel': ({ jobs }, { jobId }) => jobs.cancel(jobId),
  'backups.restore': async (session, { file }) => {
    const { asideFile, made } = await replaceBook(session, {
      ending: 'restoring',
      kind: 'look',
      order: (into) => ({ task: 'unpack', file: mustBePath(file), into }),
      made: async () => {
        const { manifest, bytes } = await foundBackup(file)
        if (!manifest) throw notFound('backup', file)
        return { manifest, bytes, file }
      },
    })
    noteMade(session.options.ownFile, made)
    return { asideFile, manifest: made.manifest }
  },
}
