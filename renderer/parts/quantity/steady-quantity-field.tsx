/**
 * A quantity that always has a value: while its field is empty or unreadable the last one stands.
 * What the maker wrote stays as written; what a solve found is shown no finer than a kitchen scale.
 */
import { useState } from 'react'
import { QuantityField, type QuantityFieldProps } from './quantity-field.tsx'

export interface SteadyQuantityFieldProps extends Omit<QuantityFieldProps, 'value' | 'onChange'> {
  value: number
  onChange: (value: number) => void
}

export function SteadyQuantityField({ value, onChange, ...field }: SteadyQuantityFieldProps) {
  const [isUnreadable, setUnreadable] = useState(false)
  const [written, setWritten] = useState<number>()
  return (
    <QuantityField
      {...field}
      value={isUnreadable ? undefined : value === written ? value : roundedForKitchen(value)}
      onChange={(next) => {
        setUnreadable(next === undefined)
        if (next === undefined) return
        setWritten(next)
        onChange(next)
      }}
      isRequired
    />
  )
}

function roundedForKitchen(value: number): number {
  const digits = value >= 100 ? 0 : value >= 10 ? 1 : 2
  return Number(value.toFixed(digits))
}
