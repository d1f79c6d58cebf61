/** A damaged book: what is wrong, what can still be read, and going on. */
import { statSync } from 'node:fs'
import { removeBookFiles } from '../../cellar/open-book.ts'
import { folderOf, readWhereabouts } from '../../cellar/whereabouts.ts'
import { notFound } from '../service-error.ts'
import { rebuild, type Session } from '../session.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

const salvagedFile = ({ options }: Session) => `${options.ownFile}.salvaged`

/** Only a book that cannot be opened is rescued. */
function mustBeInTrouble({ trouble, options }: Session): void {
  if (!trouble) throw notFound('damage', options.ownFile)
}

export const rescueHandlers: Handlers<ChannelsOf<'rescue'>> = {
  'rescue.state': ({ options, trouble }) => {
    if (!trouble) return null
    const { ownFile } = options
    const size = statSync(ownFile, { throwIfNoEntry: false })?.size ?? 0
    return {
      file: ownFile,
      trouble: size === 0 ? 'empty' : 'damaged',
      message: trouble.message,
      folder: folderOf(ownFile, readWhereabouts(ownFile)),
    }
  },
  'rescue.salvage': (session, { jobId }) => {
    mustBeInTrouble(session)
    const into = salvagedFile(session)
    return session.jobs.start({
      jobId,
      kind: 'salvage',
      order: () => {
        removeBookFiles(into)
        return { task: 'salvage', damagedFile: session.options.ownFile, into }
      },
    })
  },
  'rescue.accept': async (session, { jobId }) => {
    mustBeInTrouble(session)
    const { state, kind } = session.jobs.state(jobId)
    if (state !== 'done' || kind !== 'salvage') throw notFound('salvaged book of job', jobId)
    const asideFile = await session.replaceOwn(salvagedFile(session))
    removeBookFiles(salvagedFile(session))
    // Lots are not carried over: they follow from the moves.
    rebuild(session)
    return { asideFile: asideFile ?? session.options.ownFile }
  },
  'rescue.beginAnew': async (session) => {
    mustBeInTrouble(session)
    const asideFile = await session.replaceOwn(undefined)
    return { asideFile: asideFile ?? session.options.ownFile }
  },
}
