/**
 * `npm run mutants -- [SHARE [FOLDER | FOLDER/FILE …]]`: does a test notice when a line of the engine is wrong?
 * The engine is changed in one place at a time, and the tests of that folder run: what another
 * folder's tests would notice does not count. SHARE (above 0, at most 1; 1 when left out) is how much
 * of the code is tried: blocks of lines, always the same ones for the same share.
 * Ends with 1 where fewer are noticed than `enough`, with 2 on a wrong argument.
 */
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'

/** What is read of a report; see mutation-testing-report-schema. */
interface Report {
  readonly files: Readonly<Record<string, { readonly source: string; readonly mutants: Mutant[] }>>
}
interface Mutant {
  readonly mutatorName: string
  readonly replacement?: string
  readonly status: string
  readonly location: { readonly start: { readonly line: number } }
}
interface Score {
  readonly noticed: number
  readonly tried: number
  readonly survivors: readonly string[]
}

const enough = 0.8
const linesPerBlock = 20
const root = join(import.meta.dirname, '..', '..')
const engine = join(root, 'main', 'engine')
const reports = join(root, 'out', 'mutants')
/** The library is data, held against its sources row by row. */
const data = join('fruit', 'library')

const [shareText = '1', ...asked] = process.argv.slice(2)
const share = Number(shareText)
const all = readdirSync(engine, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
const unknown = asked.filter(
  (name) => !all.includes(folderOf(name)) || !existsSync(join(engine, name)),
)

if (!(share > 0 && share <= 1)) end(`SHARE must be above 0 and at most 1, not '${shareText}'`)
else if (unknown.length > 0)
  end(`the engine has no folder ${unknown.join(', ')}: ${all.join(', ')}`)
else process.exitCode = tryAll(asked.length > 0 ? asked : all)

function end(problem: string): void {
  console.error(problem)
  process.exitCode = 2
}

function folderOf(name: string): string {
  return name.split('/')[0] ?? name
}

function tryAll(names: readonly string[]): 0 | 1 {
  mkdirSync(reports, { recursive: true })
  const sum = { noticed: 0, tried: 0 }
  for (const name of names) {
    const { noticed, tried, survivors } = scoreOf(name)
    sum.noticed += noticed
    sum.tried += tried
    console.log(told(name, noticed, tried))
    const list = join(reports, `${name.replaceAll('/', '.')}.survivors.txt`)
    writeFileSync(list, `${survivors.join('\n')}\n`)
  }
  console.log(told('all', sum.noticed, sum.tried))
  console.log(`What no test noticed: ${relative(root, reports)}/*.survivors.txt`)
  return sum.noticed >= enough * sum.tried ? 0 : 1
}

function told(name: string, noticed: number, tried: number): string {
  const score = tried === 0 ? 'nothing tried' : `${((100 * noticed) / tried).toFixed(1)} %`
  return `${name.padEnd(30)}${String(noticed).padStart(6)} of ${String(tried).padStart(6)} noticed, ${score}`
}

function scoreOf(name: string): Score {
  const mutate = blocksOf(name)
  if (mutate.length === 0) return { noticed: 0, tried: 0, survivors: [] }
  const survivors: string[] = []
  let noticed = 0
  for (const [file, { source, mutants }] of Object.entries(
    reportOf(folderOf(name), mutate).files,
  )) {
    const lines = source.split('\n')
    for (const { status, location, mutatorName, replacement = '' } of mutants) {
      if (status === 'Killed' || status === 'Timeout') noticed++
      if (status !== 'Survived' && status !== 'NoCoverage') continue
      const { line } = location.start
      const changed = `${lines[line - 1]?.trim()} => ${replacement.replaceAll(/\s+/g, ' ')}`
      survivors.push(`${status} ${file}:${line} ${mutatorName}: ${changed}`)
    }
  }
  return { noticed, tried: noticed + survivors.length, survivors }
}

function reportOf(folder: string, mutate: readonly string[]): Report {
  const report = join(reports, `${folder}.json`)
  const config = join(reports, `${folder}.config.json`)
  rmSync(report, { force: true })
  const options = {
    testRunner: 'vitest',
    vitest: { configFile: 'test/mutants/vitest.config.ts', related: false },
    mutate,
    concurrency: 2,
    coverageAnalysis: 'perTest',
    // What is reckoned once when a file is read cannot be switched on test by test.
    ignoreStatic: true,
    reporters: ['json', 'progress-append-only'],
    jsonReporter: { fileName: report },
    tempDirName: join(reports, 'tmp'),
    allowConsoleColors: false,
  }
  writeFileSync(config, JSON.stringify(options))
  const stryker = join(root, 'node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js')
  const { status } = spawnSync(process.execPath, [stryker, 'run', config], {
    cwd: root,
    env: { ...process.env, MUTANTS_FOLDER: folder },
    // It can take an hour: how far it is goes to stderr, the scores alone to stdout.
    stdio: ['ignore', process.stderr, process.stderr],
  })
  if (status !== 0) throw new Error(`${folder} could not be tried: see above`)
  return JSON.parse(readFileSync(report, 'utf8')) as Report
}

/** The files, or `file:from-to` for each block of lines that is tried. */
function blocksOf(name: string): string[] {
  const files = readdirSync(join(engine, folderOf(name)), { recursive: true, encoding: 'utf8' })
    .map((file) => join(folderOf(name), file))
    .filter((file) => file.startsWith(join(name)) && file.endsWith('.ts') && !file.startsWith(data))
    .sort()
  return files.flatMap((file) => {
    const path = relative(root, join(engine, file)).replaceAll('\\', '/')
    // Whole, so that what reaches from one block into the next is tried too.
    if (share === 1) return path
    const lines = readFileSync(join(root, path), 'utf8').split('\n').length
    const blocks = Array.from({ length: Math.ceil(lines / linesPerBlock) }, (_, block) => block)
    return blocks
      .filter((block) => lot(`${path} ${block}`) < share)
      .map((block) => `${path}:${1 + block * linesPerBlock}-${(block + 1) * linesPerBlock}`)
  })
}

/** Evenly from 0 to 1, the same for the same name. */
function lot(name: string): number {
  return createHash('sha256').update(name).digest().readUInt32BE() / 2 ** 32
}
