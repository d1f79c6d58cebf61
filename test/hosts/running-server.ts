/** The browser host's server over a fake service and a folder of made-up pages. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { request as rawRequest, type OutgoingHttpHeaders } from 'node:http'
import { openServer, type BrowserServerOptions } from '../../main/hosts/browser/open-server.ts'
import { fakeService } from './fake-service.ts'

export const token = 'T'.repeat(43)

export async function runningServer(options: Partial<BrowserServerOptions> = {}) {
  const outer = mkdtempSync(join(tmpdir(), 'ratafia-server-'))
  const rendererFolder = join(outer, 'renderer')
  mkdirSync(join(rendererFolder, 'assets'), { recursive: true })
  writeFileSync(join(outer, 'secret.json'), '"outside"')
  writeFileSync(join(rendererFolder, 'index.html'), '<title>page</title>')
  writeFileSync(join(rendererFolder, 'assets', 'page.js'), 'export {}')
  const service = fakeService()
  const server = await openServer({ service, rendererFolder, token, port: 0, ...options })
  const { origin } = server

  return {
    service,
    origin,
    /** `headers` take the place of the right ones; names in lower case. */
    rpc: (name: string, body: string, headers: Record<string, string> = {}) =>
      fetch(`${origin}/rpc/${name}`, {
        method: 'POST',
        body,
        headers: {
          authorization: `Bearer ${token}`,
          'content-type': 'application/json',
          ...headers,
        },
      }),
    /** A request that no browser would send: any path, any Host. */
    raw: (path: string, headers: OutgoingHttpHeaders = {}, method = 'GET') =>
      rawStatus(origin, path, headers, method),
    close: async () => {
      await server.close()
      rmSync(outer, { recursive: true })
    },
  }
}

function rawStatus(
  origin: string,
  path: string,
  headers: OutgoingHttpHeaders,
  method: string,
): Promise<{ status: number; text: string }> {
  return new Promise((done, failed) => {
    const { hostname, port } = new URL(origin)
    rawRequest({ hostname, port, path, method, headers }, (response) => {
      let text = ''
      response.setEncoding('utf8').on('data', (part: string) => {
        text += part
      })
      response.on('end', () => done({ status: response.statusCode ?? 0, text }))
    })
      .on('error', failed)
      .end()
  })
}
