/** Runs every bench beside this file, or those whose names are given. */
import { readdirSync } from 'node:fs'

const asked = process.argv.slice(2)
const here = new URL('.', import.meta.url)
const files = readdirSync(here).filter((file) => file.endsWith('.ts') && file !== 'run.ts')

for (const file of files.sort()) {
  const name = file.replace(/\.ts$/, '')
  if (asked.length > 0 && !asked.includes(name)) continue
  const bench: { run: () => void | Promise<void> } = await import(new URL(file, here).href)
  console.log(`\n${name}`)
  await bench.run()
}
