/** A value on a scale, moved by hand or by arrow keys; its words stand beside its name. */
import { Label, Slider as AriaSlider, SliderThumb, SliderTrack } from 'react-aria-components'
import { classes } from '../classes.ts'
import styles from './slider.module.css'

export interface SliderProps {
  label: string
  value: number
  onChange: (value: number) => void
  min: number
  max: number
  step: number
  /** The value as people read it. */
  words: string
}

export function Slider({ label, words, onChange, min, max, ...scale }: SliderProps) {
  return (
    <AriaSlider
      {...scale}
      minValue={min}
      maxValue={max}
      className={classes(styles.slider)}
      onChange={(value) => onChange(Array.isArray(value) ? (value[0] ?? min) : value)}
    >
      <Label className={classes(styles.label)}>{label}</Label>
      <output className={styles.words}>{words}</output>
      <SliderTrack className={classes(styles.track)}>
        <SliderThumb className={classes(styles.thumb)} aria-valuetext={words} />
      </SliderTrack>
    </AriaSlider>
  )
}
