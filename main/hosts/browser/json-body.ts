/** Reads the JSON that a request carries, up to a limit. */
import type { IncomingMessage } from 'node:http'
import { deepestNesting, depthOf } from '../../../shared/json-depth.ts'
import { HttpRefusal } from './http-refusal.ts'

export const bodyLimitBytes = 5_000_000

/** An oversized body is read to its end, so that its sender gets the answer, but not for ever. */
const patienceBytes = 10 * bodyLimitBytes

export async function jsonBody(request: IncomingMessage): Promise<unknown> {
  const [type] = (request.headers['content-type'] ?? '').split(';')
  if (type?.trim().toLowerCase() !== 'application/json')
    throw new HttpRefusal(415, 'Send JSON, as application/json.')
  const text = textOf(await bodyBytes(request))
  if (depthOf(text) > deepestNesting) throw new HttpRefusal(400, 'This is nested too deep.')
  try {
    return JSON.parse(text) as unknown
  } catch {
    throw notJson()
  }
}

const notJson = () => new HttpRefusal(400, 'This is not JSON.')

function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw notJson()
  }
}

async function bodyBytes(request: IncomingMessage): Promise<Uint8Array> {
  if (Number(request.headers['content-length'] ?? 0) > bodyLimitBytes) throw tooBig()
  const chunks: Uint8Array[] = []
  let size = 0
  for await (const chunk of request as AsyncIterable<Uint8Array>) {
    size += chunk.length
    if (size <= bodyLimitBytes) chunks.push(chunk)
    else if (size > patienceBytes) break
  }
  if (size > bodyLimitBytes) throw tooBig()
  return Buffer.concat(chunks)
}

const tooBig = () => new HttpRefusal(413, `At most ${bodyLimitBytes} bytes.`)
