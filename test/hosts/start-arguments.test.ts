import { resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readHandedArguments } from '../../main/hosts/electron/handed-arguments.ts'
import { ArgumentError, readStartArguments } from '../../main/hosts/start-arguments.ts'

const plain = {
  host: 'any',
  opensWindow: true,
  port: 0,
  cellarFile: undefined,
  fileToOpen: undefined,
  startsWithDemo: false,
  fetchesElectron: false,
  wantsHelp: false,
}

describe('readStartArguments', () => {
  it('picks the host itself when told nothing', () => {
    expect(readStartArguments([])).toEqual(plain)
  })

  it('reads all that a script hands over', () => {
    const typed = '--host browser --no-open --port 8123 --cellar book.ratafia --demo'.split(' ')
    expect(readStartArguments(typed)).toEqual({
      ...plain,
      host: 'browser',
      opensWindow: false,
      port: 8123,
      cellarFile: resolve('book.ratafia'),
      startsWithDemo: true,
    })
  })

  it('opens the book it is given', () => {
    expect(readStartArguments(['book.ratafia'])).toEqual({
      ...plain,
      fileToOpen: resolve('book.ratafia'),
    })
  })

  it.each([['--no-open'], ['--port=0']])('takes the browser for %s', (typed) => {
    expect(readStartArguments([typed]).host).toBe('browser')
  })

  it.each([
    [['--nope'], "no option '--nope'"],
    [['--demo=yes'], '--demo takes no value'],
    [['one.ratafia', 'two.ratafia'], "'two.ratafia' is too many"],
    [['--host', 'firefox'], "not 'firefox'"],
    [['--port', '1.5'], "not '1.5'"],
    [['--port', '-1'], '--port'],
    [['--port', '65536'], "not '65536'"],
    [['--port'], '--port needs a value'],
    [['--cellar', ''], '--cellar needs a value'],
    [['--host', 'electron', '--no-open'], 'browser only'],
  ])('refuses %j and says what is wrong', (typed, words) => {
    expect(() => readStartArguments(typed)).toThrow(ArgumentError)
    expect(() => readStartArguments(typed)).toThrow(words)
  })
})

describe('readHandedArguments', () => {
  const started = { isPackaged: false, folder: resolve('/books') }

  it('finds its own among the switches of Electron', () => {
    const argv = ['/electron', '--no-sandbox', '/app', '--cellar=/book.ratafia', '--demo']
    expect(readHandedArguments(argv, started)).toEqual({
      cellarFile: resolve('/book.ratafia'),
      fileToOpen: undefined,
      startsWithDemo: true,
    })
  })

  it('finds nothing in a plain start', () => {
    expect(readHandedArguments(['/electron', '/app', '--inspect=0'], started)).toEqual({
      cellarFile: undefined,
      fileToOpen: undefined,
      startsWithDemo: false,
    })
  })

  it.each([
    [['/electron', '/app', 'mine.ratafia'], false],
    [['/ratafia', 'mine.ratafia'], true],
    [['/ratafia', '--allow-file-access-from-files', 'mine.ratafia'], true],
  ])('finds the file to open in %j', (argv, isPackaged) => {
    const { fileToOpen } = readHandedArguments(argv, { ...started, isPackaged })
    expect(fileToOpen).toBe(resolve('/books/mine.ratafia'))
  })
})
