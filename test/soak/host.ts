/** The browser host as a process of its own, from the sources or as built: made to be killed. */
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type * as BrowserHost from '../../main/hosts/browser/main.ts'

const root = join(import.meta.dirname, '..', '..')
const [cellarFile, isBuilt] = process.argv.slice(2)
const parts = isBuilt ? ['out', 'main', 'browser.js'] : ['main', 'hosts', 'browser', 'main.ts']
const host = pathToFileURL(join(root, ...parts)).href
const { startBrowserHost } = (await import(host)) as typeof BrowserHost
await startBrowserHost({
  version: 'soak',
  port: 0,
  cellarFile,
  startsWithDemo: false,
  opensWindow: false,
})
