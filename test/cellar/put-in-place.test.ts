import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { basename, dirname } from 'node:path'
import { describe, expect, it } from 'vitest'
import { closeBook, openBook } from '../../main/cellar/open-book.ts'
import { putInPlace } from '../../main/cellar/put-in-place.ts'
import { filledBook, newBookFile } from './filled-book.ts'

const at = new Date('2026-11-25T18:03:07Z')

describe('putInPlace', () => {
  it('keeps the former book aside, byte for byte, with its log', () => {
    const file = filledBook()
    writeFileSync(`${file}-wal`, 'the log')
    const before = readFileSync(file)
    const nextFile = `${file}.next`
    writeFileSync(nextFile, 'the next')
    const aside = putInPlace(file, { nextFile, at }) ?? ''
    expect(basename(aside)).toBe('cellar kept 2026-11-25 180307.ratafia')
    expect(readFileSync(aside).equals(before)).toBe(true)
    expect(readFileSync(`${aside}-wal`, 'utf8')).toBe('the log')
    expect(readFileSync(file, 'utf8')).toBe('the next')
    expect(existsSync(`${file}-wal`)).toBe(false)
    expect(existsSync(nextFile)).toBe(false)
  })

  it('takes another name rather than write over what was kept before', () => {
    const file = newBookFile()
    writeFileSync(file, 'first')
    for (const content of ['second', 'third', 'fourth']) {
      writeFileSync(`${file}.next`, content)
      putInPlace(file, { nextFile: `${file}.next`, at })
    }
    const kept = readdirSync(dirname(file)).filter((name) => name.includes('kept'))
    expect(kept.sort()).toEqual([
      'cellar kept 2026-11-25 180307 2.ratafia',
      'cellar kept 2026-11-25 180307 3.ratafia',
      'cellar kept 2026-11-25 180307.ratafia',
    ])
  })

  it('puts the former book back with its log when the next one is not there', () => {
    const file = filledBook()
    writeFileSync(`${file}-wal`, 'the log')
    const before = readFileSync(file)
    expect(() => putInPlace(file, { nextFile: `${file}.none`, at })).toThrow('ENOENT')
    expect(readFileSync(file).equals(before)).toBe(true)
    expect(readFileSync(`${file}-wal`, 'utf8')).toBe('the log')
    expect(readdirSync(dirname(file)).filter((name) => name.includes('kept'))).toEqual([])
  })

  it('leaves a book alone that somebody has open', () => {
    const file = filledBook()
    const book = openBook(file)
    const nextFile = filledBook()
    expect(() => putInPlace(file, { nextFile, at })).toThrow('open in another window')
    closeBook(book)
    expect(existsSync(file)).toBe(true)
  })
})
