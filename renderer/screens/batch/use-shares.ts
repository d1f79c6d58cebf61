/** Shares of a whole in this cellar's locale: 87 %. */
import { useMemo } from 'react'
import { useSettings } from '../../app/settings.tsx'

export function useShares(): (fraction: number) => string {
  const { locale } = useSettings()
  return useMemo(() => {
    const format = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 })
    return (fraction) => format.format(fraction)
  }, [locale])
}
