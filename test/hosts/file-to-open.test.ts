import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { openService } from '../../main/hosts/open-service.ts'
import { StartProblem } from '../../main/hosts/start-problem.ts'
import { kindOfFile, lookIntoPath } from '../../main/hosts/file-to-open.ts'

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
    ['letter.txt', 'Dear aunt', 'isNoBook'],
    ['short', 'PK', 'isNoBook'],
    ['empty.ratafia', '', 'isNoBook'],
  ])('says what %s is, and leaves it as it was', (name, content, code) => {
    const file = fileWith(name, content)
    expect(() => kindOfFile(file)).toThrow(expect.objectContaining({ code }))
    expect(readFileSync(file, 'latin1')).toBe(content)
  })

  it.each([join(folder, 'none.ratafia'), folder])('says that %s cannot be read', (file) => {
    expect(() => kindOfFile(file)).toThrow(expect.objectContaining({ code: 'isUnreadable' }))
  })

  it('is opened when it is a book, and no other is named', async () => {
    const file = join(folder, 'mine.ratafia')
    const made = await openService({ ...host, cellarFile: file, fileToOpen: undefined })
    expect(made.firstPath).toBe('/')
    made.service.close()
    const opened = await openService({ ...host, cellarFile: undefined, fileToOpen: file })
    expect(opened).toMatchObject({ ownFile: file, firstPath: '/' })
    expect(await opened.service.dispatch('cellar.status', {})).toMatchObject({ value: { file } })
    opened.service.close()
    const other = openService({ ...host, cellarFile: join(folder, 'other'), fileToOpen: file })
    await expect(other).rejects.toMatchObject({ code: 'twoBooks' })
  })

  it('leads to a look into it when it is an archive, beside the book', async () => {
    const archive = fileWith('50 % #1.zip', 'PK\u0003\u0004 and more')
    const cellarFile = join(folder, 'beside.ratafia')
    const opened = await openService({ ...host, cellarFile, fileToOpen: archive })
    expect(opened).toMatchObject({ ownFile: cellarFile, firstPath: lookIntoPath(archive) })
    opened.service.close()
  })

  it('is named in the path so that neither slash nor sign is lost on the way', () => {
    const file = '/a b/50 % #1/100%25.zip'
    const [, name = '', ...more] = decodeURI(lookIntoPath(file)).slice(1).split('/')
    expect(decodeURIComponent(name)).toBe(file)
    expect(more).toEqual([])
  })

  it('is not made when it is not there', async () => {
    const file = join(folder, 'new.ratafia')
    const opened = openService({ ...host, cellarFile: undefined, fileToOpen: file })
    await expect(opened).rejects.toThrow(StartProblem)
    expect(() => readFileSync(file)).toThrow('ENOENT')
  })
})
