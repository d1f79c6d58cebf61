/** Preparation and cautions of the fruit library, by what it says in English. */
export const fruit: Readonly<Record<string, string>> = {
  'Hull and halve, do not mash (haze); a night under sugar.':
    'Odszypułkuj i przekrój, nie rozgniataj (zmętnienie); noc pod cukrem.',
  'Its red is the least stable of the common fruits and turns brown.':
    'Jej czerwień jest najmniej trwała ze zwykłych owoców i brązowieje.',
  'Whole; rinse only what is dirty. Autumn kinds bear until the first frost.':
    'Całe; płucz tylko brudne. Odmiany jesienne owocują do pierwszych przymrozków.',
  'Whole or barely crushed; freezing first helps.':
    'Całe albo lekko zgniecione; pomaga wcześniejsze przemrożenie.',
  'Seeds give tannin when left in long.': 'Nasiona oddają garbniki, gdy leżą długo.',
  'Strip from the stalks, then crush or freeze; a few leaves if liked.':
    'Obierz z szypułek, potem rozgnieć albo przemroź; kilka liści, jeśli lubisz.',
  'Strip from the stalks, crush a little.': 'Obierz z szypułek, lekko zgnieć.',
  'Top and tail, then prick or halve.': 'Usuń szypułki i końcówki, potem nakłuj albo przekrój.',
  'Ripe black berries, every stalk off; heat with a little water to 80 °C for 20 minutes, cool, then spirit.':
    'Dojrzałe czarne owoce, bez żadnej szypułki; podgrzej z odrobiną wody do 80 °C przez 20 minut, ostudź, potem spirytus.',
  'Raw berries, stalks and leaves give cyanide and upset the stomach: cook the berries first.':
    'Surowe owoce, szypułki i liście wydzielają cyjanek i szkodzą na żołądek: najpierw ugotuj owoce.',
  'Never dwarf elder or red elder.': 'Nigdy bez hebd ani bez koralowy.',
  'Chop, prick or freeze: an unbroken skin lets little out.':
    'Posiekaj, nakłuj albo przemroź: nienaruszona skórka mało przepuszcza.',
  'Crush or freeze.': 'Rozgnieć albo przemroź.',
  'Crush or freeze; lemon for acid.': 'Rozgnieć albo przemroź; cytryna dla kwasu.',
  'Crush a little.': 'Lekko zgnieć.',
  'Freeze, then crush; skim off the oil that rises.':
    'Przemroź, potem rozgnieć; zbierz olej, który wypłynie.',
  'Oil of the berry, 2 to 3.5 %, floats as an orange ring or clouds the liquor; harmless.':
    'Olej owocu, od 2 do 3,5 %, pływa jako pomarańczowy pierścień albo mąci płyn; nieszkodliwy.',
  'Whole or crushed.': 'Całe albo rozgniecione.',
  'Whole.': 'Całe.',
  'Unripe fruit and white sap irritate.': 'Niedojrzałe owoce i biały sok drażnią.',
  'Prick or crush.': 'Nakłuj albo rozgnieć.',
  'Tartar crystals may fall out in the cold or in stronger spirit; harmless.':
    'W zimnie lub w mocniejszym spirytusie mogą wypaść kryształki kamienia winnego; nieszkodliwe.',
  'Stone all but a tenth to a fifth of the cherries; a night under sugar.':
    'Wydryluj wszystkie prócz jednej na dziesięć do jednej na pięć; noc pod cukrem.',
  'Kernels carry cyanogenic compounds: never crack stones into the jar, and take whole ones out within 8 weeks.':
    'Jądra pestek zawierają związki cyjanogenne: nigdy nie rozbijaj pestek w naczyniu, a całe wyjmij w ciągu 8 tygodni.',
  'Stone or prick; lemon juice makes up for the low acid.':
    'Wydryluj albo nakłuj; sok z cytryny uzupełnia mały kwas.',
  'Dead ripe, dark and falling; prick or freeze; stones may stay.':
    'Całkiem dojrzały, ciemny i opadający; nakłuj albo przemroź; pestki mogą zostać.',
  'Halve and stone; best when ripe enough to wrinkle.':
    'Przekrój i wydryluj; najlepsza tak dojrzała, że się marszczy.',
  'Prick or freeze; stones in, for a limited time.':
    'Nakłuj albo przemroź; z pestkami, przez ograniczony czas.',
  'Prick, or halve and stone.': 'Nakłuj albo przekrój i wydryluj.',
  'Halve and stone.': 'Przekrój i wydryluj.',
  'Kernels are not a flavouring: about three raw small ones reach the acute cyanide limit of an adult.':
    'Jądra pestek to nie przyprawa: około trzech małych surowych sięga granicy ostrego zatrucia cyjankiem u dorosłego.',
  'Stone and slice, peeled or not; lemon juice against browning.':
    'Wydryluj i pokrój w plastry, obrane lub nie; sok z cytryny przeciw brązowieniu.',
  'After frost, or two days and more in the freezer; prick; stones in.':
    'Po przymrozku albo co najmniej dwóch dniach w zamrażarce; nakłuj; z pestkami.',
  'Core, slice 1 cm thick straight into the spirit; lemon juice.':
    'Usuń gniazda, krój w plastry 1 cm prosto do spirytusu; sok z cytryny.',
  'Core and slice; cinnamon or raisins go well.':
    'Usuń gniazda i pokrój w plastry; pasuje cynamon lub rodzynki.',
  'Crushed pips give cyanide.': 'Rozgniecione pestki wydzielają cyjanek.',
  'Rub off the down, core, slice thin or grate; one to three days under sugar.':
    'Zetrzyj meszek, usuń gniazda, pokrój cienko albo zetrzyj; od jednego do trzech dni pod cukrem.',
  'Seeds give cyanide and slime: take them out.': 'Nasiona wydzielają cyjanek i śluz: usuń je.',
  'Core and slice thin; two to seven days under half to all its mass of sugar, pour the syrup off, then spirit.':
    'Usuń gniazda i pokrój cienko; od dwóch do siedmiu dni pod cukrem, od połowy do całej jego masy, zlej syrop, potem spirytus.',
  'Seeds give cyanide: take them out.': 'Nasiona wydzielają cyjanek: usuń je.',
  'After frost or frozen; a short blanching or dry roasting takes bitterness away.':
    'Po przymrozku albo przemrożona; krótkie blanszowanie lub suche prażenie odbiera gorycz.',
  'Raw berries irritate (parasorbic acid); freezing, heat and long keeping tame them.':
    'Surowe owoce drażnią (kwas parasorbowy); łagodzi je mróz, ciepło i długie leżakowanie.',
  'After frost; whole or lightly crushed, stones unbroken.':
    'Po przymrozku; cały albo lekko zgnieciony, pestki nienaruszone.',
  'Acts on the heart: caution with heart and blood-pressure medicines.':
    'Działa na serce: ostrożnie przy lekach na serce i ciśnienie.',
  'Freeze first; often simmered with cherry leaves before the spirit.':
    'Najpierw przemroź; często gotowana krótko z liśćmi wiśni przed zalaniem spirytusem.',
  'Unwaxed fruit, the yellow alone.': 'Niewoskowane owoce, tylko żółta warstwa.',
  'Clouds when brought below about 45 % vol.': 'Mętnieje po rozcieńczeniu poniżej około 45 % obj.',
  'No waxed or fungicide-treated peel.':
    'Żadnej skórki woskowanej ani pryskanej środkiem grzybobójczym.',
  'No pith; the juice goes in after steeping.': 'Bez białego; sok wchodzi po maceracji.',
  'The orange layer alone, fresh or dried.': 'Tylko pomarańczowa warstwa, świeża lub suszona.',
  'Clouds when diluted.': 'Mętnieje po rozcieńczeniu.',
  'No pith, in slices.': 'Bez białego, w plastrach.',
  'Cut off every bit of leaf; 1 to 2 cm pieces, unpeeled; a night under sugar.':
    'Odetnij liście do ostatniego kawałka; kawałki od 1 do 2 cm, nieobrane; noc pod cukrem.',
  'Leaves are poisonous: stalks only.': 'Liście są trujące: tylko łodygi.',
  'Oxalic acid goes into the drink: caution with kidney stones.':
    'Kwas szczawiowy przechodzi do napoju: ostrożnie przy kamieniach nerkowych.',
  'After frost; halve and scrape out seeds and hairs, or steep whole and filter very fine.':
    'Po przymrozku; przekrój i wyskrob nasiona z włoskami albo maceruj w całości i filtruj bardzo dokładnie.',
  'Hairs around the seeds irritate the gut: filter fine.':
    'Włoski wokół nasion drażnią jelita: filtruj dokładnie.',
  'Ripe, in quarters.': 'Dojrzałe, w ćwiartkach.',
  'Sap of unripe fruit, stalk and leaves burns skin in sunlight.':
    'Sok niedojrzałych owoców, ogonków i liści parzy skórę na słońcu.',
  'Seeds in their juice sacs only, no pith.': 'Tylko nasiona w soczystych osnówkach, bez białego.',
  'Rind and root bark hold alkaloids and much tannin: leave them out.':
    'Skórka i kora korzenia mają alkaloidy i dużo garbników: nie dodawaj ich.',
  'Peel, core, 1 cm pieces.': 'Obierz, usuń rdzeń, kawałki 1 cm.',
  'Stoned; unsulphured or smoked.': 'Bez pestek; niesiarkowana albo wędzona.',
  'Rinse; unsulphured.': 'Wypłucz; niesiarkowana.',
  'Shake out insects, cut thick green stalks off; lemon slices.':
    'Wytrząśnij owady, odetnij grube zielone szypułki; plastry cytryny.',
  'Green stalks and leaves give cyanide: trim them.':
    'Zielone szypułki i liście wydzielają cyjanek: odetnij je.',
  'While a needle still goes through; quarter with gloves on.':
    'Dopóki igła jeszcze przechodzi; pokrój na ćwiartki w rękawiczkach.',
  'Juice stains and irritates skin.': 'Sok barwi i drażni skórę.',
  'Nut allergy.': 'Alergia na orzechy.',
  'Peel, slice 2 mm thin.': 'Obierz, pokrój w plastry 2 mm.',
  'Resin clouds when diluted.': 'Żywica mętnieje po rozcieńczeniu.',
  'Caution with blood thinners.': 'Ostrożnie przy lekach rozrzedzających krew.',
  'Whole or coarsely cracked beans; ground coffee needs hours only and turns bitter.':
    'Ziarna całe albo grubo łamane; mielona potrzebuje tylko godzin i gorzknieje.',
  'About 10 mg of caffeine per gram of beans.': 'Około 10 mg kofeiny na gram ziaren.',
  'Split lengthways; one to three pods per litre.':
    'Przetnij wzdłuż; od jednej do trzech lasek na litr.',
  'Broken sticks, 2 to 10 g per litre.': 'Łamane laski, od 2 do 10 g na litr.',
  'Cassia bark holds coumarin: keep the dose low.': 'Kora kasji ma kumarynę: dawkuj mało.',
  'Whole, two to eight per litre; out again after days.':
    'Całe, od dwóch do ośmiu na litr; wyjmij po kilku dniach.',
  'Crush lightly.': 'Lekko zgnieć.',
  'Not in pregnancy or with kidney disease.': 'Nie w ciąży ani przy chorobie nerek.',
  'Common juniper only: savin is poisonous.': 'Tylko jałowiec pospolity: sabiński jest trujący.',
}
