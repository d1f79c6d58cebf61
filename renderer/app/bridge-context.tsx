/** Hands the bridge to every query and write, and lets what is on screen follow the book. */
import { createContext, use, useEffect, useState, type ReactNode } from 'react'
import { QueryClient, QueryClientProvider } from '@tanstack/react-query'
import type { Bridge } from '../../shared/channels.ts'
import { readAgain } from './read-again.ts'
import { UndoProvider } from './undo/undo-context.tsx'

const BridgeContext = createContext<Bridge | null>(null)

export function useBridge(): Bridge {
  const bridge = use(BridgeContext)
  if (!bridge) throw new Error('useBridge is used outside BridgeProvider')
  return bridge
}

export function BridgeProvider({ bridge, children }: { bridge: Bridge; children: ReactNode }) {
  const [queryClient] = useState(newQueryClient)
  useEffect(() => bridge.onChange(() => void readAgain(queryClient)), [bridge, queryClient])
  return (
    <BridgeContext value={bridge}>
      <QueryClientProvider client={queryClient}>
        <UndoProvider>{children}</UndoProvider>
      </QueryClientProvider>
    </BridgeContext>
  )
}

// The service is on this machine: being offline means nothing, and asking again changes nothing.
const newQueryClient = () =>
  new QueryClient({
    defaultOptions: {
      queries: { networkMode: 'always', retry: false, staleTime: 30_000 },
      mutations: { networkMode: 'always', retry: false },
    },
  })
