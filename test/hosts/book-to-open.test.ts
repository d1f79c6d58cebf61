import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { openService } from '../../main/hosts/open-service.ts'
import { StartProblem } from '../../main/hosts/start-problem.ts'
import { bookToOpen } from '../../main/hosts/book-to-open.ts'

const folder = mkdtempSync(join(tmpdir(), 'ratafia-to-open-'))
afterAll(() => rmSync(folder, { recursive: true }))

const fileWith = (name: string, content: string) => {
  const file = join(folder, name)
  writeFileSync(file, content, 'latin1')
  return file
}
const host = { host: 'browser', version: '0', startsWithDemo: false } as const

describe('a file that Ratafia is started with', () => {
  it.each([
    ['backup.zip', 'PK\u0003\u0004 and more', 'isArchive'],
    ['letter.txt', 'Dear aunt', 'isNoBook'],
    ['short', 'PK', 'isNoBook'],
    ['empty.ratafia', '', 'isNoBook'],
  ])('says what %s is, and leaves it as it was', (name, content, code) => {
    const file = fileWith(name, content)
    expect(() => bookToOpen(file)).toThrow(expect.objectContaining({ code }))
    expect(readFileSync(file, 'latin1')).toBe(content)
  })

  it.each([join(folder, 'none.ratafia'), folder])('says that %s cannot be read', (file) => {
    expect(() => bookToOpen(file)).toThrow(expect.objectContaining({ code: 'isUnreadable' }))
  })

  it('is opened when it is a book, before any other', async () => {
    const file = join(folder, 'mine.ratafia')
    const other = join(folder, 'other.ratafia')
    const made = await openService({ ...host, cellarFile: file, fileToOpen: undefined })
    made.service.close()
    const { service, ownFile } = await openService({ ...host, cellarFile: other, fileToOpen: file })
    expect(ownFile).toBe(file)
    expect(await service.dispatch('cellar.status', {})).toMatchObject({ value: { file } })
    service.close()
  })

  it('is not made when it is not there', async () => {
    const file = join(folder, 'new.ratafia')
    const opened = openService({ ...host, cellarFile: undefined, fileToOpen: file })
    await expect(opened).rejects.toThrow(StartProblem)
    expect(() => readFileSync(file)).toThrow('ENOENT')
  })
})
