/** Usual first words of an order in Spanish, one message each, with what the shop has to have heard (see `usual-orders.test.ts` for the notation). */
export const spanish: readonly (readonly [says: string, heard: string])[] = [
  [
    'Hola, entreno a las Garzas de Tecate, softbol. Ocupamos 11 jerseys verde oscuro, números dorados atrás y el nombre arriba también dorado.',
    'team Garzas de Tecate; sport softball; jersey dark-green; back-number gold; name gold',
  ],
  [
    'quiero 8 sudaderas negras con TURNO NOCHE en la espalda en plateado reflejante. 2 M, 4 G, 2 XG',
    'hoodie black; text TURNO NOCHE; yoke silver; yoke reflective; # M x2; # L x4; # XL x2',
  ],
  [
    'Me hacen playeras grises con un COLIBRÍ chiquito en el pecho izquierdo? Las letras en azul marino.',
    'tee grey; left-chest COLIBRÍ; left-chest navy',
  ],
  [
    'Básquet. Jerseys naranjas, los números que sean negros con contorno blanco, adelante y atrás.',
    'sport basketball; jersey orange; front-number black; back-number black; back-number outline white',
  ],
  [
    'Queremos los nombres en rosa con diamantina y los números en blanco liso, sobre jerseys negros de voleibol.',
    'sport volleyball; jersey black; name pink; name glitter; back-number white',
  ],
  [
    'Jerseys morados por favor. Atrás: apellido arriba y el número abajo, los dos en blanco. Adelante nomás el número de 10 cm.',
    'jersey purple; name white; back-number white; front-number white; front-number 100',
  ],
  [
    'Buenas! Las Iguanas del Valle (voleibol) necesitan playeras turquesa para el 8 de enero. Número blanco de 20 cm atrás y de 10 adelante.',
    'team Iguanas del Valle; sport volleyball; tee teal; day 2027-01-08; back-number white; back-number 200; front-number 100',
  ],
  [
    'El equipo de mi hija necesita playeras guindas con "LINCES" en el pecho, vinil plateado metálico',
    'tee maroon; full-front LINCES; full-front silver; full-front foil',
  ],
  [
    'Seis polos azul marino para el personal. STAFF atrás en blanco y en el pecho izquierdo LA PARRILLA, también en blanco',
    'polo navy; text STAFF; left-chest LA PARRILLA; left-chest white; yoke white',
  ],
  [
    'ya tenemos las playeras, blancas, 100% algodón. solo pónganles número del 1 al 9 atrás en rojo, de 15 cm',
    'tee white; tee own; back-number red; back-number 150; # 1; # 9; rows 9',
  ],
  [
    'Jersey: azul rey. Número: blanco, solo atrás. Nombre: blanco. Los quiero para el sábado a las 2 de la tarde',
    'jersey royal; back-number white; name white; no front-number; day 2026-11-21; hour 14:00',
  ],
  [
    'Porra! Bodysuits negros, HALCONAS en el pecho en pedrería cristal SS16',
    'sport cheer; bodysuit black; full-front HALCONAS; full-front stones SS16; full-front stones crystal',
  ],
  [
    'Playeras de manga larga gris oscuro, que diga SENDERO en la manga derecha en naranja',
    'tee grey; right-sleeve SENDERO; right-sleeve orange',
  ],
  [
    'Qué tal, soy Rosa Elena Quiroz, tesorera de Pinos FC. Jerseys verde bandera, números dorados atrás. Yo pago y firma el profe Robles',
    'orders Rosa Elena Quiroz; team Pinos FC; jersey kelly; back-number gold',
  ],
  [
    'local blanco con números rojos, visita rojo con números blancos. son 12 jugadores y cada uno lleva los dos',
    'home white; away red; home back-number red; away back-number white',
  ],
  [
    'Sudaderas azul marino, todo en dorado: TEJONES al frente y el nombre de cada niño en la espalda',
    'hoodie navy; full-front TEJONES; full-front gold; name gold',
  ],
  [
    'Los jerseys son azul cielo, número blanco atrás de 25 cm y números blancos en las mangas. Sin nombres.',
    'jersey carolina; back-number white; back-number 250; left-sleeve white; right-sleeve white; no name',
  ],
  [
    '14 camisolas de béisbol color crema. Apellido café arriba del número café en la espalda. Al frente POLVOROSOS en café',
    'jersey cream; sport baseball; name brown; back-number brown; full-front POLVOROSOS; full-front brown',
  ],
  [
    'cotización: 20 playeras gris jaspe, impresión azul marino al frente "CLUB 27". 3 CH 8 M 6 G 3 XG',
    'tee heather-grey; full-front CLUB 27; full-front navy; # S x3; # M x8; # L x6; # XL x3',
  ],
  [
    'El jersey es negro. El número va en plata con brillo. El nombre igual plateado con brillo. Todo atrás.',
    'jersey black; back-number silver; back-number glitter; name silver; name glitter',
  ],
  [
    'tochito, somos 9, equipo Reyes del Sillón. jerseys amarillos, número negro por los dos lados',
    'sport football; team Reyes del Sillón; jersey yellow; front-number black; back-number black',
  ],
  [
    'Jerseys de futbol para los Terriers de Tamara, rojos, con el número en vinil inflado blanco en la espalda, nada adelante',
    'sport soccer; jersey red; back-number white; back-number puff; no front-number',
  ],
  [
    'La liga quiere jerseys blancos, el nombre en azul marino arriba y abajo el número azul marino de 20 cm. Va la lista\n3 Álamo M\n9 Abedul G\n12 Cedro XG',
    'jersey white; name navy; back-number navy; back-number 200; # 3 Álamo M; # 9 Abedul L; # 12 Cedro XL',
  ],
  [
    '¿Le pueden poner piedritas cristal alrededor a los números? SS10. Los jerseys son negros y el vinil del número rosa mexicano',
    'jersey black; back-number pink; back-number stones SS10; back-number stones crystal',
  ],
  [
    '5 chicas, 7 medianas de niño y 3 chicas de adulto. Playeras moradas, CAMPAMENTO al frente, en blanco',
    'tee purple; full-front CAMPAMENTO; full-front white; # youth M x7; # men S x3',
  ],
  [
    'Chamarras azul marino para la mesa directiva, son 6, de hombre talla G. PRESIDENCIA en el pecho izquierdo en dorado',
    'jacket navy; left-chest PRESIDENCIA; left-chest gold; # men L x6',
  ],
  [
    'jerseys blancos c/ números negros adelante y atrás, nombre atrás negro tmb. los ocupo el 19 de dic a mediodía, paso por ellos',
    'jersey white; front-number black; back-number black; name black; day 2026-12-19; hour 12:00',
  ],
  [
    'Somos el equipo de natación Nutrias del Este y queremos sudaderas grises. NUTRIAS al frente en marino. El nombre de cada quien atrás, marino.',
    'team Nutrias del Este; hoodie grey; full-front NUTRIAS; full-front navy; name navy',
  ],
  [
    'Playeras de rugby: guindas. Números: dorados, atrás. CIERVOS en el pecho derecho en dorado.',
    'top maroon; back-number gold; right-chest CIERVOS; right-chest gold; sport rugby',
  ],
  [
    'Quiero 4 jerseys con número dorado: el 2, el 5, el 8 y el 13. Jerseys negros, todos XG de hombre.',
    'jersey black; back-number gold; # 2 men XL; # 5 men XL; # 8 men XL; # 13 men XL',
  ],
  [
    'Béisbol infantil, Lucios de Piedra. Playeras azul marino, LUCIOS al frente y número atrás, todo en naranja.',
    'sport baseball; team Lucios de Piedra; tee navy; full-front LUCIOS; full-front orange; back-number orange',
  ],
  [
    'Playeras blancas para un cumpleaños, EQUIPO RUBÍ al frente en rojo aterciopelado. 4 de niño CH y 6 de dama M',
    'tee white; full-front EQUIPO RUBÍ; full-front red; full-front flock; # youth S x4; # women M x6',
  ],
  [
    'hola! somos 7, voleibol. Jersey color rosa, número en negro enfrente y atrás, apellidos en negro. 4 CH de dama y 3 M de dama',
    'sport volleyball; jersey pink; front-number black; back-number black; name black; # women S x4; # women M x3',
  ],
  [
    'Ocupamos jerseys color vino con números dorados por los dos lados y un contorno negro delgado en los números',
    'jersey maroon; front-number gold; back-number gold; front-number outline black',
  ],
  [
    '10 sudaderas verde oscuro para los papás de las Águilas. ÁGUILAS al frente en vinil dorado y PAPÁS en la manga derecha en vinil blanco',
    'hoodie dark-green; full-front ÁGUILAS; full-front gold; right-sleeve PAPÁS; right-sleeve white',
  ],
  [
    'puros números, sin nombre, plateados en jersey negro, 15 cm adelante y 20 atrás. 22 G, 7 M, 15 XG, 30 M',
    'jersey black; front-number silver; back-number silver; no name; # 22 L; # 7 M; # 15 XL; # 30 M',
  ],
  [
    'Los muchachos quieren jerseys naranjas con su apodo atrás en negro y el número adelante también en negro',
    'jersey orange; name black; front-number black',
  ],
  [
    'Softbol, Las Catrinas, 11 playeras sin mangas azul rey, nombre y número atrás en blanco con brillo, de dama',
    'sport softball; team Las Catrinas; tee royal; name white; name glitter; back-number white; back-number glitter',
  ],
  [
    'Me da 3 polos negras de hombre G con ENTRENADOR en el pecho izquierdo en rojo, y 12 jerseys rojos con número negro atrás?',
    'polo black; left-chest ENTRENADOR; left-chest red; jersey red; back-number black; # men L x3',
  ],
  [
    '15 playeras amarillas. al frente dice DÍAS DE SOL, atrás dice STAFF, los dos en negro',
    'tee yellow; full-front DÍAS DE SOL; full-front black; text STAFF; yoke black',
  ],
  [
    'Hockey: jerseys turquesa, número blanco con sombra negra atrás, números blancos en las mangas, nombres blancos',
    'sport ice-hockey; jersey teal; back-number white; back-number shadow black; left-sleeve white; right-sleeve white; name white',
  ],
  [
    'Equipo infantil Chorlitos: jersey azul claro, número azul marino. ¿Nombre? sí, en azul marino arriba del número.',
    'team Chorlitos; jersey carolina; back-number navy; name navy',
  ],
  [
    'nuestros colores son morado y dorado. entonces jerseys morados, número dorado atrás con el nombre también dorado.',
    'jersey purple; back-number gold; name gold',
  ],
  [
    'Las playeras gris oscuro y todo lo impreso en blanco. Al frente ROBLE Y HIERRO. Atrás el número de cada quien.',
    'tee grey; full-front ROBLE Y HIERRO; full-front white; back-number white',
  ],
  [
    'Para la carrera: 30 playeras naranjas, META al frente en negro. 10 CH, 10 M y 10 G',
    'tee orange; full-front META; full-front black; # S x10; # M x10; # L x10',
  ],
  [
    'jerseys de malla azul marino, números blancos 15 cm adelante y 25 cm atrás, futbol americano, los Carneros',
    'jersey navy; sport football; front-number white; front-number 150; back-number white; back-number 250; team Carneros',
  ],
  [
    'Equipo de handball. Yo diría playeras rojas con el número blanco en el pecho y en la espalda, y el apellido en blanco',
    'sport handball; tee red; front-number white; back-number white; name white',
  ],
  [
    'Tenemos 12 sudaderas azul marino, mitad algodón mitad poliéster. Necesitamos TITANES al frente en plata metálica, de 8 cm',
    'hoodie navy; full-front TITANES; full-front silver; full-front foil; full-front 80',
  ],
  [
    '8 jerseys verdes bandera, el número de atrás dorado, el de adelante dorado y el nombre dorado. son para el viernes 11 de diciembre',
    'jersey kelly; back-number gold; front-number gold; name gold; day 2026-12-11',
  ],
  [
    'aquí la coach. 9 jerseys negros de dama: números rosas con brillo y piedras cristal alrededor, nombres rosa liso',
    'jersey black; back-number pink; back-number glitter; back-number stones crystal; name pink',
  ],
  [
    'Números blancos de 20 cm atrás. Nombres blancos. Jersey rojo. El equipo es Diablos de Dolores, futbol',
    'back-number white; back-number 200; name white; jersey red; team Diablos de Dolores; sport soccer',
  ],
  [
    'Camisolas doradas con número guinda adelante y atrás, nombre guinda. Nuestra mascota es la mula pero sin logo.',
    'jersey gold; front-number maroon; back-number maroon; name maroon',
  ],
  [
    'Nosotros llevamos los jerseys (blancos, poliéster). Ustedes ponen número azul rey atrás y nombre azul rey. 10 jugadores',
    'jersey white; jersey own; back-number royal; name royal',
  ],
  [
    'quisiera dos juegos: local gris con número azul marino y visitante azul marino con número gris',
    'home grey; away navy; home back-number navy; away back-number grey',
  ],
  [
    'Número blanco atrás y nombre blanco. Los jerseys en azul rey. 4 Sofi M, 8 Tadeo G, 19 Wendy CH, todos de niño',
    'jersey royal; back-number white; name white; # 4 Sofi youth M; # 8 Tadeo youth L; # 19 Wendy youth S',
  ],
  ['25 playeras, 15 negras y 10 blancas, COHETES al frente en rojo', 'tee black; tee white; full-front COHETES; full-front red'],
  [
    'Uniformes para un torneo el 29 de noviembre. Playeras azul marino, el número en amarillo nada más al frente',
    'top navy; front-number yellow; no back-number; day 2026-11-29',
  ],
  [
    'Liga femenil de básquet, equipo Aro Firme. Jerseys blancos con vivos negros. Números rojos adelante y atrás.',
    'sport basketball; team Aro Firme; jersey white; front-number red; back-number red',
  ],
  [
    'Mire, ocupo unas camisetas rojas con el nombre del niño atrás en amarillo y su número abajo, amarillo igual. Es fut.',
    'sport soccer; jersey red; name yellow; back-number yellow',
  ],
  [
    'Buen día. Jerseys: 10, negros. Adelante GALLOS en rojo. Atrás número rojo y nombre blanco. Paga la liga.',
    'jersey black; full-front GALLOS; full-front red; back-number red; name white',
  ],
  [
    'para el equipo quiero todo negro, jersey negro y los números en dorado brillante con orilla blanca atrás',
    'jersey black; back-number gold; back-number outline white',
  ],
]
