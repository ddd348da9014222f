/** Orders told in turns, messages parted by " || ", with what the shop has to have heard in the end (see `usual-orders.test.ts` for the notation). */
export const englishInTurns: readonly (readonly [says: string, heard: string])[] = [
  [
    'ordering for my sons baseball team, we are the Rattlers || 12 jerseys, black with orange numbers on back || names too, same color, above the number',
    'sport baseball; jersey black; back-number orange; name orange',
  ],
  [
    'Hi do you do hoodies? || Great. 9 of them, maroon, BEARS on the front in gold || make it gold glitter',
    'hoodie maroon; full-front BEARS; full-front gold; full-front glitter',
  ],
  [
    'Need polos for our golf outing, royal, mens. 4 L 3 XL. On the left chest SUMMIT OPEN, white || on second thought navy polos',
    'polo navy; left-chest SUMMIT OPEN; left-chest white; # L x4; # XL x3',
  ],
  [
    'soccer jerseys, Falcons U10, red, white number on back || can we also have the number on the front, small, 4 inches || names no',
    'sport soccer; jersey red; back-number white; front-number white; front-number 102; no name',
  ],
  [
    "our jerseys are ours already, just need vinyl. they're green polyester || numbers white on the back 8 inch || last names in yellow",
    'jersey own; back-number white; back-number 203; name yellow',
  ],
  [
    'white tees, front: LAKE DAYS in teal || swap the colors, teal tees with white letters',
    'tee teal; full-front LAKE DAYS; full-front white',
  ],
  [
    'basketball. white jerseys red numbers front n back || outline the numbers in black please',
    'jersey white; front-number red; back-number red; back-number outline black; front-number outline black',
  ],
  [
    'basketball. white jerseys red numbers front n back with black outline || lose the outline',
    'jersey white; back-number red; no back-number outline black',
  ],
  [
    'Volleyball jerseys in black for the Night Owls, silver foil numbers, front and back || foil is too flashy, do plain silver',
    'jersey black; back-number silver; back-number standard; front-number standard',
  ],
  [
    'Purple hoodies, GRIT on the back in white || put it on the front instead || and add names on the back in white',
    'hoodie purple; full-front GRIT; full-front white; name white',
  ],
  [
    'we want grey shirts with our school name, LINCOLN, across the chest in maroon || and the year 2027 on the left sleeve, maroon',
    'tee grey; full-front LINCOLN; full-front maroon',
  ],
  [
    'Need 10 black tees, 5 with COACH on the back in white and 5 with STAFF on the back in white',
    'tee black; text COACH; text STAFF',
  ],
  [
    'hockey jerseys, navy. number on back 10" white, numbers on both sleeves 4" white, name 3" white || sleeves should be 3 inches',
    'jersey navy; back-number 254; left-sleeve 76; right-sleeve 76; name 76',
  ],
  [
    'softball: orange jerseys. Numbers black w white outline on the back. Names black. || the team is called Peach Pits || we need em april 3',
    'sport softball; jersey orange; back-number black; back-number outline white; name black; team Peach Pits; day 2027-04-03',
  ],
  ['jersey white number black back || no wait jersey black number white', 'jersey black; back-number white'],
  [
    'I need 6 away jerseys only, navy with white numbers on the back, and the names in white as well',
    'away navy; back-number white; name white',
  ],
  [
    'Team store order: 14 hoodies black, 14 tees white. Both say KNIGHTS across the front, hoodies in white, tees in black',
    'hoodie black; tee white; full-front KNIGHTS; hoodie full-front white; tee full-front black',
  ],
  [
    'dance studio: black leotards, STARLITE in rhinestones on the front || crystal ab if you have it else crystal, SS10 || names on back in pink vinyl',
    'bodysuit black; full-front STARLITE; full-front stones SS10; name pink',
  ],
  [
    'Rec league, the Sofa Kings. 11 jerseys, any green is fine, kelly I guess. number back white || actually dark green',
    'team Sofa Kings; jersey dark-green; back-number white',
  ],
  [
    'Please put DAD on the back of 3 navy tees and MOM on the back of 4 red tees, white letters on all',
    'tee navy; tee red; text DAD; text MOM',
  ],
  [
    "My kid's team is the Comets. Yellow jerseys. Navy numbers, 6 inch, front. Navy numbers, 8 inch, back. || wait front 4 inch",
    'team Comets; jersey yellow; front-number navy; front-number 102; back-number navy; back-number 203',
  ],
  [
    'Names on the back only, in white, over red jerseys. No numbers. We are 8: Ann M, Beth L, Cara S',
    'jersey red; name white; no back-number; # Ann M; # Beth L; # Cara S',
  ],
  [
    'royal blue jersey, the front says HAWKS in white and under it the number also white, 4 inches || back number 10 inches white',
    'jersey royal; full-front HAWKS; full-front white; front-number white; back-number 254',
  ],
  [
    '5k shirts!! neon? nah white. SPRING DASH across the front, royal || reflective if you can',
    'tee white; full-front SPRING DASH; full-front royal; full-front reflective',
  ],
  [
    "can I get a quote on 16 maroon jerseys, gold #s both sides and gold last names, they'd be for our rugby sevens",
    'sport rugby; jersey maroon; front-number gold; back-number gold; name gold',
  ],
  [
    'Tees: black. Letters: red, TEAM OTTO, on front. Sizes: 3 YM, 2 YL. || the print is too dark, go with yellow letters',
    'tee black; full-front TEAM OTTO; full-front yellow; # youth M x3; # youth L x2',
  ],
]

export const spanishInTurns: readonly (readonly [says: string, heard: string])[] = [
  [
    'es para el equipo de beis de mi hijo, los Cascabeles || 12 jerseys negros con número naranja atrás || y el nombre también, del mismo color, arriba del número',
    'sport baseball; jersey black; back-number orange; name orange',
  ],
  [
    'Buenas, hacen sudaderas? || Van a ser 9, guindas, que digan OSOS al frente en dorado || mejor dorado con brillo',
    'hoodie maroon; full-front OSOS; full-front gold; full-front glitter',
  ],
  [
    'Ocupo polos para un torneo de golf, azul rey, de hombre. 4 G 3 XG. En el pecho izquierdo ABIERTO 27, en blanco || pensándolo bien polos azul marino',
    'polo navy; left-chest ABIERTO 27; left-chest white; # L x4; # XL x3',
  ],
  [
    'jerseys de fut, Halconcitos, rojos, número blanco atrás || también queremos número adelante, chico, de 10 cm || nombres no',
    'sport soccer; jersey red; back-number white; front-number white; front-number 100; no name',
  ],
  [
    'los jerseys ya los tenemos, nada más ocupo el vinil. son verdes de poliéster || números blancos atrás de 20 cm || apellidos en amarillo',
    'jersey own; back-number white; back-number 200; name yellow',
  ],
  [
    'básquet. jerseys blancos números rojos adelante y atrás || póngales contorno negro a los números',
    'jersey white; front-number red; back-number red; back-number outline black',
  ],
  [
    'básquet. jerseys blancos números rojos adelante y atrás con contorno negro || quítele el contorno',
    'jersey white; back-number red; no back-number outline black',
  ],
  [
    'Jerseys de voli negros para las Lechuzas, números en plata metálica adelante y atrás || el metálico es mucho, que sea plateado liso',
    'jersey black; back-number silver; back-number standard; front-number standard',
  ],
  [
    'Sudaderas moradas, GARRA en la espalda en blanco || pónganlo mejor al frente || y agreguen el nombre de cada quien atrás en blanco',
    'hoodie purple; full-front GARRA; full-front white; name white',
  ],
  [
    'playeras grises con el nombre de la escuela, JUÁREZ, en el pecho en guinda || la playera mejor blanca',
    'tee white; full-front JUÁREZ; full-front maroon',
  ],
  [
    'hockey, jerseys azul marino. número atrás de 25 cm blanco, números en las dos mangas de 10 cm blancos, nombre de 8 cm blanco || las mangas mejor de 8 cm',
    'jersey navy; back-number 250; left-sleeve 80; right-sleeve 80; name 80',
  ],
  [
    'softbol: jerseys naranjas. Números negros con contorno blanco atrás. Nombres negros. || el equipo se llama Las Duraznos || los necesitamos el 3 de abril',
    'sport softball; jersey orange; back-number black; back-number outline white; name black; team Las Duraznos; day 2027-04-03',
  ],
  ['jersey blanco número negro atrás || no espera, jersey negro número blanco', 'jersey black; back-number white'],
  [
    'Necesito nada más 6 jerseys de visita, azul marino con números blancos atrás, y los nombres en blanco igual',
    'away navy; back-number white; name white',
  ],
  [
    '14 sudaderas negras y 14 playeras blancas. Las dos dicen CABALLEROS al frente, las sudaderas en blanco, las playeras en negro',
    'hoodie black; tee white; full-front CABALLEROS; hoodie full-front white; tee full-front black',
  ],
  [
    'academia de baile: leotardos negros, ESTELAR en pedrería al frente || cristal, SS10 || nombres atrás en vinil rosa',
    'bodysuit black; full-front ESTELAR; full-front stones SS10; name pink',
  ],
  [
    'Liga de los domingos, equipo Los Cansados. 11 jerseys, verde bandera. número blanco atrás || siempre sí verde oscuro',
    'team Los Cansados; jersey dark-green; back-number white',
  ],
  [
    'El equipo de mi hijo es Cometas. Jerseys amarillos. Número azul marino de 15 cm adelante y de 20 cm atrás || el de adelante mejor de 10',
    'team Cometas; jersey yellow; front-number navy; front-number 100; back-number navy; back-number 200',
  ],
  [
    'Solo el nombre atrás, en blanco, sobre jerseys rojos. Sin números. Somos: Ana M, Beti G, Carla CH',
    'jersey red; name white; no back-number; # Ana M; # Beti L; # Carla S',
  ],
  [
    'jersey azul rey, al frente dice HALCONES en blanco y abajo el número también blanco, de 10 cm || número de atrás 25 cm blanco',
    'jersey royal; full-front HALCONES; full-front white; front-number white; back-number 250',
  ],
  [
    'playeras para carrera: blancas. PRIMAVERA 5K al frente, azul rey || que sea reflejante si se puede',
    'tee white; full-front PRIMAVERA 5K; full-front royal; full-front reflective',
  ],
  [
    'me cotiza 16 jerseys guindas, números dorados por los dos lados y apellidos dorados, son para rugby siete',
    'sport rugby; jersey maroon; front-number gold; back-number gold; name gold',
  ],
  [
    'Playeras: negras. Letras: rojas, EQUIPO OTTO, al frente. Tallas: 3 M de niño, 2 G de niño. || casi no se ve, mejor letras amarillas',
    'tee black; full-front EQUIPO OTTO; full-front yellow; # youth M x3; # youth L x2',
  ],
  [
    'ocupo 3 playeras azul marino con PAPÁ atrás y 4 rojas con MAMÁ atrás, letras blancas en todas',
    'tee navy; tee red; text PAPÁ; text MAMÁ',
  ],
]
