/** The browser host as a process of its own, from whichever file has it: made to be killed. */
import { pathToFileURL } from 'node:url'
import type * as BrowserHost from '../../main/hosts/browser/main.ts'

const [cellarFile, hostFile = ''] = process.argv.slice(2)
const host = pathToFileURL(hostFile).href
const { startBrowserHost } = (await import(host)) as typeof BrowserHost
await startBrowserHost({
  version: 'soak',
  port: 0,
  cellarFile,
  fileToOpen: undefined,
  startsWithDemo: false,
  opensWindow: false,
})
