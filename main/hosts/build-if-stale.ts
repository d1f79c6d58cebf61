/** Builds the application when its sources are not those that `out/` was made from. */
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { StartProblem } from './start-problem.ts'

const sources = [
  'main',
  'renderer',
  'shared',
  'electron.vite.config.ts',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
]

export const builtFiles = [
  'out/main/electron.js',
  'out/main/browser.js',
  'out/preload/preload.cjs',
  'out/renderer/index.html',
]

/** Throws when the build fails; the builder has said why on stderr by then. */
export function buildIfStale(root: string): void {
  // Taken before the build: an edit made while it runs makes the next start build again.
  const fingerprint = fingerprintOf(root)
  const stamp = join(root, 'out', 'built-from.txt')
  const isComplete = builtFiles.every((file) => existsSync(join(root, file)))
  if (isComplete && existsSync(stamp) && readFileSync(stamp, 'utf8') === fingerprint) return

  const builder = join(root, 'node_modules', 'electron-vite', 'bin', 'electron-vite.js')
  if (!existsSync(builder)) throw new StartProblem('notInstalled', root)
  const { status } = spawnSync(process.execPath, [builder, 'build', '--logLevel', 'warn'], {
    cwd: root,
    // What the builder says goes to stderr: stdout is kept for the link.
    stdio: ['ignore', 2, 2],
  })
  if (status !== 0) throw new StartProblem('notBuilt', root)
  writeFileSync(stamp, fingerprint)
}

/** Names, sizes and times of all sources, condensed. */
export function fingerprintOf(root: string): string {
  const hash = createHash('sha256')
  for (const source of sources) addTo(hash, join(root, source))
  return hash.digest('hex')
}

function addTo(hash: ReturnType<typeof createHash>, path: string): void {
  const found = statSync(path, { throwIfNoEntry: false })
  if (!found) return
  if (!found.isDirectory()) {
    hash.update(`${path} ${found.size} ${found.mtimeMs}\n`)
    return
  }
  for (const name of readdirSync(path).sort()) addTo(hash, join(path, name))
}
