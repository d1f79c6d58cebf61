/** What `en/exports.ts` says, in Polish. */
const problem = {
  notAnExport: 'Ten plik nie jest piwniczką wyeksportowaną z Ratafii.',
  cutShort: 'Ten plik jest ucięty. Skopiuj go jeszcze raz stamtąd, skąd pochodzi.',
  unreadable:
    'Tego pliku nie da się odczytać. Sprawdź, czy jest na miejscu, jego uprawnienia i dysk, na którym leży.',
  checksum:
    'Coś w tym pliku zmieniono po jego zrobieniu. Użyj pliku takiego, jaki został wyeksportowany, albo innego.',
  damagedInside:
    'Ten plik jest w środku uszkodzony. Skopiuj go jeszcze raz stamtąd, skąd pochodzi.',
  notBySchema:
    'To, co jest w tym pliku, nie jest księgą piwniczki: nie trzyma się własnego opisu. Użyj innego eksportu.',
  unsafeNames:
    'Tego pliku nie zrobiła Ratafia: nazwy w nim wychodzą poza swój folder, jak w plikach, które mają szkodzić. Nie używaj go.',
  tooLarge:
    'Tego pliku nie zrobiła Ratafia: to, co w nim spakowano, jest o wiele za duże albo zbyt głęboko zagnieżdżone. Nie używaj go.',
  otherState: 'To, co zapisano, nie wróciło takie samo i zostało wyrzucone. Spróbuj ponownie.',
  newerProgram: 'Tę piwniczkę wyeksportowała nowsza Ratafia. Najpierw zaktualizuj tę.',
} as const

export const exportWords = {
  problem,
  out: {
    title: 'Cała piwniczka w otwartej postaci',
    text: 'Wszystko, co jest w księdze, jako jeden plik zip, który odczytają inne programy: tabele dla arkusza oraz każdy wpis i przepis co do ostatniej cyfry, z opisem każdego pliku. Można ją wczytać z powrotem.',
    go: 'Eksportuj całą piwniczkę',
    folder: 'Folder na tym komputerze',
    folderHint: 'Gdy puste, plik trafia do folderu „exports” obok księgi.',
    label: 'Eksportuję piwniczkę',
    made: 'Zapisano, na próbę wczytano z powrotem i okazało się takie samo co do ostatniej cyfry: wpisów {{count}}, {{size}}.',
    madeIn: 'To {{file}}.',
    stopped: 'Zatrzymano. Nic nie zapisano.',
    notVerified: 'Eksport nie wrócił taki sam jak księga i został wyrzucony. Spróbuj ponownie.',
  },
  in: {
    title: 'Wczytaj wyeksportowaną piwniczkę',
    text: 'Zajmuje miejsce obecnej księgi, która zostaje odłożona pod inną nazwą; nic nie jest nadpisywane.',
    firstRun: 'Z innego komputera lub programu: zacznij od piwniczki w otwartej postaci.',
    ask: 'Wybierz eksport',
    list: 'Znalezione eksporty',
    none: 'W tym folderze nie ma wyeksportowanej piwniczki.',
    made: 'Wyeksportowana',
    book: 'Księga',
    lookIntoOne: 'Zajrzyj do piwniczki wyeksportowanej {{when}}',
    looking: 'Zaglądam do eksportu',
    preview: 'Piwniczka wyeksportowana {{when}}',
    sound: 'Można ją wczytać: każda linia trzyma się opisu, każdy wpis przeliczono na nowo.',
    refused_one: '{{count}} wpis w niej jest niemożliwy, tak jak w księdze, z której powstała.',
    refused_few: '{{count}} wpisy w niej są niemożliwe, tak jak w księdze, z której powstała.',
    refused_many:
      '{{count}} wpisów w niej jest niemożliwych, tak jak w księdze, z której powstała.',
    refused_other: '{{count}} wpisu w niej jest niemożliwe, tak jak w księdze, z której powstała.',
    compare: 'Eksport obok obecnej księgi',
    there: 'W eksporcie',
    onlyThere_one: '{{count}} wpis jest tylko w eksporcie i by doszedł:',
    onlyThere_few: '{{count}} wpisy są tylko w eksporcie i by doszły:',
    onlyThere_many: '{{count}} wpisów jest tylko w eksporcie i by doszło:',
    onlyThere_other: '{{count}} wpisu jest tylko w eksporcie i by doszło:',
    go: 'Wczytaj tę piwniczkę',
    done: 'Księga jest teraz piwniczką wyeksportowaną {{when}}.',
  },
} as const
