/**
 * Reads a zip file by its directory. Whoever reads asks for an entry by name and says where it goes:
 * names inside the file never become paths, and no entry grows beyond the size that it states.
 */
import { open, type FileHandle } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { crc32, createInflateRaw } from 'node:zlib'

export type ZipProblemKind = 'notAZip' | 'cutShort' | 'damaged' | 'unsafeNames'

export class ZipProblem extends Error {
  override name = 'ZipProblem'
  readonly kind: ZipProblemKind
  constructor(kind: ZipProblemKind, message: string, options?: ErrorOptions) {
    super(message, options)
    this.kind = kind
  }
}

export interface ZipEntry {
  readonly name: string
  readonly bytes: number
  readonly packed: number
  readonly crc: number
  readonly method: number
  readonly offset: number
}

const endBytes = 22
const mostComment = 0xffff
/** Ours hold tens of files; each takes 46 bytes and its name. */
const mostDirectoryBytes = 1024 * 1024
const stored = 0
const deflated = 8

/** Opens the file only for as long as `use` runs. */
export async function withZip<T>(file: string, use: (zip: OpenZip) => Promise<T>): Promise<T> {
  const handle = await open(file, 'r')
  try {
    return await use({ handle, entries: await directoryOf(handle) })
  } finally {
    await handle.close()
  }
}

export interface OpenZip {
  readonly handle: FileHandle
  readonly entries: ReadonlyMap<string, ZipEntry>
}

async function directoryOf(handle: FileHandle): Promise<Map<string, ZipEntry>> {
  const about = await handle.stat()
  const { size } = about
  // A folder can be opened, too.
  if (!about.isFile()) throw new ZipProblem('notAZip', 'this is no file')
  const tail = await bytesAt(handle, Math.max(0, size - endBytes - mostComment), size)
  const end = tail.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'))
  if (end < 0 || end + endBytes > tail.length) {
    const head = await bytesAt(handle, 0, Math.min(4, size))
    const isBegun = head.toString('latin1') === 'PK\x03\x04'
    throw isBegun
      ? new ZipProblem('cutShort', 'the file ends before its directory')
      : new ZipProblem('notAZip', 'this is no zip file')
  }
  const count = tail.readUInt16LE(end + 10)
  const length = tail.readUInt32LE(end + 12)
  const offset = tail.readUInt32LE(end + 16)
  if (length > mostDirectoryBytes) throw new ZipProblem('damaged', 'the directory is too long')
  if (offset + length > size) throw new ZipProblem('cutShort', 'the directory is cut short')
  return entriesIn(await bytesAt(handle, offset, offset + length), count)
}

/** A plain path downward, on every system. */
export function isSafeName(name: string): boolean {
  // oxlint-disable-next-line no-control-regex -- they are what is looked for
  if (name === '' || name.length > 300 || /[\\:\u0000-\u001f\u007f]/.test(name)) return false
  return name
    .replace(/\/$/, '')
    .split('/')
    .every((step) => step !== '' && !/^\s*\.{1,2}\s*$/.test(step))
}

function entriesIn(directory: Buffer, count: number): Map<string, ZipEntry> {
  const entries = new Map<string, ZipEntry>()
  let at = 0
  for (let index = 0; index < count; index += 1) {
    if (at + 46 > directory.length || directory.readUInt32LE(at) !== 0x0201_4b50)
      throw new ZipProblem('damaged', 'the directory is damaged')
    const nameLength = directory.readUInt16LE(at + 28)
    const name = directory.toString('utf8', at + 46, at + 46 + nameLength)
    // Two programs could each read another one of them.
    if (entries.has(name)) throw new ZipProblem('damaged', 'one name stands for two files')
    // Names are never used as paths here, but such a file was made to do harm to some program.
    if (!isSafeName(name))
      throw new ZipProblem('unsafeNames', 'a name inside climbs out of its folder')
    entries.set(name, {
      name,
      method: directory.readUInt16LE(at + 10),
      crc: directory.readUInt32LE(at + 16),
      packed: directory.readUInt32LE(at + 20),
      bytes: directory.readUInt32LE(at + 24),
      offset: directory.readUInt32LE(at + 42),
    })
    at += 46 + nameLength + directory.readUInt16LE(at + 30) + directory.readUInt16LE(at + 32)
  }
  return entries
}

/** An entry's content in pieces; throws at the end when it is not what the directory says. */
export async function* contentOf(zip: OpenZip, name: string): AsyncGenerator<Uint8Array> {
  const entry = zip.entries.get(name)
  if (!entry) throw new ZipProblem('damaged', `there is no ${name} in this file`)
  const header = await bytesAt(zip.handle, entry.offset, entry.offset + 30)
  if (header.length < 30 || header.readUInt32LE(0) !== 0x0403_4b50)
    throw new ZipProblem('damaged', `the header of ${name} is damaged`)
  const start = entry.offset + 30 + header.readUInt16LE(26) + header.readUInt16LE(28)
  const packed = Readable.from(piecesOf(zip.handle, start, start + entry.packed))
  let crc = 0
  let bytes = 0
  try {
    for await (const piece of inflated(packed, entry.method)) {
      const chunk = piece as Uint8Array
      bytes += chunk.length
      if (bytes > entry.bytes) throw new ZipProblem('damaged', `${name} is larger than it says`)
      crc = crc32(chunk, crc)
      yield chunk
    }
  } catch (error) {
    if (error instanceof ZipProblem) throw error
    throw new ZipProblem('damaged', `${name} cannot be unpacked`, { cause: error })
  }
  if (bytes !== entry.bytes || crc !== entry.crc)
    throw new ZipProblem('damaged', `${name} is not as it was packed`)
}

function inflated(packed: Readable, method: number): Readable {
  if (method === stored) return packed
  if (method !== deflated) throw new ZipProblem('damaged', `packed in an unknown way (${method})`)
  const inflate = createInflateRaw()
  packed.on('error', (error) => inflate.destroy(error))
  return packed.pipe(inflate)
}

/** A small entry whole. */
export async function textOf(zip: OpenZip, name: string, mostBytes: number): Promise<string> {
  const pieces: Uint8Array[] = []
  let bytes = 0
  for await (const piece of contentOf(zip, name)) {
    bytes += piece.length
    if (bytes > mostBytes) throw new ZipProblem('damaged', `${name} is too large`)
    pieces.push(piece)
  }
  return Buffer.concat(pieces).toString('utf8')
}

const pieceBytes = 256 * 1024

async function* piecesOf(handle: FileHandle, from: number, to: number) {
  for (let at = from; at < to;) {
    const piece = await bytesAt(handle, at, Math.min(to, at + pieceBytes))
    if (piece.length === 0) throw new ZipProblem('cutShort', 'the file is cut short')
    at += piece.length
    yield piece
  }
}

async function bytesAt(handle: FileHandle, from: number, to: number): Promise<Buffer> {
  const buffer = Buffer.alloc(Math.max(0, to - from))
  let filled = 0
  while (filled < buffer.length) {
    const { bytesRead } = await handle.read(buffer, filled, buffer.length - filled, from + filled)
    if (bytesRead === 0) break
    filled += bytesRead
  }
  return buffer.subarray(0, filled)
}
