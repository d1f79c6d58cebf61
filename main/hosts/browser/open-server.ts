/**
 * The loopback server: the renderer's files for anyone on this machine, since they hold nothing
 * private, and the service for whoever knows this launch's secret.
 */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Service } from '../../service/service.ts'
import { answerCall } from '../answer-call.ts'
import { asset, securityHeaders } from '../assets.ts'
import { StartProblem } from '../start-problem.ts'
import { calendarOf, secretOfCalendar } from './calendar-feed.ts'
import { contract } from './contract.ts'
import { eventStreams } from './event-streams.ts'
import {
  mustKnowToken,
  mustNameOurHost,
  mustNotComeFromElsewhere,
  mustUseMethod,
} from './guards.ts'
import { HttpRefusal } from './http-refusal.ts'
import { jsonBody } from './json-body.ts'
import { wrongGuesses } from './wrong-guesses.ts'

export interface BrowserServerOptions {
  service: Service
  rendererFolder: string
  token: string
  /** 0 lets the system choose. */
  port: number
  /** Called when a window opens or closes, with how many there are now. */
  onWindowCount?: (count: number) => void
  heartbeatMs?: number
  /** A request that is not all here by then is let go; 30 s when left out. */
  requestLimitMs?: number
}

export interface BrowserServer {
  origin: string
  /** Answers what was asked already, then lets go of the port. */
  close: () => Promise<void>
}

const usualRequestLimitMs = 30_000

/** More than a maker's windows and programs ever keep open. */
const mostConnections = 256

/** How long calls that are being answered may hold up the end. */
const closingMs = 1000

export async function openServer(options: BrowserServerOptions): Promise<BrowserServer> {
  const { service, rendererFolder, token } = options
  const streams = eventStreams({
    heartbeatMs: options.heartbeatMs ?? 15_000,
    onCount: options.onWindowCount ?? (() => {}),
  })
  const stopListening = service.onChange(() => streams.tell({ event: 'bookChanged' }))
  const guesses = wrongGuesses()
  let origin = ''

  async function respond(request: IncomingMessage, response: ServerResponse): Promise<void> {
    mustNameOurHost(request, origin)
    mustNotComeFromElsewhere(request, origin)
    const path = pathOf(request, origin)
    const channel = /^\/rpc\/(.+)$/.exec(path)?.[1]
    const calendarSecret = secretOfCalendar(path)
    if (channel !== undefined) {
      mustUseMethod(request, 'POST')
      mustKnowToken(request, token, guesses)
      const name = decoded(channel)
      sendJson(response, await answerCall(service, name, await jsonBody(request)))
    } else if (path === '/contract') {
      mustUseMethod(request, 'GET')
      mustKnowToken(request, token, guesses)
      sendJson(response, contract())
    } else if (path === '/events') {
      mustUseMethod(request, 'GET')
      mustKnowToken(request, token, guesses)
      response.writeHead(200, { ...securityHeaders, 'Content-Type': 'text/event-stream' })
      streams.add(response)
    } else if (calendarSecret !== undefined) {
      mustUseMethod(request, 'GET', 'HEAD')
      const ics = await calendarOf(service, calendarSecret, guesses)
      const type = 'text/calendar; charset=utf-8'
      response.writeHead(200, { ...securityHeaders, 'Content-Type': type }).end(ics)
    } else {
      const { status, headers, body } = await asset(rendererFolder, path)
      if (status === 404) throw new HttpRefusal(404, 'There is no such page.')
      mustUseMethod(request, 'GET', 'HEAD')
      response.writeHead(status, headers).end(body)
    }
  }

  const limitMs = options.requestLimitMs ?? usualRequestLimitMs
  const limits = {
    headersTimeout: limitMs,
    requestTimeout: limitMs,
    connectionsCheckingInterval: limitMs / 10,
    maxHeaderSize: 16_384,
  }
  const server = createServer(limits, (request, response) => {
    respond(request, response).catch((error: unknown) => refuse(response, error))
  })
  server.maxConnections = mostConnections
  const port = await listen(server, options.port)
  origin = `http://127.0.0.1:${port}`

  return {
    origin,
    close: async () => {
      stopListening()
      streams.end()
      const closed = new Promise<void>((done) => server.close(() => done()))
      const impatience = setTimeout(() => server.closeAllConnections(), closingMs)
      await closed
      clearTimeout(impatience)
    },
  }
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((done, failed) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      const isTaken = error.code === 'EADDRINUSE' || error.code === 'EACCES'
      failed(isTaken ? new StartProblem('portTaken', String(port), { cause: error }) : error)
    })
    server.listen(port, '127.0.0.1', () => done((server.address() as AddressInfo).port))
  })
}

/** The path as it was asked for, still encoded, with its dots and slashes resolved. */
function pathOf(request: IncomingMessage, origin: string): string {
  const url = URL.parse(`${origin}${request.url ?? ''}`)
  if (url?.origin !== origin) throw new HttpRefusal(400, 'This is not a path.')
  return url.pathname
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part)
  } catch {
    throw new HttpRefusal(400, 'This is not a path.')
  }
}

function sendJson(response: ServerResponse, value: unknown): void {
  response.writeHead(200, { ...securityHeaders, 'Content-Type': 'application/json' })
  response.end(JSON.stringify(value))
}

function refuse(response: ServerResponse, error: unknown): void {
  if (response.headersSent || response.destroyed) return void response.destroy()
  const isRefusal = error instanceof HttpRefusal
  if (!isRefusal) console.error(error)
  const { status, message, headers } = isRefusal
    ? error
    : new HttpRefusal(500, 'Ratafia made a mistake.')
  response.writeHead(status, { ...securityHeaders, ...headers, 'Content-Type': 'text/plain' })
  response.end(message)
}
