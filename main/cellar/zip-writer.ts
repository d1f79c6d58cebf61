/**
 * Writes a zip file piece by piece, so that a book of any size takes little memory. The result is
 * on disk when the promise resolves. Layout: local headers with their data, then the directory.
 */
import { open, type FileHandle } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { crc32, createDeflateRaw } from 'node:zlib'

export interface EntryToZip {
  readonly name: string
  readonly at: Date
  readonly content: () => Readable | Uint8Array
}

/** Four gigabytes: sizes have 32 bits in the plain format. */
const mostBytes = 0xffff_ffff
const deflated = 8
const needsVersion = 20
const namesAreUtf8 = 0x0800

interface Written {
  readonly entry: EntryToZip
  readonly offset: number
  readonly crc: number
  readonly packed: number
  readonly bytes: number
}

/** `file` must not exist yet. `onBytes` is told how much went in, entry by entry. */
export async function writeZip(
  file: string,
  entries: readonly EntryToZip[],
  onBytes: (bytes: number) => void = () => {},
): Promise<void> {
  const handle = await open(file, 'wx', 0o600)
  try {
    let at = 0
    const directory: Written[] = []
    for (const entry of entries) {
      const written = await writeEntry(handle, at, entry, onBytes)
      directory.push(written)
      at = written.offset + localHeader(written).length + written.packed
    }
    const records = Buffer.concat(directory.map(centralHeader))
    const end = Buffer.concat([records, endRecord(directory.length, records.length, at)])
    await writeAll(handle, end, at)
    await handle.sync()
  } finally {
    await handle.close()
  }
}

async function writeEntry(
  handle: FileHandle,
  offset: number,
  entry: EntryToZip,
  onBytes: (bytes: number) => void,
): Promise<Written> {
  let crc = 0
  let bytes = 0
  const content = entry.content()
  const counted = async function* () {
    for await (const piece of content instanceof Readable ? content : [content]) {
      const chunk = piece as Uint8Array
      crc = crc32(chunk, crc)
      bytes += chunk.length
      onBytes(chunk.length)
      yield chunk
    }
  }
  const source = Readable.from(counted())
  const deflate = createDeflateRaw({ level: 6 })
  source.on('error', (error) => deflate.destroy(error))
  const headerLength = localHeader({ entry, offset, crc, packed: 0, bytes }).length
  let packed = 0
  for await (const piece of source.pipe(deflate)) {
    const chunk = piece as Uint8Array
    await writeAll(handle, chunk, offset + headerLength + packed)
    packed += chunk.length
  }
  if (Math.max(bytes, offset + packed) > mostBytes) throw new Error('too big for a zip file')
  const written = { entry, offset, crc, packed, bytes }
  await writeAll(handle, localHeader(written), offset)
  return written
}

/** A single write may take less than it was given. */
async function writeAll(handle: FileHandle, bytes: Uint8Array, at: number): Promise<void> {
  let done = 0
  while (done < bytes.length) {
    const { bytesWritten } = await handle.write(bytes, done, bytes.length - done, at + done)
    done += bytesWritten
  }
}

function localHeader({ entry, crc, packed, bytes }: Written): Buffer {
  const name = Buffer.from(entry.name)
  const header = Buffer.alloc(30)
  header.writeUInt32LE(0x0403_4b50, 0)
  header.writeUInt16LE(needsVersion, 4)
  header.writeUInt16LE(namesAreUtf8, 6)
  header.writeUInt16LE(deflated, 8)
  header.writeUInt32LE(dosTime(entry.at), 10)
  header.writeUInt32LE(crc, 14)
  header.writeUInt32LE(packed, 18)
  header.writeUInt32LE(bytes, 22)
  header.writeUInt16LE(name.length, 26)
  return Buffer.concat([header, name])
}

function centralHeader({ entry, offset, crc, packed, bytes }: Written): Buffer {
  const name = Buffer.from(entry.name)
  const header = Buffer.alloc(46)
  header.writeUInt32LE(0x0201_4b50, 0)
  header.writeUInt16LE(needsVersion, 4)
  header.writeUInt16LE(needsVersion, 6)
  header.writeUInt16LE(namesAreUtf8, 8)
  header.writeUInt16LE(deflated, 10)
  header.writeUInt32LE(dosTime(entry.at), 12)
  header.writeUInt32LE(crc, 16)
  header.writeUInt32LE(packed, 20)
  header.writeUInt32LE(bytes, 24)
  header.writeUInt16LE(name.length, 28)
  header.writeUInt32LE(offset, 42)
  return Buffer.concat([header, name])
}

function endRecord(count: number, size: number, offset: number): Buffer {
  const record = Buffer.alloc(22)
  record.writeUInt32LE(0x0605_4b50, 0)
  record.writeUInt16LE(count, 8)
  record.writeUInt16LE(count, 10)
  record.writeUInt32LE(size, 12)
  record.writeUInt32LE(offset, 16)
  return record
}

/** Date above time, in steps of two seconds, from 1980 on; the format knows no time zone. */
function dosTime(at: Date): number {
  const year = Math.max(1980, at.getUTCFullYear()) - 1980
  const date = (year << 9) | ((at.getUTCMonth() + 1) << 5) | at.getUTCDate()
  const time =
    (at.getUTCHours() << 11) | (at.getUTCMinutes() << 5) | Math.floor(at.getUTCSeconds() / 2)
  return ((date << 16) | time) >>> 0
}
