import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { readWindowState, writeWindowState } from '../../main/hosts/electron/window-state.ts'

const folder = mkdtempSync(join(tmpdir(), 'ratafia-window-'))
const file = join(folder, 'window.json')
afterAll(() => rmSync(folder, { recursive: true }))

const screen = { x: 0, y: 0, width: 1920, height: 1080 }
const state = { bounds: { x: 40, y: 30, width: 1200, height: 800 }, isMaximised: false }

describe('readWindowState', () => {
  it('gives back what was written', () => {
    writeWindowState(file, state)
    expect(readWindowState(file, [screen])).toEqual(state)
  })

  it('gives nothing when there is no file', () => {
    expect(readWindowState(join(folder, 'none.json'), [screen])).toBeUndefined()
  })

  it.each([
    '',
    '[]',
    '{"bounds":null,"isMaximised":false}',
    JSON.stringify({ ...state, bounds: { ...state.bounds, width: 1e9 } }),
    JSON.stringify({ ...state, bounds: { ...state.bounds, x: '0' } }),
    JSON.stringify({ ...state, more: 1 }),
  ])('gives nothing for %j', (text) => {
    writeFileSync(file, text)
    expect(readWindowState(file, [screen])).toBeUndefined()
  })

  it.each([
    ['left of the screen', { x: -1150 }],
    ['right of it', { x: 1900 }],
    ['above it, title bar and all', { y: -10 }],
    ['below it', { y: 1060 }],
  ])('gives nothing for a window %s', (_where, moved) => {
    writeWindowState(file, { ...state, bounds: { ...state.bounds, ...moved } })
    expect(readWindowState(file, [screen])).toBeUndefined()
  })

  it('finds a window on the second screen while that is there', () => {
    writeWindowState(file, { ...state, bounds: { ...state.bounds, x: 2000 } })
    expect(readWindowState(file, [screen, { ...screen, x: 1920 }])).toBeDefined()
    expect(readWindowState(file, [screen])).toBeUndefined()
  })

  it('is not stopped by a folder that cannot be written to', () => {
    expect(() => writeWindowState(join(folder, 'gone', 'window.json'), state)).not.toThrow()
  })
})
