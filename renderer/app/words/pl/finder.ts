/** What `en/finder.ts` says, in Polish. */
export const finder = {
  open: 'Szukaj',
  title: 'Znajdź cokolwiek',
  label: 'Nastaw, naczynie, butelka, owoc, ekran lub czynność',
  nothing: 'Nic się tak nie nazywa. Mniej liter znajdzie więcej.',
  kind: {
    screen: 'ekran',
    action: 'czynność',
    batch: 'nastaw',
    jar: 'naczynie',
    lot: 'butelki',
    draft: 'szkic',
    fruit: 'owoc',
  },
  stocktake: 'Spis z natury',
  labels: 'Etykiety',
  mend: 'Popraw nalewkę',
  actions: {
    settings: 'Ustawienia',
    day: 'Pokaż jak w dzień',
    night: 'Pokaż jak w nocy',
    keys: 'Klawisze',
  },
  keys: {
    title: 'Klawisze',
    text: 'Tab przechodzi od jednej rzeczy do drugiej, strzałki chodzą po listach i zakładkach, Enter naciska, Escape wychodzi z okna.',
    shortcut: {
      find: 'Znajdź nastaw, naczynie, butelkę, ekran lub czynność',
      settings: 'Otwórz ustawienia',
      undo: 'Cofnij to, co zrobiono ostatnio',
      redo: 'Ponów to, co cofnięto',
      keys: 'Pokaż te klawisze',
    },
    done: 'Gotowe',
  },
} as const
