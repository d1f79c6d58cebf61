/**
 * Loaded before a program (`--import`): writes a line to the file that `RECORD_CONNECTIONS` names for
 * every connection the program opens, and for every name it looks up; an address is none.
 */
import { appendFileSync } from 'node:fs'
import dgram from 'node:dgram'
import dns from 'node:dns'
import { syncBuiltinESMExports } from 'node:module'
import net from 'node:net'

const file = process.env['RECORD_CONNECTIONS']
if (file === undefined) throw new Error('RECORD_CONNECTIONS names no file')
const record = (what: string, asked: unknown) =>
  appendFileSync(file, `${what} ${JSON.stringify(asked)}\n`)

/** Everything that goes out over TCP, of whatever library, comes through here. */
const connect = net.Socket.prototype.connect
net.Socket.prototype.connect = function (this: net.Socket, ...asked: unknown[]) {
  record('connect', asked[0])
  return connect.apply(this, asked as Parameters<typeof connect>)
} as typeof connect

const { lookup } = dns
dns.lookup = ((name: string, ...rest: unknown[]) => {
  if (net.isIP(name) === 0) record('lookup', name)
  return (lookup as (...asked: unknown[]) => void)(name, ...rest)
}) as typeof lookup

const { send } = dgram.Socket.prototype
dgram.Socket.prototype.send = function (this: dgram.Socket, ...asked: unknown[]) {
  record('send', asked.length)
  return (send as (...rest: unknown[]) => void).apply(this, asked)
} as typeof send

syncBuiltinESMExports()
