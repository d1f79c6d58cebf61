/**
 * A folder that the packager takes for Electron's distribution, where the real one cannot be had. Its
 * binary is nothing but the strip of fuses, in the form @electron/fuses looks for.
 */
import { chmodSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

const sentinel = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX'
const fuseVersion = 1

/** In the order of the strip; each is the opposite of what the package wants, or Electron's usual. */
const asFetched = '011100011'

export function makeFakeElectron(folder: string, electronVersion: string): void {
  mkdirSync(join(folder, 'locales'), { recursive: true })
  mkdirSync(join(folder, 'resources'))
  const empty = ['LICENSE', 'LICENSES.chromium.html', 'chrome_crashpad_handler']
  for (const name of [...empty, join('locales', 'en-US.pak')]) writeFileSync(join(folder, name), '')
  writeFileSync(join(folder, 'version'), electronVersion)
  const strip = Buffer.from([fuseVersion, asFetched.length])
  writeFileSync(
    join(folder, 'electron'),
    Buffer.concat([Buffer.from(sentinel), strip, Buffer.from(asFetched)]),
  )
  chmodSync(join(folder, 'electron'), 0o755)
}

/** The strip as the packager left it, a digit a fuse. */
export function fusesOf(binary: Buffer): string {
  const at = binary.indexOf(sentinel) + sentinel.length
  const length = binary[at + 1] ?? 0
  return binary.subarray(at + 2, at + 2 + length).toString('latin1')
}
