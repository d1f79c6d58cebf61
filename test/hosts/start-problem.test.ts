import { describe, expect, it } from 'vitest'
import { BookError } from '../../main/cellar/book-error.ts'
import { StartProblem, startProblemOf } from '../../main/hosts/start-problem.ts'

const problemOf = (error: unknown) => startProblemOf(error, '/books/cellar.ratafia')

describe('startProblemOf', () => {
  it('says what is wrong with the book, which file it is, and what to do', () => {
    const problem = problemOf(new BookError('bookNewer', 'the book is from a newer version'))
    expect(problem).toBeInstanceOf(StartProblem)
    expect(problem?.message).toBe(
      'Ratafia cannot open /books/cellar.ratafia: the book is from a newer version.\n' +
        'It was written by a newer Ratafia: update this one. The book was not touched.',
    )
  })

  it.each(['EACCES', 'EROFS', 'ENOTDIR', 'EEXIST'])('speaks of the folder for %s', (code) => {
    const problem = problemOf(Object.assign(new Error('mkdir'), { code }))
    expect(problem?.message).toContain('cannot make the folder')
  })

  it('leaves a bug a bug', () => {
    expect(problemOf(new TypeError('x is not a function'))).toBeUndefined()
    expect(problemOf('text')).toBeUndefined()
  })
})
