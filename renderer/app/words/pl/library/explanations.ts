/** How the Bench computes, by what it says in English. */
export const explanations: Readonly<Record<string, string>> = {
  'Grams of ethanol, sugar and acid, each times the energy that labels count for it: 29, 17 and 13 kJ (7, 4 and 3 kcal).':
    'Gramy etanolu, cukru i kwasu, każde razy energia, jaką liczą za nie etykiety: 29, 17 i 13 kJ (7, 4 i 3 kcal).',
  'Regulation (EU) 1169/2011, Annex XIV': 'Rozporządzenie (UE) nr 1169/2011, załącznik XIV',
  'Without protein and fat, such as in cream or nut liqueurs.':
    'Bez białka i tłuszczu, jak w likierach śmietankowych czy orzechowych.',
  'From how well volume, strength and sugar are known; the factors are a convention.':
    'Z tego, jak dobrze znane są objętość, moc i cukier; współczynniki są umowne.',
  'An alcoholometer floats by density alone, and its scale was made for spirit without sugar. Sugar makes the liquid dense, so it stands too high and shows too little: about 0.27 % vol for each g/L near 40 % vol.':
    'Alkoholomierz pływa według samej gęstości, a jego skalę zrobiono dla spirytusu bez cukru. Cukier zagęszcza płyn, więc stoi za wysoko i pokazuje za mało: około 0,27 % obj. na każdy g/l w pobliżu 40 % obj.',
  'OIML R 22 (1975) and ICUMSA (SPS-4) put together':
    'OIML R 22 (1975) i ICUMSA (SPS-4) złożone razem',
  '−20 to 40 °C. Off the scale it shows nothing.':
    'Od −20 do 40 °C. Poza skalą niczego nie pokazuje.',
  'From how well strength and sugar are known, and about 1 kg/m³ of the sweet liquid’s own.':
    'Z tego, jak dobrze znane są moc i cukier, i około 1 kg/m³ samego słodkiego płynu.',
  'The same grams take more room when warm. They are worked out from the volume as measured, and their volume at 20 °C follows.':
    'Te same gramy zajmują na ciepło więcej miejsca. Wylicza się je ze zmierzonej objętości, a z nich objętość w 20 °C.',
  'OIML R 22 (1975) and ICUMSA (SPS-4); at 60 °F as 27 CFR 30.67':
    'OIML R 22 (1975) i ICUMSA (SPS-4); w 60 °F według 27 CFR 30.67',
  '−20 to 40 °C; the expansion of the jug itself is left out (below 0.03 %).':
    'Od −20 do 40 °C; rozszerzalność samego dzbanka jest pominięta (poniżej 0,03 %).',
  'From the jug’s and the thermometer’s, and 0.02 % of the equations’ own.':
    'Z dzbanka i termometru oraz 0,02 % samych równań.',
  'The volume of the spirit and water alone, and on top of it the room that sugar takes in water: 0.62 ml a gram, a little more where there is much.':
    'Objętość samego spirytusu z wodą, a do tego miejsce, które cukier zajmuje w wodzie: 0,62 ml na gram, trochę więcej, gdy jest go dużo.',
  'Exact for spirit alone and for syrup alone; what ethanol and sugar do to each other is in no public table.':
    'Dokładne dla samego spirytusu i dla samego syropu; co etanol i cukier robią sobie nawzajem, nie stoi w żadnej publicznej tablicy.',
  'About 1 kg/m³ in a sweet liqueur: 0.005 ml for each gram of sugar.':
    'Około 1 kg/m³ w słodkiej nalewce: 0,005 ml na każdy gram cukru.',
  'The water holds as much sugar as it would alone, up to a fifth of ethanol by mass; beyond, less and less, to nothing in pure ethanol.':
    'Woda mieści tyle cukru, ile mieściłaby sama, do jednej piątej etanolu wagowo; dalej coraz mniej, do zera w czystym etanolu.',
  'Vavrinecz (1962, from memory) for water; with ethanol an engineering estimate, for no table was found':
    'Vavrinecz (1962, z pamięci) dla wody; z etanolem oszacowanie inżynierskie, bo tablicy nie znaleziono',
  '0 to 90 °C. A guide: it warns, it does not forbid.':
    'Od 0 do 90 °C. Wskazówka: ostrzega, nie zabrania.',
  'Within 0.2 % of the sugar in water; unknown with ethanol, perhaps a fifth.':
    'Z dokładnością do 0,2 % cukru w wodzie; z etanolem nieznana, może jedna piąta.',
  'The ethanol in the glass over what a country calls one drink: 10 ml in the United Kingdom, 14 g in the United States, 10 g in Australia.':
    'Etanol w kieliszku przez to, co kraj nazywa jedną porcją: 10 ml w Wielkiej Brytanii, 14 g w Stanach Zjednoczonych, 10 g w Australii.',
  'Guidance of the health authorities of those countries; questionnaires of the WHO (AUDIT, 2001; the year from memory)':
    'Wskazówki urzędów zdrowia tych krajów; kwestionariusze WHO (AUDIT, 2001; rok z pamięci)',
  'Says nothing of what anyone can safely drink.': 'Nie mówi, ile kto może bezpiecznie wypić.',
  'From how well volume and strength are known.': 'Z tego, jak dobrze znane są objętość i moc.',
  'Sugar takes room itself, so more is needed than the missing grams a litre, and the strength falls. The amount is the one that comes out right after it has dissolved.':
    'Cukier sam zajmuje miejsce, więc trzeba go więcej niż brakujących gramów na litr, a moc spada. Ilość jest taka, że po rozpuszczeniu wychodzi dokładnie.',
  'ICUMSA (SPS-4) and OIML R 22 (1975) put together':
    'ICUMSA (SPS-4) i OIML R 22 (1975) złożone razem',
  'Up to 1200 g/L, all at 20 °C.': 'Do 1200 g/l, wszystko w 20 °C.',
  'From how well volume, strength and sugar are known, and 0.005 ml for each gram of sugar.':
    'Z tego, jak dobrze znane są objętość, moc i cukier, oraz 0,005 ml na każdy gram cukru.',
  'The density follows from the share of sugar by mass (degrees Brix) and the temperature by one polynomial; the other way round it is solved.':
    'Gęstość wynika z udziału cukru w masie (stopni Brixa) i temperatury przez jeden wielomian; w drugą stronę jest rozwiązywany.',
  'ICUMSA, method SPS-4': 'ICUMSA, metoda SPS-4',
  '0 to 85 % by mass, 0 to 80 °C, cane or beet sugar in water; fruit sugars differ by about 1 kg/m³.':
    'Od 0 do 85 % wagowo, od 0 do 80 °C, cukier trzcinowy lub buraczany w wodzie; cukry owocowe różnią się o około 1 kg/m³.',
  '0.1 kg/m³ of the equation’s own up to half sugar, 0.2 to 60 %, 0.8 beyond, and from the instruments’.':
    '0,1 kg/m³ samego równania do połowy cukru, 0,2 do 60 %, dalej 0,8, oraz z przyrządów.',
  'Strength and sugar are held against the least that each name asks for; sugar counts as invert sugar, 1.0526 times cane sugar.':
    'Moc i cukier porównuje się z najmniejszymi, jakich wymaga każda nazwa; cukier liczy się jako inwertowany, 1,0526 razy cukier trzcinowy.',
  'Regulation (EU) 2019/787; 27 CFR 5; label tolerances in Regulation (EU) 1169/2011, Annex XII':
    'Rozporządzenie (UE) 2019/787; 27 CFR 5; tolerancje etykiet w rozporządzeniu (UE) nr 1169/2011, załącznik XII',
  'Only strength and sugar: which fruit and whose spirit must go in, and that selling needs a licence, is not looked at. Some rules are known at second hand or from memory, as marked.':
    'Tylko moc i cukier: nie sprawdza się, jakie owoce i czyj spirytus mają wejść ani że sprzedaż wymaga zezwolenia. Niektóre przepisy są z drugiej ręki albo z pamięci, jak zaznaczono.',
  'None stated: the rules are limits, not measurements.':
    'Nie podano: przepisy to granice, nie pomiary.',
  'The density follows from the share of ethanol by mass and the temperature by one long polynomial, fitted to measurements of the highest grade.':
    'Gęstość wynika z udziału etanolu w masie i temperatury przez jeden długi wielomian, dopasowany do pomiarów najwyższej klasy.',
  'International alcoholometric tables, OIML R 22 (1975)':
    'Międzynarodowe tablice alkoholometryczne, OIML R 22 (1975)',
  'Spirit and water alone, −20 to 40 °C.': 'Sam spirytus z wodą, od −20 do 40 °C.',
  '0.05 kg/m³: the equation meets its own tables within 0.01, and older independent tables within 0.12.':
    '0,05 kg/m³: równanie zgadza się z własnymi tablicami do 0,01, a ze starszymi niezależnymi do 0,12.',
  'Proof is twice the percentage by volume at 60 °F. The strength is turned into a share of ethanol by mass, which no temperature changes, and back at 20 °C.':
    'Proof to dwa razy procent objętościowy w 60 °F. Moc zamienia się na udział etanolu w masie, którego temperatura nie zmienia, i z powrotem w 20 °C.',
  '27 CFR 30.61, 30.66 and 30.67, by the densities of OIML R 22 (1975)':
    '27 CFR 30.61, 30.66 i 30.67, według gęstości OIML R 22 (1975)',
  'American proof, 0 to 200; −4 to 104 °F for the hydrometer. British proof is another.':
    'Proof amerykański, od 0 do 200; od −4 do 104 °F dla areometru. Proof brytyjski jest inny.',
  'From the number’s own, and 0.06 proof of the method’s where a hydrometer is corrected.':
    'Z samej liczby oraz 0,06 proof metody, gdy poprawia się areometr.',
  'The reading is turned into the density the glass floats in, allowing for the growth of the glass itself (25 millionths a degree), and that density at that temperature into strength.':
    'Odczyt zamienia się na gęstość, w której szkło pływa, z uwzględnieniem rozszerzania samego szkła (25 milionowych na stopień), a tę gęstość w tej temperaturze na moc.',
  'OIML R 22 (1975); checked against the table of 27 CFR 30.61':
    'OIML R 22 (1975); sprawdzone z tablicą 27 CFR 30.61',
  '0 to 100 % vol, −20 to 40 °C, an instrument graduated at 20 °C, no sugar.':
    'Od 0 do 100 % obj., od −20 do 40 °C, przyrząd wyskalowany na 20 °C, bez cukru.',
  'From the instrument’s and the thermometer’s, and 0.03 % vol of the method’s own (its scatter against the printed table).':
    'Z przyrządu i termometru oraz 0,03 % obj. samej metody (jej rozrzut względem drukowanej tablicy).',
  'Ethanol is kept by weight: what is in the spirit must be in the result. Weights are turned into volumes at 20 °C by the density of each strength, so the shrinking that happens on mixing is counted.':
    'Etanol zachowuje się wagowo: co jest w spirytusie, musi być w wyniku. Masy zamienia się na objętości w 20 °C według gęstości każdej mocy, więc kurczenie się przy mieszaniu jest policzone.',
  'OIML R 22 (1975) densities; checked against a pharmacopoeia’s dilution table':
    'Gęstości OIML R 22 (1975); sprawdzone z farmakopealną tablicą rozcieńczeń',
  'Spirit without sugar, measured at 20 °C, from 0.1 % vol to its own strength.':
    'Spirytus bez cukru, zmierzony w 20 °C, od 0,1 % obj. do własnej mocy.',
  'From how fine the jug or scale and the strength are known, and 0.15 ml a litre of the method’s own (its worst against the printed table).':
    'Z tego, jak dokładne są dzbanek lub waga i moc, oraz 0,15 ml na litr samej metody (najgorszy wynik względem drukowanej tablicy).',
  'Looks for the one strength whose spirit has this density at this temperature. Stronger is always lighter, so there is one answer.':
    'Szuka jedynej mocy, której spirytus ma tę gęstość w tej temperaturze. Mocniejszy jest zawsze lżejszy, więc odpowiedź jest jedna.',
  'International alcoholometric tables, OIML R 22 (1975), solved backwards':
    'Międzynarodowe tablice alkoholometryczne, OIML R 22 (1975), rozwiązane wstecz',
  'Spirit and water alone, −20 to 40 °C; below 0 °C weak spirit is refused, where many strengths share a density. Sugar makes it useless.':
    'Sam spirytus z wodą, od −20 do 40 °C; poniżej 0 °C słaby spirytus jest odrzucany, bo tam wiele mocy ma tę samą gęstość. Cukier czyni to bezużytecznym.',
  'From the density’s and the thermometer’s, and 0.05 kg/m³ of the equation’s own.':
    'Z gęstości i termometru oraz 0,05 kg/m³ samego równania.',
  'Sugar makes a liquid denser and refract more; spirit makes it lighter and refract more. Only one strength and sweetness shows both numbers: where the two lines cross.':
    'Cukier zagęszcza płyn i zwiększa refrakcję; spirytus czyni go lżejszym i też zwiększa refrakcję. Tylko jedna moc i słodycz pokazuje obie liczby: tam, gdzie przecinają się dwie linie.',
  'OIML R 22 (1975), ICUMSA (SPS-4), refraction after the tables of the CRC Handbook, put together by specific refraction (Lorentz and Lorenz, 1880)':
    'OIML R 22 (1975), ICUMSA (SPS-4), refrakcja według tablic CRC Handbook, złożone przez refrakcję właściwą (Lorentz i Lorenz, 1880)',
  '0 to 40 °C, −5 to 85 °Bx, a refractometer that corrects for temperature. Fruit acids and other solubles count as sugar.':
    'Od 0 do 40 °C, od −5 do 85 °Bx, refraktometr z poprawką na temperaturę. Kwasy owocowe i inne rozpuszczalne liczą się jako cukier.',
  'From both instruments’ and the thermometer’s; the refraction of spirit with sugar is itself known only to 0.2 °Bx, about 0.4 % vol.':
    'Z obu przyrządów i termometru; sama refrakcja spirytusu z cukrem znana jest tylko do 0,2 °Bx, około 0,4 % obj.',
  'What is left when the spirit is boiled off, made up with water to the first volume, tells the sugar by its density. The strength is then the one at which that sugar and spirit together have the density measured before. The old rule of taking one density from the other is shown beside it: it errs by up to 2 % vol in strong, sweet liqueurs.':
    'To, co zostaje po odgotowaniu spirytusu, dopełnione wodą do pierwszej objętości, mówi gęstością o cukrze. Moc jest wtedy taka, przy której ten cukier i spirytus razem mają gęstość zmierzoną przedtem. Obok pokazano starą regułę odejmowania jednej gęstości od drugiej: w mocnych, słodkich nalewkach myli się o 2 % obj.',
  'Sucrose by ICUMSA (SPS-4), spirit by OIML R 22 (1975); the old rule is Tabarié’s':
    'Sacharoza według ICUMSA (SPS-4), spirytus według OIML R 22 (1975); stara reguła jest Tabariégo',
  '0 to 40 °C, both measured at the same temperature and made up to exactly the same volume. Fruit acids and other solubles count as sugar.':
    'Od 0 do 40 °C, oba zmierzone w tej samej temperaturze i dopełnione do dokładnie tej samej objętości. Kwasy owocowe i inne rozpuszczalne liczą się jako cukier.',
  'From the hydrometer’s and the thermometer’s, and from what no table tells: how ethanol changes the room sugar takes (0.005 ml a gram).':
    'Z areometru i termometru oraz z tego, czego nie mówi żadna tablica: jak etanol zmienia miejsce, które zajmuje cukier (0,005 ml na gram).',
  'Weight over volume, and a little more for the air that carries part of the liquid. A flask’s own volume is best learnt by weighing it full of water.':
    'Masa przez objętość i trochę więcej za powietrze, które unosi część płynu. Objętość kolby najlepiej poznać, ważąc ją pełną wody.',
  'Buoyancy of weighing in air (air 1.2, weights 8000 kg/m³; OIML R 111); water by Kell (1975)':
    'Wypór przy ważeniu w powietrzu (powietrze 1,2, odważniki 8000 kg/m³; OIML R 111); woda według Kella (1975)',
  '600 to 2000 kg/m³. Drops on the neck and air bubbles are not allowed for.':
    'Od 600 do 2000 kg/m³. Kropli na szyjce i pęcherzyków nie uwzględniono.',
  'From the scale’s last digit, twice rounded (empty and full), and from the flask’s volume.':
    'Z ostatniej cyfry wagi, dwa razy zaokrąglonej (pusta i pełna), i z objętości kolby.',
  'Glass grows by 25 millionths of its volume a degree from where it was graduated, so the liquid is that much less dense than shown. What it is at 20 °C depends on what is in it.':
    'Szkło rośnie o 25 milionowych objętości na stopień od temperatury skalowania, więc płyn jest o tyle rzadszy, niż pokazano. Ile to będzie w 20 °C, zależy od tego, co w nim jest.',
  'Expansion of instrument glass, OIML R 22 (1975)':
    'Rozszerzalność szkła przyrządów, OIML R 22 (1975)',
  '600 to 2000 kg/m³, −20 to 40 °C.': 'Od 600 do 2000 kg/m³, od −20 do 40 °C.',
  'From the hydrometer’s and, where the density is carried to 20 °C, the thermometer’s.':
    'Z areometru, a gdy gęstość przenosi się na 20 °C, także z termometru.',
  'A table of corrections for sugar in water, between its rows in straight lines. One that corrects by itself is taken at its word.':
    'Tablica poprawek dla cukru w wodzie, między jej wierszami po prostych. Przyrządowi, który poprawia sam, wierzy się na słowo.',
  'International temperature correction for refractometers (ICUMSA; the row at 10 °C after the GOST table)':
    'Międzynarodowa poprawka temperaturowa refraktometrów (ICUMSA; wiersz 10 °C według tablicy GOST)',
  '0 to 85 °Bx, 10 to 30 °C, sugar in water. Spirit also refracts: use it together with a hydrometer there.':
    'Od 0 do 85 °Bx, od 10 do 30 °C, cukier w wodzie. Spirytus też załamuje światło: użyj tam areometru razem z refraktometrem.',
  'From the instrument’s and the thermometer’s, and 0.02 °Bx of the table’s own.':
    'Z przyrządu i termometru oraz 0,02 °Bx samej tablicy.',
}
