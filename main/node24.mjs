/**
 * Runs a script on Node 24 or newer: `node main/node24.mjs SCRIPT [ARGUMENTS…]`.
 * An older Node hands over to the one that `npm ci` put into node_modules. This file alone must run
 * on any Node from 12.17 on, hence the plain and old-fashioned JavaScript.
 */
import { spawn } from 'child_process'
import { existsSync } from 'fs'
import { dirname, join, resolve } from 'path'
import { fileURLToPath, pathToFileURL } from 'url'

const needed = 24
const root = dirname(dirname(fileURLToPath(import.meta.url)))
const script = process.argv[2]

endWithParent()
if (!script) {
  stop('Usage: node main/node24.mjs SCRIPT [ARGUMENTS…]', 2)
} else if (Number(process.versions.node.split('.')[0]) >= needed) {
  delete process.env.RATAFIA_HANDED_OVER
  process.argv.splice(1, 2, resolve(script))
  import(pathToFileURL(resolve(script)).href).catch(function (error) {
    console.error(error)
    process.exit(1)
  })
} else {
  handOver(ownNode())
}

/** The project's own Node, if `npm ci` could install one here. */
function ownNode() {
  const modules = join(root, 'node_modules')
  const places =
    process.platform === 'win32'
      ? [join(modules, 'node', 'bin', 'node.exe'), join(modules, 'node', 'node.exe')]
      : [join(modules, 'node', 'bin', 'node'), join(modules, '.bin', 'node')]
  return places.find(existsSync)
}

function handOver(node) {
  // The mark keeps an own Node that is too old as well from handing over for ever.
  if (!node || process.env.RATAFIA_HANDED_OVER) {
    stop(
      'Ratafia needs Node ' +
        needed +
        ' or newer; this is ' +
        process.version +
        '.\nIn the project folder run `npm ci`, which brings one along (`npm rebuild node` if its' +
        ' install scripts were switched off),\nor install Node ' +
        needed +
        ' from your system and try again.',
      1,
    )
    return
  }
  const child = spawn(node, [fileURLToPath(import.meta.url)].concat(process.argv.slice(2)), {
    stdio: 'inherit',
    env: Object.assign({}, process.env, { RATAFIA_HANDED_OVER: '1' }),
  })
  ;['SIGINT', 'SIGTERM', 'SIGHUP'].forEach(function (signal) {
    process.on(signal, function () {
      child.kill(signal)
    })
  })
  child.on('error', function (error) {
    stop('The Node in node_modules does not run here (' + error.message + '). Try `npm ci`.', 1)
  })
  child.on('exit', function (code) {
    process.exit(code === null ? 1 : code)
  })
}

/**
 * `npm start` runs this below a shell that does not pass signals on: when that shell is gone, so is
 * whoever wanted this.
 */
function endWithParent() {
  if (!process.env.npm_lifecycle_event || process.platform === 'win32') return
  const parent = process.ppid
  const watch = setInterval(function () {
    if (process.ppid === parent) return
    clearInterval(watch)
    process.kill(process.pid, 'SIGTERM')
  }, 250)
  watch.unref()
}

function stop(message, code) {
  console.error(message)
  process.exitCode = code
}
