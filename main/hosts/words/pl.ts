/** What `en.ts` says, in Polish. */
import type { HostWords } from './en.ts'

const otherFile = 'wskaż inną księgę opcją --cellar PLIK'

export const pl = {
  title: {
    cannotStart: 'Ratafia nie może się uruchomić',
    otherBookOpen: 'Ratafia ma otwartą inną księgę',
  },
  waits: (file) => `Zamknij Ratafię, a potem otwórz ${file}.`,
  showBook: 'Pokaż plik księgi piwniczki',
  argument: {
    help: `Użycie: npm start [-- [OPCJE] [PLIK]]

  PLIK                     otwiera księgę z PLIKU albo zagląda do kopii lub eksportu
  --host browser|electron  gdzie otwiera się Ratafia (domyślnie: Electron, gdy tu jest, inaczej przeglądarka)
  --no-open                wypisuje adres i czeka; nie otwiera okna (tylko w przeglądarce)
  --port N                 port adresu 127.0.0.1 (tylko w przeglądarce; domyślnie dowolny wolny)
  --cellar PLIK            trzyma księgę w PLIKU; gdy go nie ma, zakłada nową
  --demo                   otwiera piwniczkę pokazową, osobno od Twojej
  --fetch-electron         najpierw pobiera Electron, choćby to długo trwało
  --help                   ten tekst`,
    host: (typed) => `--host to browser albo electron, nie '${typed}'`,
    browserOnly: '--no-open i --port idą w parze tylko z --host browser',
    needsValue: (option) => `${option} wymaga wartości`,
    takesNone: (option) => `${option} nie przyjmuje wartości`,
    unknown: (option) => `nie ma opcji '${option}'`,
    oneFile: (typed) => `jeden plik naraz: '${typed}' to o jeden za dużo`,
    port: (typed) => `--port to liczba całkowita od 0 do 65535, nie '${typed}'`,
  },
  starts: {
    inElectron: 'Ratafia otwiera się w Electronie.',
    inBrowser: 'Ratafia otwiera się w przeglądarce.',
    withoutElectron: 'Ratafia otwiera się w przeglądarce: na tym komputerze nie ma Electrona.',
    noElectron:
      'Electrona tu nie ma i nie udało się go pobrać. `npm start -- --fetch-electron` spróbuje znowu; `npm start -- --host browser` obejdzie się bez niego.',
    fetching: (seconds) => `Pobieram Electron, tylko ten raz, najwyżej przez ${seconds} s …`,
    electronFails: (message) => `Electron się nie uruchamia: ${message}`,
    noWindow: 'Nie udało się otworzyć okna: otwórz powyższy adres.',
  },
  problem: {
    bookNewer: (file) =>
      `Ratafia nie może otworzyć ${file}: tę księgę zapisała nowsza Ratafia.\nZaktualizuj tę. Księgi nie ruszono.`,
    bookDamaged: (file) =>
      `Ratafia nie może otworzyć ${file}: plik jest uszkodzony.\nNiczego nie zmieniono. Wstaw z powrotem kopię albo ${otherFile}.`,
    bookForeign: (file) =>
      `Ratafia nie może otworzyć ${file}: ten plik nie jest księgą piwniczki.\nNie ruszono go. Wskaż księgę albo nowy plik opcją --cellar PLIK.`,
    bookReadOnly: (file) =>
      `Ratafia nie może otworzyć ${file}: w księdze albo w jej folderze nie można pisać.\nSprawdź uprawnienia pliku i folderu albo ${otherFile}.`,
    bookBusy: (file) =>
      `Ratafia nie może otworzyć ${file}: księga jest otwarta w innym oknie Ratafii albo w innym programie.\nZamknij ją tam i uruchom ponownie.`,
    diskFull: (file) =>
      `Ratafia nie może otworzyć ${file}: dysk jest pełny.\nZwolnij na nim miejsce i uruchom ponownie.`,
    demoBusy: (file) =>
      `Ratafia nie może otworzyć pokazu, ${file}: jest otwarty w innym oknie Ratafii. Twojej księgi nie ruszono.\nZamknij go tam i uruchom ponownie albo uruchom bez --demo.`,
    demoSpoilt: (file) =>
      `Ratafia nie może otworzyć pokazu, ${file}: plik jest uszkodzony albo z innej wersji. Twojej księgi nie ruszono.\nUsuń ten plik, a pokaz powstanie od nowa.`,
    noFolder: (file) =>
      `Ratafia nie może utworzyć folderu dla ${file}.\nSprawdź uprawnienia folderów nad nim albo ${otherFile}.`,
    twoBooks: (file) =>
      `${file} jest księgą, a --cellar wskazuje inną.\nPomiń jedną z nich: Ratafia otwiera jedną księgę naraz.`,
    isNoBook: (file) =>
      `${file} nie jest księgą piwniczki. Pliku nie ruszono.\nWskaż księgę; nowa zaczyna się opcją --cellar PLIK.`,
    isUnreadable: (file) =>
      `Nie można przeczytać ${file}.\nSprawdź nazwę i uprawnienia; nowa księga zaczyna się opcją --cellar PLIK.`,
    portTaken: (port) =>
      `Portu ${port} adresu 127.0.0.1 nie można użyć: jest zajęty albo niedozwolony.\nBez --port zostanie wybrany wolny.`,
    notInstalled: () =>
      'Ratafia nie jest jeszcze zainstalowana.\nNajpierw uruchom `npm ci` w folderze projektu.',
    notBuilt: () => 'Ratafii nie udało się zbudować; powód jest wyżej.',
  },
} satisfies HostWords
