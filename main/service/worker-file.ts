/** Where the code of a thread or process of its own lies, as source and once built. */
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

/** `path` is the file from here as source, without its ending; built, it lies beside the hosts. */
export function workerFile(path: string): string {
  const name = path.split('/').at(-1)
  // This file may be among the hosts' chunks.
  const found = [`${path}.ts`, `./${name}.js`, `../${name}.js`]
    .map((place) => fileURLToPath(new URL(place, import.meta.url)))
    .find((file) => existsSync(file))
  if (!found) throw new Error(`${name} is missing from the build`)
  return found
}
