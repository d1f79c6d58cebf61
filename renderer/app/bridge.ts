/** The one way from a screen to the service: Electron's preload, or the loopback server. */
import type { Bridge } from '../../shared/channels.ts'
import { httpBridge } from './http-bridge.ts'
import { launchToken } from './launch-token.ts'

declare global {
  interface Window {
    /** Put there by the preload when Electron is the host. */
    readonly ratafia?: Bridge
  }
}

export const bridge: Bridge = window.ratafia ?? httpBridge(launchToken(window))
