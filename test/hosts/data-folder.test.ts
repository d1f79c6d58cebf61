import { describe, expect, it } from 'vitest'
import { dataFolder } from '../../main/hosts/data-folder.ts'

describe('dataFolder', () => {
  it.each([
    ['linux', '/home/maker', {}, '/home/maker/.local/share/ratafia'],
    ['linux', '/home/maker', { XDG_DATA_HOME: '/data' }, '/data/ratafia'],
    ['linux', '/home/maker', { XDG_DATA_HOME: 'data' }, '/home/maker/.local/share/ratafia'],
    ['darwin', '/Users/maker', {}, '/Users/maker/Library/Application Support/Ratafia'],
    ['win32', 'C:\\Users\\maker', { APPDATA: 'D:\\Roaming' }, 'D:\\Roaming\\Ratafia'],
    ['win32', 'C:\\Users\\maker', {}, 'C:\\Users\\maker\\AppData\\Roaming\\Ratafia'],
  ] as const)('on %s with home %s and %j is %4$s', (platform, home, env, folder) => {
    expect(dataFolder({ platform, home, env })).toBe(folder)
  })
})
