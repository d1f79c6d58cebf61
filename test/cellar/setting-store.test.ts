import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { closeBook, openBook } from '../../main/cellar/open-book.ts'
import { changeSettings, readSettings } from '../../main/cellar/setting-store.ts'

describe('readSettings', () => {
  it('reads what is kept, and the usual where a value is unknown or unreadable', () => {
    const book = openBook(join(mkdtempSync(join(tmpdir(), 'settings-')), 'cellar.ratafia'))
    changeSettings(book, { units: 'us', theme: undefined })
    book.exec(`INSERT INTO setting VALUES ('locale', '"not a locale"'), ('moonPhase', '3')`)
    expect(readSettings(book)).toEqual({
      locale: 'en-GB',
      units: 'us',
      // Of books begun when units were one choice.
      temperature: 'fahrenheit',
      strength: 'pctVol',
      theme: 'system',
      currency: 'EUR',
      reminders: false,
    })
    closeBook(book)
  })
})
