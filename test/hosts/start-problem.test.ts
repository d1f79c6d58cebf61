import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { BookError } from '../../main/cellar/book-error.ts'
import { openService } from '../../main/hosts/open-service.ts'
import { StartProblem, startProblemOf } from '../../main/hosts/start-problem.ts'
import { hostWords } from '../../main/hosts/words/host-words.ts'

const file = '/books/cellar.ratafia'
const problemOf = (error: unknown) => startProblemOf(error, file)

describe('startProblemOf', () => {
  it('says what is wrong with the book, which file it is, and what to do', () => {
    const problem = problemOf(new BookError('bookNewer', 'the book is from a newer version'))
    expect(problem).toBeInstanceOf(StartProblem)
    expect(problem?.message).toBe(hostWords().problem.bookNewer(file))
    expect(hostWords('en').problem.bookNewer(file)).toBe(
      'Ratafia cannot open /books/cellar.ratafia: it was written by a newer Ratafia.\n' +
        'Update this one. The book was not touched.',
    )
  })

  it.each(['EACCES', 'EROFS', 'ENOTDIR', 'EEXIST'])('speaks of the folder for %s', (code) => {
    const problem = problemOf(Object.assign(new Error('mkdir'), { code }))
    expect(problem?.code).toBe('noFolder')
  })

  it('leaves a bug a bug', () => {
    expect(problemOf(new TypeError('x is not a function'))).toBeUndefined()
    expect(problemOf('text')).toBeUndefined()
  })

  it('names the demo where the demo is what another program has open', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'ratafia-demos-'))
    const start = (name: string) =>
      openService({
        host: 'browser',
        version: '0',
        cellarFile: join(folder, name),
        fileToOpen: undefined,
        startsWithDemo: true,
      })
    const { service } = await start('one.ratafia')
    const demoFile = join(folder, 'alder-end-demo.ratafia')
    await expect(start('two.ratafia')).rejects.toMatchObject({
      code: 'demoBusy',
      message: hostWords().problem.demoBusy(demoFile),
    })
    service.close()
    rmSync(folder, { recursive: true })
  })
})

describe('the words of a host', () => {
  const { problem: english } = hostWords('en')
  const { problem: polish } = hostWords('pl')

  it.each(Object.keys(english) as (keyof typeof english)[])(
    'name the place of %s in both languages, and differ',
    (code) => {
      const [first, second] = [english, polish].map((problem) => problem[code]('/x/y'))
      expect(first).not.toBe(second)
      expect(first?.includes('/x/y')).toBe(second?.includes('/x/y'))
    },
  )

  it('tell of each option in both languages', () => {
    const optionsIn = (language: 'en' | 'pl') =>
      hostWords(language).argument.help.match(/--[a-z-]+/g)
    expect(optionsIn('pl')).toEqual(optionsIn('en'))
    expect(hostWords('pl').argument.help).not.toBe(hostWords('en').argument.help)
  })

  it.each([
    ['pl_PL.UTF-8', polish],
    ['de_DE.UTF-8', english],
    ['C', english],
  ])('are those of a system that speaks %s', (locale, problem) => {
    const source = new URL('../../main/hosts/words/host-words.ts', import.meta.url).href
    const script = `import { hostWords } from '${source}'
      process.stdout.write(hostWords().problem.notBuilt(''))`
    const env = { ...process.env, LC_ALL: locale }
    const args = ['--input-type=module', '--eval', script]
    expect(execFileSync(process.execPath, args, { env, encoding: 'utf8' })).toBe(
      problem.notBuilt(''),
    )
  })
})
