/**
 * Runs every bench beside this file but the long ones, or the one whose name is given, with what
 * follows the name: `npm run bench -- forty-years [FILE [YEARS]]` builds a book of forty years.
 */
import { readdirSync } from 'node:fs'

const [asked, ...rest] = process.argv.slice(2)
/** Minutes each: only when asked for. */
const long = ['forty-years']
const here = new URL('.', import.meta.url)
const files = readdirSync(here).filter((file) => file.endsWith('.ts') && file !== 'run.ts')

for (const file of files.sort()) {
  const name = file.replace(/\.ts$/, '')
  if (asked === undefined ? long.includes(name) : asked !== name) continue
  const bench: { run: (rest: readonly string[]) => void | Promise<void> } = await import(
    new URL(file, here).href
  )
  console.log(`\n${name}`)
  await bench.run(rest)
}
