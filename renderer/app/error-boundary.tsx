/** Catches what should never happen on a screen, so that the way to the others stays open. */
import { Component, type ReactNode } from 'react'
import { useWords } from './words/use-words.ts'
import { Button } from '../parts/button/button.tsx'
import { Page } from '../parts/page/page.tsx'

export interface ErrorBoundaryProps {
  /** A change of it, such as another path, tries again. */
  resetKey: string
  children: ReactNode
}

interface Caught {
  readonly hasFailed: boolean
  readonly resetKey: string
}

export class ErrorBoundary extends Component<ErrorBoundaryProps, Caught> {
  override state: Caught = { hasFailed: false, resetKey: this.props.resetKey }

  static getDerivedStateFromError = () => ({ hasFailed: true })

  static getDerivedStateFromProps = (
    { resetKey }: ErrorBoundaryProps,
    { resetKey: last }: Caught,
  ) => (resetKey === last ? null : { hasFailed: false, resetKey })

  override render() {
    return this.state.hasFailed ? <Stopped /> : this.props.children
  }
}

function Stopped() {
  const t = useWords()
  return (
    <Page
      title={t('shell.name')}
      lead={t('codes.crashed')}
      actions={
        <Button kind="primary" onPress={() => window.location.reload()}>
          {t('parts.reload')}
        </Button>
      }
    />
  )
}
