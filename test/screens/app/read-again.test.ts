import { QueryClient, QueryObserver } from '@tanstack/react-query'
import { describe, expect, it } from 'vitest'
import { readAgain } from '../../../renderer/app/read-again.ts'

describe('readAgain', () => {
  it('does not keep an answer given before the change, whose screen was left meanwhile', async () => {
    const queryClient = new QueryClient({ defaultOptions: { queries: { staleTime: 30_000 } } })
    const waiting: ((answer: string) => void)[] = []
    const options = {
      queryKey: ['jars.list', {}],
      queryFn: () => new Promise<string>((resolve) => waiting.push(resolve)),
    }
    const leave = new QueryObserver(queryClient, options).subscribe(() => undefined)
    leave()
    readAgain(queryClient)
    waiting[0]?.('before the change')
    await Promise.resolve()

    const seen: (string | undefined)[] = []
    const come = new QueryObserver(queryClient, options).subscribe(({ data }) => seen.push(data))
    await new Promise((resolve) => setTimeout(resolve))
    expect(waiting).toHaveLength(2)
    waiting[1]?.('after the change')
    await new Promise((resolve) => setTimeout(resolve))
    come()
    expect(seen.filter((data) => data !== undefined)).toEqual(['after the change'])
  })
})
