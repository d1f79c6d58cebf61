/** The package as electron-builder makes it of the build, but for Electron's own binary. */
import { execFile } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { promisify } from 'node:util'
import { extractAll, listPackage } from '@electron/asar'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildIfStale, builtFiles } from '../../main/hosts/build-if-stale.ts'
import { root } from '../architecture/source-files.ts'
import { hosted, type Hosted } from '../soak/hosted.ts'
import { fusesOf, makeFakeElectron } from './fake-electron.ts'

const folder = mkdtempSync(join(tmpdir(), 'ratafia-package-'))
const packed = join(folder, 'release', 'linux-unpacked')
const archive = join(packed, 'resources', 'app.asar')
const { dependencies, devDependencies } = JSON.parse(
  readFileSync(join(root, 'package.json'), 'utf8'),
) as {
  dependencies: Record<string, string>
  devDependencies: Record<string, string>
}
let entries: readonly string[] = []

beforeAll(async () => {
  buildIfStale(root)
  const dist = join(folder, 'dist')
  makeFakeElectron(dist, devDependencies['electron'] ?? '')
  await promisify(execFile)(
    process.execPath,
    [
      join(root, 'node_modules', 'electron-builder', 'cli.js'),
      '--linux',
      'dir',
      `-c.electronDist=${dist}`,
      `-c.directories.output=${join(folder, 'release')}`,
    ],
    { cwd: root, maxBuffer: 10_000_000 },
  )
  entries = listPackage(archive, { isPack: false }).map((entry) => entry.slice(1))
})

afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('the packed application', () => {
  it('has the build, whole', () => {
    // Beside these, tests leave their results in out/.
    const built = ['main', 'preload', 'renderer']
      .flatMap((part) =>
        readdirSync(join(root, 'out', part), { recursive: true, withFileTypes: true }),
      )
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(root.length + 1))
    expect(built.length).toBeGreaterThan(50)
    expect(entries).toEqual(expect.arrayContaining([...built, ...builtFiles, 'package.json']))
  })

  it('has the workers, the fonts and the solver', () => {
    expect(entries).toEqual(
      expect.arrayContaining([
        'out/main/season-worker.js',
        'out/main/export-thread.js',
        'out/main/safekeeping-thread.js',
        'node_modules/highs/build/highs.wasm',
      ]),
    )
    expect(entries.filter((entry) => entry.endsWith('.woff2')).length).toBeGreaterThan(2)
  })

  it('has nothing of the sources, the tests, or what only building needs', () => {
    const folders = new Set(entries.map((entry) => entry.split('/')[0]))
    expect([...folders].toSorted()).toEqual(['node_modules', 'out', 'package.json'])
    expect(entries.filter((entry) => /\.(map|[cm]?ts|tsx|md|gyp|c|cpp|h)$/.test(entry))).toEqual([])

    const packages = entries.map((entry) => entry.replace(/^node_modules\//, ''))
    const needless = Object.keys(devDependencies).filter((name) => !isCarriedAlong(name))
    expect(needless.filter((name) => packages.includes(name))).toEqual([])
    expect(packages).toEqual(expect.arrayContaining(Object.keys(dependencies)))
    expect(packages).not.toContain('node')
  })

  it('keeps the one native module of its system outside the archive, where it can be loaded', () => {
    const natives = entries.filter((entry) => entry.endsWith('.node'))
    expect(natives).toEqual([`node_modules/better-sqlite3/prebuilds/linux-${process.arch}.node`])
    for (const native of natives)
      expect(existsSync(join(`${archive}.unpacked`, native)), native).toBe(true)
  })

  it('has the licences beside it, its own and those of all it holds', () => {
    expect(readFileSync(join(packed, 'resources', 'LICENSE'), 'utf8')).toContain('MIT License')
    const page = readFileSync(join(packed, 'resources', 'THIRD-PARTY.md'), 'utf8')
    const packages = entries
      .flatMap(
        (entry) => /node_modules\/((?:@[^/]+\/)?[^/@]+)\/package\.json$/.exec(entry)?.[1] ?? [],
      )
      .filter((name) => !page.includes(`\n## ${name} `))
    expect(packages).toEqual([])
  })

  it('has its fuses set', () => {
    // runAsNode, cookies, NODE_OPTIONS, --inspect, integrity of the archive, only from the archive,
    // own snapshot, file: privileges; the last is WebAssembly's traps, left as Electron has it.
    expect(fusesOf(readFileSync(join(packed, 'ratafia')))).toBe('100011001')
  })
})

describe.skipIf(process.platform !== 'linux')('the packed code, under plain Node', () => {
  const app = join(folder, 'app')
  let host: Hosted | undefined
  const ask: Hosted['ask'] = (channel, request) => {
    if (!host) throw new Error('the host did not start')
    return host.ask(channel, request)
  }

  beforeAll(async () => {
    extractAll(archive, app)
    host = await hosted(
      join(folder, 'books', 'cellar.ratafia'),
      join(app, 'out', 'main', 'browser.js'),
    )
    await ask('cellar.openDemo', {})
  })

  afterAll(() => host?.kill())

  it('serves its page', async () => {
    expect(await ask('batches.list', {})).not.toEqual([])
  })

  it('plans a season in a process of its own', async () => {
    const jobId = 'season'
    await ask('season.startPlan', { jobId, isExplained: false, timeLimitSeconds: 5 })
    const { state, plan } = await finished(() => ask('season.planState', { jobId }))
    expect(state).toBe('done')
    expect(plan?.batches.length).toBeGreaterThan(0)
  })

  it('exports in a thread of its own', async () => {
    const jobId = 'export'
    await ask('exports.start', { jobId })
    const { state, exported } = await finished(() => ask('backups.job', { jobId }))
    expect(state).toBe('done')
    expect(exported?.problem).toBeNull()
  })

  it('prints, with the fonts it brings', async () => {
    const [sheet] = (await ask('labels.sheets', {})).usual
    if (!sheet) throw new Error('no sheet')
    const { pdfBase64 } = await ask('labels.testPaper', { sheet })
    expect(Buffer.from(pdfBase64, 'base64').subarray(0, 5).toString()).toBe('%PDF-')
  })

  it('ends when told to', async () => {
    expect(await host?.stop()).toBe(0)
  })
})

async function finished<Job extends { state: string }>(look: () => Promise<Job>): Promise<Job> {
  for (;;) {
    const job = await look()
    if (job.state !== 'running') return job
    await pause(100)
  }
}

/** What production dependencies need themselves may be in devDependencies too, for the bundles. */
const isCarriedAlong = (name: string) => name === 'fflate'
