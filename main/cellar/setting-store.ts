/** How this cellar likes to be read: language, locale, units, theme, currency. */
import { Settings } from '../../shared/channels.ts'
import type { Book } from './open-book.ts'

const defaults: Settings = {
  locale: 'en-GB',
  units: 'metric',
  temperature: 'celsius',
  strength: 'pctVol',
  theme: 'system',
  currency: 'EUR',
  reminders: false,
}

/** A setting that cannot be read counts as not set: it must not keep the book shut. */
export function readSettings(book: Book): Settings {
  const rows = book.prepare('SELECT key, value FROM setting').all() as {
    key: string
    value: string
  }[]
  const readable = rows
    .map(({ key, value }) => Settings.partial().safeParse({ [key]: JSON.parse(value) }))
    .flatMap(({ data }) => data ?? [])
  const kept: Partial<Settings> = Object.assign({}, ...readable)
  return Settings.parse({ ...defaults, ...implied(kept), ...kept })
}

/** What a book says that was begun when units were one choice. */
const implied = ({ units }: Partial<Settings>): Partial<Settings> =>
  units === 'us' ? { temperature: 'fahrenheit' } : {}

/** Keeps the settings given; those left out stay as they are. */
export function changeSettings(
  book: Book,
  change: { readonly [K in keyof Settings]?: Settings[K] | undefined },
): void {
  const put = book.prepare(
    `INSERT INTO setting (key, value) VALUES (?, ?)
     ON CONFLICT (key) DO UPDATE SET value = excluded.value`,
  )
  for (const [key, value] of Object.entries(change))
    if (value !== undefined) put.run(key, JSON.stringify(value))
}
