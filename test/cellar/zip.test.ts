import { mkdtempSync, readFileSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { unzipSync, zipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { contentOf, isSafeName, textOf, withZip, ZipProblem } from '../../main/cellar/zip-reader.ts'
import { writeZip } from '../../main/cellar/zip-writer.ts'

const newFile = () => join(mkdtempSync(join(tmpdir(), 'zip-')), 'a.zip')
const at = new Date('2026-11-25T18:03:07Z')
const big = Buffer.from(
  Array.from({ length: 700_000 }, (_, index) => (Math.sin(index) * 1e6) & 0x7f),
)

async function written(): Promise<string> {
  const file = newFile()
  await writeZip(file, [
    { name: 'one.txt', at, content: () => Buffer.from('sloe gin, no: sloe liqueur') },
    { name: 'größer/梅.bin', at, content: () => big },
    { name: 'nothing', at, content: () => Buffer.alloc(0) },
  ])
  return file
}

const problemOf = async (read: () => Promise<unknown>) => {
  try {
    await read()
  } catch (error) {
    if (error instanceof ZipProblem) return error.kind
    throw error
  }
  return 'read'
}

const all = async (file: string, name: string) =>
  withZip(file, async (zip) => {
    const pieces: Uint8Array[] = []
    for await (const piece of contentOf(zip, name)) pieces.push(piece)
    return Buffer.concat(pieces)
  })

describe('a zip file', () => {
  it('is read by another program as it was written', async () => {
    const file = await written()
    const found = unzipSync(readFileSync(file))
    expect(Object.keys(found)).toEqual(['one.txt', 'größer/梅.bin', 'nothing'])
    expect(Buffer.from(found['größer/梅.bin'] ?? []).equals(big)).toBe(true)
    expect(found['nothing']).toHaveLength(0)
  })

  it('comes back from our own reader, piece by piece', async () => {
    const file = await written()
    expect((await all(file, 'größer/梅.bin')).equals(big)).toBe(true)
    expect(await withZip(file, (zip) => textOf(zip, 'one.txt', 100))).toContain('sloe')
  })

  it('of another program is read too, packed or not', async () => {
    const file = newFile()
    writeFileSync(file, zipSync({ packed: [big, { level: 9 }], stored: [big, { level: 0 }] }))
    expect((await all(file, 'packed')).equals(big)).toBe(true)
    expect((await all(file, 'stored')).equals(big)).toBe(true)
  })

  it('is never written over', async () => {
    const file = newFile()
    writeFileSync(file, 'mine')
    await expect(writeZip(file, [])).rejects.toThrow('EEXIST')
    expect(readFileSync(file, 'utf8')).toBe('mine')
  })

  it('is refused cut short at any length, and with any byte of its content turned', async () => {
    const file = await written()
    const bytes = readFileSync(file)
    for (const length of [4, 60, 5000, bytes.length - 30, bytes.length - 1]) {
      truncateSync(file, length)
      expect(await problemOf(() => all(file, 'größer/梅.bin'))).toBe('cutShort')
      writeFileSync(file, bytes)
    }
    for (let index = 200; index < 4000; index += 97) {
      const turned = Buffer.from(bytes)
      turned[index] = (turned[index] ?? 0) ^ 0x10
      writeFileSync(file, turned)
      expect(await problemOf(() => all(file, 'größer/梅.bin'))).toBe('damaged')
    }
  })

  it('that is something else is refused, and so is an entry that is not there', async () => {
    const file = newFile()
    writeFileSync(file, 'plum '.repeat(1000))
    expect(await problemOf(() => all(file, 'one'))).toBe('notAZip')
    writeFileSync(file, '')
    expect(await problemOf(() => all(file, 'one'))).toBe('notAZip')
    expect(await problemOf(() => all(tmpdir(), 'one'))).toBe('notAZip')
    const sound = await written()
    expect(await problemOf(() => all(sound, '../one.txt'))).toBe('damaged')
  })

  it.each([
    '../up.txt',
    'in/../../up.txt',
    'in/..',
    '/etc/passwd',
    'C:/up.txt',
    '..\\up.txt',
    'in\\up.txt',
    'one.txt\0.png',
  ])('that holds %j is refused whole, whatever else is in it', async (name) => {
    const file = newFile()
    const some = new Uint8Array([1])
    writeFileSync(file, zipSync({ 'one.txt': some, [name]: some }))
    expect(await problemOf(() => all(file, 'one.txt'))).toBe('unsafeNames')
  })

  it.each(['..one.txt', 'in/a..b', 'größer/梅.bin'])('that holds %j is read', async (name) => {
    const file = newFile()
    writeFileSync(file, zipSync({ [name]: new Uint8Array([7]) }))
    expect([...(await all(file, name))]).toEqual([7])
  })

  it('gives no more than an entry says it holds', async () => {
    const file = newFile()
    const bytes = Buffer.from(zipSync({ bomb: [Buffer.alloc(5_000_000), { level: 9 }] }))
    // The size in the directory: 24 bytes into the last header.
    bytes.writeUInt32LE(1000, bytes.lastIndexOf(Buffer.from('PK\x01\x02', 'latin1')) + 24)
    writeFileSync(file, bytes)
    expect(await problemOf(() => all(file, 'bomb'))).toBe('damaged')
    expect(await problemOf(() => withZip(file, (zip) => textOf(zip, 'bomb', 10)))).toBe('damaged')
  })
})

describe('isSafeName', () => {
  it.each(['a', 'data/a.jsonl', 'read me.txt', '...a', 'größer/梅', 'folder/'])(
    'lets %s pass',
    (name) => expect(isSafeName(name)).toBe(true),
  )
  it.each([
    '',
    '..',
    '../a',
    'a/../b',
    'a/..',
    '/a',
    'a//b',
    'a\\b',
    'C:a',
    'a\u0000b',
    'a/ .. /b',
  ])('refuses %j', (name) => expect(isSafeName(name)).toBe(false))
})
