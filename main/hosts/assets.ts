/** The one way in which either host hands out a file of the built renderer. */
import { readFile } from 'node:fs/promises'
import { extname, resolve, sep } from 'node:path'

const policy = [
  "default-src 'none'",
  "script-src 'self'",
  // react-aria-components writes style elements.
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

export const securityHeaders: Readonly<Record<string, string>> = {
  'Content-Security-Policy': policy,
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=()',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-store',
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
}

export interface Asset {
  status: 200 | 404
  headers: Record<string, string>
  body: Uint8Array<ArrayBuffer>
}

/** `pathname` is the still encoded path of a URL; `folder` must be absolute. */
export async function asset(folder: string, pathname: string): Promise<Asset> {
  const file = fileWithin(folder, pathname)
  const type = file && types[extname(file)]
  if (!file || !type) return missing()
  try {
    const body = new Uint8Array(await readFile(file))
    return { status: 200, headers: { ...securityHeaders, 'Content-Type': type }, body }
  } catch {
    return missing()
  }
}

function fileWithin(folder: string, pathname: string): string | undefined {
  let decoded: string
  try {
    decoded = decodeURIComponent(pathname)
  } catch {
    return undefined
  }
  if (/[\0\\]|.\/$/.test(decoded)) return undefined
  const file = resolve(folder, `.${decoded === '/' ? '/index.html' : decoded}`)
  return file.startsWith(folder + sep) ? file : undefined
}

const missing = (): Asset => ({
  status: 404,
  headers: { ...securityHeaders, 'Content-Type': 'text/plain; charset=utf-8' },
  body: new TextEncoder().encode('There is no such page.'),
})
