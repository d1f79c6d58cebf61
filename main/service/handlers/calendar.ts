/** The calendar as a file, and as an address that the browser host serves. */
import { createHash, randomBytes, timingSafeEqual } from 'node:crypto'
import { feedSecret, setFeedSecret } from '../../cellar/calendar-store.ts'
import { publishCalendar } from '../publish-calendar.ts'
import { notFound } from '../service-error.ts'
import type { Session } from '../session.ts'
import type { ChannelsOf, Handlers } from './handler.ts'

/** As hard to guess as a launch's own secret. */
const newSecret = () => randomBytes(32).toString('base64url')

const pathOf = (secret: string | undefined): string | null =>
  secret === undefined ? null : `/calendar/${secret}.ics`

function keep({ book }: Session, secret: string | null) {
  book.transaction(() => setFeedSecret(book, secret)).immediate()
  return { path: pathOf(secret ?? undefined) }
}

// Digests have one length, so comparing them tells nothing about the secret's.
const isSame = (a: string, b: string) => timingSafeEqual(digest(a), digest(b))
const digest = (text: string) => createHash('sha256').update(text).digest()

export const calendarHandlers: Handlers<ChannelsOf<'calendar'>> = {
  'calendar.file': (session) => ({
    fileName: session.isDemo ? 'ratafia-demo.ics' : 'ratafia.ics',
    ics: publishCalendar(session),
  }),
  'calendar.feed': ({ book }) => ({ path: pathOf(feedSecret(book)) }),
  'calendar.openFeed': (session) => keep(session, newSecret()),
  'calendar.closeFeed': (session) => keep(session, null),
  'calendar.serve': (session, { secret }) => {
    const kept = feedSecret(session.book)
    if (kept === undefined || !isSame(kept, secret)) throw notFound('calendar', 'at this address')
    return { ics: publishCalendar(session) }
  },
}
