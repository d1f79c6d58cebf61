import { describe, expect, it } from 'vitest'
import { kindGroups, kindOfTask } from '../../../../renderer/parts/moves/kinds.ts'
import { Stage } from '../../../../shared/schemas/cellar.ts'
import { Proposal } from '../../../../shared/schemas/tasks.ts'
import { en } from '../../../../renderer/app/words/en.ts'
import { contents, summary } from '../../cellar-fixture.ts'
import { task } from '../../task-fixture.ts'

describe('kindGroups', () => {
  it.each(Stage.options)('lists all twenty-three kinds once at the stage %s', (stage) => {
    const { likely, work, book } = kindGroups(summary({ stage }))
    const all = [...likely, ...work, ...book]
    expect(all).toHaveLength(23)
    expect(new Set(all).size).toBe(23)
  })

  it.each(Proposal.shape.kind.options)(
    'puts the next step %s first where it is possible',
    (kind) => {
      const next = task({ log: { kind, jarIds: ['north'] } })
      const two = [contents(), contents({ jarId: 'south' })]
      const bottleLots = [{ count: 3 } as never]
      const { likely } = kindGroups({
        ...summary({ next }),
        jars: two,
        bottleLots,
      })
      expect(kindOfTask(next) ?? likely[0]).toBe(likely[0])
    },
  )

  it('does not call pressing likely where no jar has fruit', () => {
    const jars = [contents({ fruits: [] })]
    expect(kindGroups(summary({ stage: 'drawnOff', jars })).likely).not.toContain('press')
  })

  it('marries only when there are two liquids', () => {
    expect(kindGroups(summary({ stage: 'pressed' })).likely).not.toContain('marry')
  })
})

describe('the letters of the kinds', () => {
  it('are all different, and each stands in its kind’s name', () => {
    const letters = Object.entries(en.batch.log.letter)
    expect(new Set(letters.map(([, letter]) => letter)).size).toBe(23)
    for (const [kind, letter] of letters)
      expect(en.codes.move[kind as keyof typeof en.codes.move].toLowerCase()).toContain(letter)
  })
})
