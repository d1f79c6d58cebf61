/** Text as it is searched: without case and accents, so that "sliwka" finds "Śliwka". */
export const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Diacritic}/gu, '')
    .replaceAll('ł', 'l')
    .replaceAll('Ł', 'L')
    .toLowerCase()

/** A name as it is held against another: neither case, accents nor spaces make it another one. */
export const plainName = (name: string): string => plain(name).trim().replaceAll(/\s+/g, ' ')
