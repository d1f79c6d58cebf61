/** Files made to do harm, and honest ones that are broken: each is refused, and nothing is left. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createHash } from 'node:crypto'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { unzipSync, zipSync, type Zippable } from 'fflate'
import { describe, expect, it } from 'vitest'
import { foundExport } from '../../../main/cellar/open-export/export-file.ts'
import { ExportUnfit } from '../../../main/cellar/open-export/export-unfit.ts'
import { linesIn } from '../../../main/cellar/open-export/json-lines.ts'
import { readExport } from '../../../main/cellar/open-export/read-export.ts'
import { filledBook } from '../filled-book.ts'
import { exportOf } from './full-book.ts'

const good = await exportOf(filledBook())
const goodBytes = readFileSync(good)
const goodEntries = unzipSync(goodBytes)

type Entries = Record<string, Uint8Array>
interface Manifest {
  version: number
  schemaVersion: number
  data: { name: string; rows: number; sha256: string }[]
}

const text = (entries: Entries, name: string) => Buffer.from(entries[name] ?? []).toString('utf8')

const changedManifest = (change: (manifest: Manifest) => void): Entries => {
  const manifest = JSON.parse(text(goodEntries, 'manifest.json')) as Manifest
  change(manifest)
  return { ...goodEntries, 'manifest.json': Buffer.from(JSON.stringify(manifest)) }
}

/** With another text for a file of data, whose sum in the manifest is right. */
function withData(name: string, change: (was: string) => string | Uint8Array): Entries {
  const data = Buffer.from(change(text(goodEntries, name)))
  const rows = data.toString('latin1').split('\n').length - 1
  const entries = changedManifest((manifest) => {
    const part = manifest.data.find((each) => each.name === name)
    if (!part) throw new Error(`there is no ${name}`)
    Object.assign(part, {
      rows,
      bytes: data.length,
      sha256: createHash('sha256').update(data).digest('hex'),
    })
  })
  return { ...entries, [name]: data }
}

const inMoves = (change: (line: string) => string) =>
  withData('data/move.jsonl', (was) => was.replace(/^.*$/m, change))

function fileOf(content: Uint8Array): string {
  const file = join(mkdtempSync(join(tmpdir(), 'hostile-')), 'x.cellar.zip')
  writeFileSync(file, content)
  return file
}

const zipped = (entries: Zippable) => fileOf(zipSync(entries, { level: 6 }))

/** What it is refused for; nothing is left where the book was to come. */
async function problemOf(file: string): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'into-'))
  try {
    await readExport(file, { into: join(folder, 'book.ratafia'), onStep: () => undefined })
    return 'taken'
  } catch (error) {
    const left = readdirSync(folder)
    if (left.length > 0) throw new Error(`${left.join()} is left`, { cause: error })
    if (error instanceof ExportUnfit) return error.problem
    throw error
  }
}

const deep = (levels: number) => '['.repeat(levels) + ']'.repeat(levels)

/** The zip's directory tells a second file of the same name. */
function withTwin(): Buffer {
  const bytes = Buffer.from(zipSync({ 'data/aaa': Buffer.from('x'), 'data/bbb': Buffer.from('y') }))
  const twin = bytes.toString('latin1').replaceAll('data/bbb', 'data/aaa')
  return Buffer.from(twin, 'latin1')
}

describe('readExport', () => {
  it('takes the honest file that the others are made from', async () => {
    expect(await problemOf(zipped(goodEntries))).toBe('taken')
    expect(await problemOf(zipped(withData('data/jar.jsonl', (was) => was)))).toBe('taken')
  })

  it.each<[string, string, () => Uint8Array | Entries]>([
    ['no zip', 'notAnExport', () => Buffer.from('jam')],
    ['a zip of something else', 'notAnExport', () => ({ 'a.txt': Buffer.from('jam') })],
    ['a manifest of something else', 'notAnExport', () => ({ 'manifest.json': Buffer.from('{}') })],
    ['a file cut short', 'cutShort', () => goodBytes.subarray(0, 5000)],
    [
      'a name that climbs out',
      'unsafeNames',
      () => ({ ...goodEntries, '../../x': Buffer.from('') }),
    ],
    ['a name from the root', 'unsafeNames', () => ({ ...goodEntries, '/etc/x': Buffer.from('') })],
    ['a name with a drive', 'unsafeNames', () => ({ ...goodEntries, 'c:\\x': Buffer.from('') })],
    ['two files of one name', 'damagedInside', () => withTwin()],
    [
      'a missing file',
      'damagedInside',
      () => {
        const { 'data/jar.jsonl': _, ...rest } = goodEntries
        return rest
      },
    ],
    [
      'a table the manifest does not tell of',
      'damagedInside',
      () => changedManifest(({ data }) => data.splice(0, 1)),
    ],
    ['a later format', 'newerProgram', () => changedManifest((m) => (m.version = 2))],
    [
      'a book of a later schema',
      'newerProgram',
      () => changedManifest((m) => (m.schemaVersion = 9999)),
    ],
    ['a book of no schema', 'notBySchema', () => changedManifest((m) => (m.schemaVersion = 11))],
    [
      'data that was changed',
      'checksum',
      () => ({
        ...goodEntries,
        'data/jar.jsonl': Buffer.from(text(goodEntries, 'data/jar.jsonl').replace('9000', '9001')),
      }),
    ],
    ['a line that is no JSON', 'notBySchema', () => inMoves(() => '{"seq":1,')],
    ['a line that is no object', 'notBySchema', () => inMoves(() => '[1]')],
    [
      'a line that is no UTF-8',
      'notBySchema',
      () => withData('data/jar.jsonl', () => Buffer.from([0x7b, 0xff, 0xfe, 0x0a])),
    ],
    [
      'a line nested 100,000 deep',
      'tooLarge',
      () => inMoves((line) => line.replace(/"payload":.*}$/, `"payload":${deep(100_000)}}`)),
    ],
    [
      'a line of 17 MB',
      'tooLarge',
      () => inMoves((line) => line.replace('"pourWater"', `"${'x'.repeat(17 << 20)}"`)),
    ],
    [
      'a deep manifest',
      'tooLarge',
      () => ({
        ...goodEntries,
        'manifest.json': Buffer.from(`{"format":${deep(1000)}}`),
      }),
    ],
    [
      '80 MB of one letter',
      'tooLarge',
      () => ({
        ...goodEntries,
        'tables/x.csv': Buffer.alloc(80 << 20, 'x'),
      }),
    ],
    [
      '600 files',
      'tooLarge',
      () => ({
        ...goodEntries,
        ...Object.fromEntries(
          Array.from({ length: 600 }, (_, index) => [`x${index}`, Buffer.from('')]),
        ),
      }),
    ],
    ['a field too many', 'notBySchema', () => inMoves((line) => line.replace('{', '{"more":1,'))],
    ['a field too few', 'notBySchema', () => inMoves((line) => line.replace('"version":1,', ''))],
    [
      'a row that the table refuses',
      'notBySchema',
      () => inMoves((line) => line.replace('"seq":1', '"seq":"one"')),
    ],
    ['a move of no kind', 'notBySchema', () => inMoves((line) => line.replace('pourWater', 'fly'))],
    [
      'an amount without end',
      'notBySchema',
      () => inMoves((line) => line.replace(':101', ':1e999')),
    ],
    [
      'a move of a batch that is not there',
      'notBySchema',
      () => inMoves((line) => line.replace('"plum"', '"fig"')),
    ],
    [
      'a move in a vessel that is not there',
      'notBySchema',
      () => inMoves((line) => line.replace('"jar"', '"other"')),
    ],
    [
      'a group that is not there',
      'notBySchema',
      () => inMoves((line) => line.replace('"g-m1"', '"other"')),
    ],
    [
      'a version that is missing',
      'notBySchema',
      () => inMoves((line) => line.replace('"version":1', '"version":2')),
    ],
    ['one move twice', 'notBySchema', () => inMoves((line) => `${line}\n${line}`)],
  ])('refuses %s (%s)', async (_what, problem, made) => {
    const content = made()
    const file = content instanceof Uint8Array ? fileOf(content) : zipped(content)
    expect(await problemOf(file)).toBe(problem)
  })

  it('never writes over a book, nor takes one away', async () => {
    const into = filledBook()
    const before = readFileSync(into)
    await expect(readExport(good, { into, onStep: () => undefined })).rejects.toThrow(/already/)
    expect(existsSync(into) && readFileSync(into).equals(before)).toBe(true)
  })
})

describe('foundExport', () => {
  it('tells what is wrong of a file that it lists', async () => {
    expect(await foundExport(fileOf(Buffer.from('jam')))).toMatchObject({ problem: 'notAnExport' })
    expect(await foundExport(join(tmpdir(), 'gone.cellar.zip'))).toMatchObject({
      problem: 'unreadable',
      bytes: 0,
    })
  })
})

describe('linesIn', () => {
  const read = async (...pieces: string[]) => {
    async function* source() {
      for (const piece of pieces) yield Buffer.from(piece, 'latin1')
    }
    const lines: string[] = []
    for await (const line of linesIn(source())) lines.push(line)
    return lines
  }

  it('puts lines together wherever the pieces are cut, even within a letter', async () => {
    expect(await read('a', 'b\nc\n', '\nd')).toEqual(['ab', 'c', '', 'd'])
    expect(await read('\xc5', '\x82\n')).toEqual(['ł'])
    expect(await read()).toEqual([])
  })
})
