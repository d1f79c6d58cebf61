import { QueryClient, QueryObserver } from '@tanstack/react-query'
import { describe, expect, it, vi } from 'vitest'
import { readAgain } from '../../../renderer/app/read-again.ts'

/** A question whose answers are given by hand, in the order in which it was asked. */
function question() {
  const queryClient = new QueryClient({ defaultOptions: { queries: { staleTime: 30_000 } } })
  const waiting: ((answer: string) => void)[] = []
  const options = {
    queryKey: ['jars.list', {}],
    queryFn: () => new Promise<string>((resolve) => waiting.push(resolve)),
  }
  const seen: string[] = []
  const look = () =>
    new QueryObserver(queryClient, options).subscribe(({ data }) => {
      if (data !== undefined && data !== seen.at(-1)) seen.push(data)
    })
  return { queryClient, waiting, look, seen }
}

const aMoment = () => new Promise((resolve) => setTimeout(resolve))
const isAskedAgain = (waiting: readonly unknown[]) =>
  vi.waitFor(() => expect(waiting).toHaveLength(2))

describe('readAgain', () => {
  it('lets no first answer through that was given before the change', async () => {
    const { queryClient, waiting, look, seen } = question()
    const leave = look()
    void readAgain(queryClient)
    waiting[0]?.('before the change')
    await isAskedAgain(waiting)
    waiting[1]?.('after the change')
    await aMoment()
    leave()
    expect(seen).toEqual(['after the change'])
  })

  it('keeps no such answer for a screen that was left meanwhile, either', async () => {
    const { queryClient, waiting, look, seen } = question()
    look()()
    void readAgain(queryClient)
    waiting[0]?.('before the change')
    await aMoment()
    const leave = look()
    await isAskedAgain(waiting)
    waiting[1]?.('after the change')
    await aMoment()
    leave()
    expect(seen).toEqual(['after the change'])
  })

  it('asks once where a write is answered and told of at once', async () => {
    const { queryClient, waiting, look, seen } = question()
    const leave = look()
    waiting[0]?.('before the change')
    await aMoment()
    void readAgain(queryClient)
    await aMoment()
    void readAgain(queryClient)
    await isAskedAgain(waiting)
    waiting[1]?.('after the change')
    await aMoment()
    leave()
    expect(seen).toEqual(['before the change', 'after the change'])
    expect(waiting).toHaveLength(2)
  })
})
