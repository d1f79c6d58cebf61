/** Shares of a whole in this cellar's locale. */
import { useSettings } from '../../app/settings.tsx'
import { formatShare } from '../../parts/quantity/format-share.ts'

export function useShares(): (fraction: number) => string {
  const { locale } = useSettings()
  return (fraction) => formatShare(fraction, locale)
}
