/** What `en/tour.ts` says, in Polish. */
const stop = {
  today: {
    title: 'Dziś: co potrzebuje twoich rąk',
    text: 'Każdy wiersz to czynność, której przyszedł czas: co się traci przez czekanie i gdzie to stoi. Naciśnij: formularz jest wypełniony, a jeszcze jedno naciśnięcie zapisuje.',
  },
  batches: {
    title: 'Nastawy: co jest w każdym naczyniu',
    text: 'Moc, cukier i objętość wynikają z tego, co weszło i wyszło, przez owoce, które piją spirytus i oddają sok. Otwórz jeden, aby zobaczyć jego krzywą, dziennik i co dalej.',
  },
  draft: {
    title: 'Szkic: zanim zaczniesz',
    text: 'Powiedz, jak mocna, jak słodka i ile butelek; szkic powie, ile trzeba owoców, spirytusu, cukru i wody. Zaczęty, staje się nastawem i jego planem.',
  },
  marry: {
    title: 'Kupaż: z nalewów jedna nalewka',
    text: 'Wybierz naczynia i to, co ma wyjść; części i dodatki wylicza Ratafia, razem z kolejnością wlewania.',
  },
  shelf: {
    title: 'Półka: butelki, które dojrzewają',
    text: 'Kiedy każda partia jest najlepsza, gdzie stoi, czego ubywa i co wypić najpierw.',
  },
  season: {
    title: 'Sezon: zakupy na przyszły rok',
    text: 'Od tego, co pijesz, rozdajesz i czego sobie życzysz, wstecz do owoców tydzień po tygodniu, spirytusu, cukru i butelek, przy naczyniach, które masz.',
  },
  bench: {
    title: 'Pracownia: przyrządy',
    text: 'Areometr w słodkim płynie kłamie. Tutaj dwa pomiary mówią prawdę i na ile jest pewna.',
  },
  safekeeping: {
    title: 'Kopie i księga: księga przeżyje laptop',
    text: 'Kopie sprawdza się w chwili, gdy powstają. Powiedz raz, gdzie mają leżeć: na pamięci USB albo w folderze, który się synchronizuje.',
  },
} as const

export const tour = {
  begin: 'Oprowadź mnie',
  name: 'Oprowadzanie',
  stop,
  next: 'Dalej',
  back: 'Wstecz',
  end: 'Zakończ oprowadzanie',
  done: 'Gotowe',
  count: '{{at}} z {{count}}',
} as const
