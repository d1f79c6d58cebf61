/** THIRD-PARTY.md: whose work is in the package, and on which terms. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { format } from 'prettier'
import { root } from '../architecture/source-files.ts'

export const pageFile = join(root, 'THIRD-PARTY.md')

export async function thirdPartyPage(): Promise<string> {
  const folders = new Set([...bundledFolders(), ...installedFolders(), ...typefaceFolders()])
  const sections = [...folders]
    .map(packageIn)
    .toSorted((one, other) => (one.title < other.title ? -1 : 1))
    .map(({ title, terms, text }) => `## ${title}\n\n${terms}\n\n${text}\n`)
  return format(`${preface}\n${sections.join('\n')}`, { parser: 'markdown' })
}

const preface = `# Work of others in Ratafia

These packages are in what \`npm run package\` makes, whole or in part. \`npm run licences\` writes this page.
Electron's own notices, with Chromium's, lie beside the program. better-sqlite3 holds SQLite, which is in the
public domain.
`

/** Packages of which code came into a bundle: a map names the files that are left after shaking. */
function bundledFolders(): string[] {
  const target = mkdtempSync(join(tmpdir(), 'ratafia-maps-'))
  try {
    const builder = join(root, 'node_modules', 'electron-vite', 'bin', 'electron-vite.js')
    const args = ['build', '--logLevel', 'warn', '--sourcemap', '--outDir', target]
    const { status, stderr } = spawnSync(process.execPath, [builder, ...args], {
      cwd: root,
      encoding: 'utf8',
    })
    if (status !== 0) throw new Error(`the build with maps failed:\n${stderr}`)
    return readdirSync(target, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.map'))
      .flatMap((name) => sourcesOf(join(target, name)))
      .flatMap((source) => /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(source)?.[0] ?? [])
  } finally {
    rmSync(target, { recursive: true })
  }
}

function sourcesOf(mapFile: string): string[] {
  const { sources } = JSON.parse(readFileSync(mapFile, 'utf8')) as { sources: string[] }
  return sources.map((source) => resolve(dirname(mapFile), source))
}

/** Packages that are put in as they are. The Node of `npm ci` is optional, and is not. */
function installedFolders(): string[] {
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, { dev?: true; optional?: true; devOptional?: true }>
  }
  return Object.entries(packages)
    .filter(([path, { dev, optional, devOptional }]) => path && !dev && !optional && !devOptional)
    .map(([path]) => join(root, path))
}

/** Files that style sheets name are in no map. */
function typefaceFolders(): string[] {
  const sheet = readFileSync(join(root, 'renderer', 'app', 'theme', 'fonts.css'), 'utf8')
  return [...sheet.matchAll(/url\('((?:@[^/]+\/)?[^/]+)\//g)].map(([, name]) =>
    join(root, 'node_modules', String(name)),
  )
}

function packageIn(folder: string): { title: string; terms: string; text: string } {
  const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    name: string
    version: string
    license?: string
    author?: string | { name: string }
  }
  const author = typeof about.author === 'string' ? about.author : about.author?.name
  const file = readdirSync(folder).find((name) => /^(licen[cs]e|copying)/i.test(name))
  if (file === undefined && about.license === undefined)
    throw new Error(`${about.name} names no licence: it may not be handed on`)
  return {
    title: `${about.name} ${about.version}`,
    terms: about.license ?? 'Its licence:',
    text:
      file === undefined
        ? `By ${author?.replace(/ <.*/, '') ?? 'its authors'}. The package brings no text of the licence.`
        : `\`\`\`text\n${readFileSync(join(folder, file), 'utf8').replaceAll('\r', '').trim()}\n\`\`\``,
  }
}
