/** Buttons and links that look like what they do. */
import type { ReactNode } from 'react'
import { Button as AriaButton, Link as AriaLink } from 'react-aria-components'
import { classes } from '../classes.ts'
import styles from './button.module.css'

/** `primary` once a screen: its one next action. `quiet` reads like a link. */
export type ButtonKind = 'primary' | 'plain' | 'quiet' | 'danger'

export interface ButtonProps {
  children: ReactNode
  kind?: ButtonKind
  onPress?: () => void
  type?: 'button' | 'submit'
  /** Keeps the button in its place while its work is being done. */
  isBusy?: boolean
  isDisabled?: boolean
  /** When the words alone do not tell it from its neighbours. */
  'aria-label'?: string
  autoFocus?: boolean
  /** True where arrows lead to it, as in a list that is one stop of the Tab key. */
  excludeFromTabOrder?: boolean
}

export function Button({
  kind = 'plain',
  isBusy = false,
  children,
  onPress,
  type = 'button',
  ...rest
}: ButtonProps) {
  return (
    <AriaButton
      {...rest}
      {...(onPress && !isBusy && { onPress })}
      // Busy is not disabled: the focus must stay where the hand is.
      type={isBusy ? 'button' : type}
      data-busy={isBusy || undefined}
      className={classes(styles.button, styles[kind])}
    >
      {children}
    </AriaButton>
  )
}

export interface ButtonLinkProps {
  children: ReactNode
  /** A screen's path, such as `/batches`. */
  href: string
  kind?: ButtonKind
}

export function ButtonLink({ href, kind = 'plain', children }: ButtonLinkProps) {
  return (
    <AriaLink href={href} className={classes(styles.button, styles[kind])}>
      {children}
    </AriaLink>
  )
}
