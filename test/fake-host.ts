/** Serves the built screens over answers made up by a test: a browser sees them without a book. */
import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join, normalize } from 'node:path'
import type { FakeBridge } from './screens/fake-bridge.ts'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
}

export interface FakeHost {
  readonly link: string
  close: () => void
}

export async function serveScreens(folder: string, bridge: FakeBridge): Promise<FakeHost> {
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname
    void answer(path, request, folder, bridge).then(({ status, type, body }) => {
      response.writeHead(status, { 'Content-Type': type }).end(body)
    })
  })
  await new Promise<void>((ready) => void server.listen(0, '127.0.0.1', ready))
  const { port } = server.address() as AddressInfo
  return {
    link: `http://127.0.0.1:${port}/#token=made-up`,
    close: () => {
      server.closeAllConnections()
      server.close()
    },
  }
}

async function answer(
  path: string,
  request: AsyncIterable<Buffer>,
  folder: string,
  bridge: FakeBridge,
) {
  if (path.startsWith('/rpc/')) {
    const chunks: Buffer[] = []
    for await (const chunk of request) chunks.push(chunk)
    const asked: unknown = JSON.parse(Buffer.concat(chunks).toString() || '{}')
    const reply = await bridge.call(decodeURIComponent(path.slice(5)), asked)
    return { status: 200, type: 'application/json', body: JSON.stringify(reply) }
  }
  try {
    const file = join(folder, path === '/' ? 'index.html' : normalize(path))
    return { status: 200, type: types[extname(file)] ?? 'text/plain', body: await readFile(file) }
  } catch {
    return { status: 404, type: 'text/plain', body: 'not found' }
  }
}
