/** Where the maker's book lives on each system: the same place whichever host is used. */
import { posix, win32 } from 'node:path'

export interface Machine {
  platform: NodeJS.Platform
  home: string
  env: Readonly<Record<string, string | undefined>>
}

export function dataFolder({ platform, home, env }: Machine): string {
  switch (platform) {
    case 'win32':
      return win32.join(env['APPDATA'] || win32.join(home, 'AppData', 'Roaming'), 'Ratafia')
    case 'darwin':
      return posix.join(home, 'Library', 'Application Support', 'Ratafia')
    default: {
      // The XDG specification says to ignore a relative path.
      const xdg = env['XDG_DATA_HOME']
      const base = xdg && posix.isAbsolute(xdg) ? xdg : posix.join(home, '.local', 'share')
      return posix.join(base, 'ratafia')
    }
  }
}
