import { screen } from '@testing-library/react'
import { useState } from 'react'
import { describe, expect, it } from 'vitest'
import {
  QuantityField,
  type QuantityFieldProps,
} from '../../../../renderer/parts/quantity/quantity-field.tsx'
import { showPart } from '../../show.tsx'

function Trial(props: Partial<QuantityFieldProps>) {
  const [value, setValue] = useState<number | undefined>(props.value)
  return (
    <>
      <QuantityField
        label="Water"
        dimension="volume"
        {...props}
        value={value}
        onChange={setValue}
      />
      <output aria-label="base">{value ?? 'nothing'}</output>
      <button type="button" onClick={() => setValue(2000)}>
        Outside
      </button>
    </>
  )
}

const field = () => screen.getByRole('textbox', { name: /Water/ })
const base = () => screen.getByRole('status', { name: 'base' })

describe('QuantityField', () => {
  it('hands out base units and shows how it read what was typed', async () => {
    const { user } = showPart(<Trial />)
    await user.type(field(), '1,5 l')
    expect(base().textContent).toBe('1500')
    expect(screen.getByText(/^= 1.50.L$/)).toBeTruthy()
  })

  it('keeps its own unit out of sight beside one that was typed', async () => {
    const { user } = showPart(<Trial />)
    await user.type(field(), '1.5')
    const own = screen.getByText('ml')
    const before = own.className
    await user.type(field(), ' l')
    expect(own.className).toContain('named')
    expect(before).not.toContain('named')
  })

  it('says what is wrong beside the field once it is left, and hands out nothing', async () => {
    const { user } = showPart(<Trial isRequired />)
    await user.type(field(), '3 buckets')
    expect(field().getAttribute('aria-invalid')).toBeNull()
    await user.tab()
    expect(screen.getByText(/“buckets” is not a unit for this/)).toBeTruthy()
    expect(field().getAttribute('aria-invalid')).toBe('true')
    expect(base().textContent).toBe('nothing')
  })

  it('shows what is missing when the form was sent', () => {
    showPart(<Trial isRequired showsProblem />)
    expect(screen.getByText('Fill this in.')).toBeTruthy()
  })

  it('does not complain about an empty field that may be empty', () => {
    showPart(<Trial showsProblem />)
    expect(screen.queryByText('Fill this in.')).toBeNull()
  })

  it('keeps what was typed as it was typed, and gives way to a value from outside', async () => {
    const { user } = showPart(<Trial />)
    await user.type(field(), '½ l')
    expect((field() as HTMLInputElement).value).toBe('½ l')
    await user.click(screen.getByRole('button', { name: 'Outside' }))
    expect((field() as HTMLInputElement).value).toBe('2000')
  })

  it('asks which one is meant when the locale leaves it open', async () => {
    const { user } = showPart(<Trial />, { settings: { locale: 'pl-PL' } })
    await user.type(field(), '1.500 l')
    await user.tab()
    expect(screen.getByText(/This can be 1,50.L or 1500,00.L/)).toBeTruthy()
  })
})
