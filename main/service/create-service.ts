/** Builds the service over the maker's book, or the demo's: one handler per channel. */
import { channels, isChannel, type Channel } from '../../shared/channels.ts'
import type { ErrorReply, Reply } from '../../shared/schemas/errors.ts'
import { bookErrorOf } from '../cellar/book-error.ts'
import { DomainError } from '../engine/index.ts'
import { watchBackups } from './backup-watch.ts'
import { backupHandlers } from './handlers/backups.ts'
import { batchHandlers } from './handlers/batches.ts'
import { benchHandlers } from './handlers/bench.ts'
import { calendarHandlers } from './handlers/calendar.ts'
import { cellarHandlers } from './handlers/cellar.ts'
import { draftHandlers } from './handlers/drafts.ts'
import { exportHandlers } from './handlers/exports.ts'
import { fruitHandlers } from './handlers/fruits.ts'
import type { Handlers } from './handlers/handler.ts'
import { jarHandlers } from './handlers/jars.ts'
import { labelHandlers } from './handlers/labels.ts'
import { marryingHandlers } from './handlers/marrying.ts'
import { moveHandlers } from './handlers/moves.ts'
import { planHandlers } from './handlers/plans.ts'
import { purchaseHandlers } from './handlers/purchases.ts'
import { recipeHandlers } from './handlers/recipes.ts'
import { rescueHandlers } from './handlers/rescue.ts'
import { seasonHandlers } from './handlers/season.ts'
import { sheetHandlers } from './handlers/sheets.ts'
import { storeHandlers } from './handlers/stores.ts'
import { scheduleHandlers } from './handlers/schedule.ts'
import { shelfHandlers } from './handlers/shelf.ts'
import { todayHandlers } from './handlers/today.ts'
import { stopSeasonJobs } from './season-jobs.ts'
import { ServiceError } from './service-error.ts'
import type { Service, ServiceOptions } from './service.ts'
import { createSession, type Session } from './session.ts'

const handlers: Handlers = {
  ...cellarHandlers,
  ...backupHandlers,
  ...rescueHandlers,
  ...exportHandlers,
  ...fruitHandlers,
  ...jarHandlers,
  ...storeHandlers,
  ...shelfHandlers,
  ...batchHandlers,
  ...moveHandlers,
  ...sheetHandlers,
  ...marryingHandlers,
  ...todayHandlers,
  ...scheduleHandlers,
  ...calendarHandlers,
  ...benchHandlers,
  ...draftHandlers,
  ...recipeHandlers,
  ...planHandlers,
  ...labelHandlers,
  ...seasonHandlers,
  ...purchaseHandlers,
}

export async function createService(options: ServiceOptions): Promise<Service> {
  const session = await createSession(options, (file) => fillWithDemo(file, options))
  const listeners = new Set<() => void>()
  const tell = () => {
    for (const listener of listeners) listener()
  }
  const watch = watchBackups(session, tell)
  // Writes wait for each other, so that opening another book never meets a half-done move.
  let writing: Promise<unknown> = Promise.resolve()

  async function dispatch(name: string, request: unknown): Promise<Reply<unknown>> {
    if (!isChannel(name))
      return failed({ code: 'unknownChannel', message: `no channel ${name}`, details: { name } })
    const parsed = channels[name].request.safeParse(request)
    if (!parsed.success) {
      const issues = parsed.error.issues.map(({ path, message }) => ({
        path: path.join('.'),
        message,
      }))
      const message = issues.map((issue) => `${issue.path}: ${issue.message}`).join('; ')
      return failed({ code: 'badInput', message, details: { issues } })
    }
    if (channels[name].effect === 'read') return answer(session, name, parsed.data)
    const answered = writing.then(() => answer(session, name, parsed.data))
    writing = answered
    const reply = await answered
    if (reply.ok) {
      tell()
      watch.look()
    }
    return reply
  }

  return {
    dispatch,
    onChange: (listener) => {
      listeners.add(listener)
      return () => void listeners.delete(listener)
    },
    close: () => {
      watch.end()
      stopSeasonJobs(session)
      session.close()
    },
  }
}

/** The demo is told to a service like any other, which is closed once the demo is told. */
async function fillWithDemo(file: string, options: ServiceOptions): Promise<void> {
  const service = await createService({
    ...options,
    ownFile: file,
    startWithDemo: false,
    backsUp: false,
  })
  try {
    await options.fillDemo(service.dispatch, options.now())
  } finally {
    service.close()
  }
}

const failed = (error: ErrorReply): Reply<never> => ({ ok: false, error })

async function answer(session: Session, name: Channel, request: unknown): Promise<Reply<unknown>> {
  try {
    // The request was parsed by this channel's own schema just now.
    const handle = handlers[name] as (session: Session, request: unknown) => unknown
    const value = await handle(session, request)
    return { ok: true, value: channels[name].reply.parse(value) }
  } catch (error) {
    if (error instanceof ServiceError) return failed(error.reply)
    // What the engine refuses comes with the number that cannot be.
    if (error instanceof DomainError)
      return failed({ code: error.code, message: error.message, details: { ...error.details } })
    const inBook = bookErrorOf(error)
    if (inBook) return failed({ code: inBook.kind, message: inBook.message, details: {} })
    console.error(`ratafia: ${name} failed:`, error)
    return failed({ code: 'internal', message: `${name} failed`, details: {} })
  }
}
