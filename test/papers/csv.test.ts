import { describe, expect, it } from 'vitest'
import { csv } from '../../main/papers/csv.ts'

describe('csv', () => {
  it('ends rows in CRLF, quotes what has to be quoted, and doubles quotes', () => {
    expect(
      csv([
        ['a', 1, undefined],
        ['b, c', 'say "x"', 'two\nlines'],
      ]),
    ).toBe('a,1,\r\n"b, c","say ""x""","two\nlines"\r\n')
  })

  it.each(['=1+1', '+1', '-1', '@sum', '\tx', '\rx', ' =1', '\u00a0=1', '\uff1d1', '\nx'])(
    'keeps %j from running as a formula',
    (cell) => {
      const [written] = csv([[cell]]).split('\r\n')
      expect(csv([[cell]]).replace(/^"/, '')[0]).toBe("'")
      expect(written).toContain(cell.trim().slice(-1))
    },
  )

  it('leaves numbers and plain words as they are', () => {
    expect(csv([[-3.5, 'Sour cherry', 'a-b', '1/2']])).toBe('-3.5,Sour cherry,a-b,1/2\r\n')
  })
})
