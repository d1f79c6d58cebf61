/** Words to look for in a list; what they are looked for in is said inside it. */
import { Input, Label, SearchField } from 'react-aria-components'
import { classes } from '../classes.ts'
import styles from './search-box.module.css'

export interface SearchBoxProps {
  label: string
  value: string
  onChange: (value: string) => void
}

export const SearchBox = ({ label, value, onChange }: SearchBoxProps) => (
  <SearchField className={classes(styles.search)} value={value} onChange={onChange}>
    <Label className="visually-hidden">{label}</Label>
    <Input className={classes(styles.input)} placeholder={label} />
  </SearchField>
)
