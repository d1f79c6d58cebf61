/**
 * Runs the preload as Electron's sandbox does: CommonJS, only 'electron' can be required, and what
 * crosses to the page is a frozen copy. Unlike there, both share one world.
 */
export const preloadRunner = (source: string): string => `(() => {
  'use strict'
  const listeners = new Map()
  const invoke = window.ratafiaDoubleInvoke
  Object.defineProperty(window, 'ratafiaDoublePush', {
    value: (channel, sent) => {
      for (const listener of [...(listeners.get(channel) ?? [])]) listener({ sender: {} }, ...sent)
    },
  })

  const ipcRenderer = {
    invoke: async (channel, ...sent) => {
      const reply = await invoke(channel, structuredClone(sent))
      if (reply.error) throw new Error(reply.error)
      return reply.value
    },
    on: (channel, listener) => {
      listeners.set(channel, [...(listeners.get(channel) ?? []), listener])
      return ipcRenderer
    },
    removeListener: (channel, listener) => {
      listeners.set(channel, (listeners.get(channel) ?? []).filter((each) => each !== listener))
      return ipcRenderer
    },
  }

  const isPlain = (value) => value && Object.getPrototypeOf(value) === Object.prototype
  const copyOfObject = (value) =>
    Object.freeze(Object.fromEntries(Object.entries(value).map(([key, each]) => [key, copy(each)])))
  const copy = (value) =>
    typeof value === 'function' ? (...given) => copy(value(...given.map(copy)))
    : value instanceof Promise ? value.then(copy)
    : Array.isArray(value) ? value.map(copy)
    : isPlain(value) ? copyOfObject(value)
    : structuredClone(value)

  const contextBridge = {
    exposeInMainWorld: (key, api) => {
      if (key in window) throw new Error('Cannot bind an API on top of an existing property')
      Object.defineProperty(window, key, { value: copy(api), enumerable: true })
    },
  }

  const onlyKnown = (name, made) => new Proxy(made, {
    get: (target, key) => {
      if (key in target) return target[key]
      throw new Error('electron double: ' + name + '.' + String(key) + ' is not modelled')
    },
  })
  const electron = onlyKnown('electron (preload)', {
    contextBridge: onlyKnown('contextBridge', contextBridge),
    ipcRenderer: onlyKnown('ipcRenderer', ipcRenderer),
  })
  const require = (name) => {
    if (name === 'electron') return electron
    throw new Error('module not found: ' + name)
  }
  const module = { exports: {} }
  const exports = module.exports
  const process = undefined
  ;(() => {
${source}
  })()
})()`
