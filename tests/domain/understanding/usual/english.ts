/** Usual first words of an order in English, one message each, with what the shop has to have heard (see `usual-orders.test.ts` for the notation). */
export const english: readonly (readonly [says: string, heard: string])[] = [
  [
    'Hi, I coach the Mossy Creek Mallards, 10U softball. Need 11 jerseys, forest green, gold numbers on the back and gold names above them.',
    'team Mossy Creek Mallards; sport softball; jersey dark-green; back-number gold; name gold',
  ],
  [
    'looking for 8 black hoodies w/ NIGHT SHIFT on the back in reflective silver. 2 M, 4 L, 2 XL',
    'hoodie black; text NIGHT SHIFT; yoke silver; yoke reflective; # M x2; # L x4; # XL x2',
  ],
  [
    'Can you do grey tees with a small LARK on the left chest? Letters in navy. 5 youth M and 5 youth L',
    'tee grey; left-chest LARK; left-chest navy; # youth M x5; # youth L x5',
  ],
  [
    'Basketball. Orange jerseys, and the numbers should be black with a white outline, front and back.',
    'sport basketball; jersey orange; front-number black; back-number black; back-number outline white; front-number outline white',
  ],
  [
    'We want the names in pink glitter and the numbers in plain white on our black softball jerseys.',
    'sport softball; jersey black; name pink; name glitter; back-number white',
  ],
  [
    'Purple jerseys please. On the back: last name on top, number under it, both in white. On the front just the number, 4 inches.',
    'jersey purple; name white; back-number white; front-number white; front-number 102',
  ],
  [
    'Hello! The Quarry Hill Quokkas (volleyball) need teal jerseys by January 8. White numbers 8 inch back, 4 inch front.',
    'team Quarry Hill Quokkas; sport volleyball; jersey teal; day 2027-01-08; back-number white; back-number 203; front-number 102',
  ],
  [
    'My daughter\'s team needs maroon tees, "WILDCATS" across the chest, vinyl in silver foil.',
    'tee maroon; full-front WILDCATS; full-front silver; full-front foil',
  ],
  [
    'Six polos for the staff, navy. STAFF on the back in white, our name HARBOR GRILL on the left chest, also white',
    'polo navy; use staff; text STAFF; text HARBOR GRILL; left-chest white; yoke white',
  ],
  [
    'we have our own white t shirts (100% cotton). just need numbers 1 to 9 put on the back in red, 6 inches tall',
    'tee white; tee own; back-number red; back-number 152; # 1; # 9; rows 9',
  ],
  [
    "Jersey: royal. Number: white, back only. Name: white. Need them for Saturday's game at 2pm",
    'jersey royal; back-number white; name white; no front-number; day 2026-11-21',
  ],
  ['I need a dozen red shorts with the number on the left leg in white, 2 inches', 'shorts red; left-leg white; left-leg 51'],
  [
    'Cheer squad! Black bodysuits, HAWKS on the chest in rhinestones, crystal, SS16, two rows',
    'sport cheer; bodysuit black; full-front HAWKS; full-front stones SS16; full-front stones crystal',
  ],
  [
    'Long sleeve tees in charcoal, TRAIL CREW down the right sleeve in orange',
    'tee grey; right-sleeve TRAIL CREW; right-sleeve orange',
  ],
  [
    'Hey its Dana Whitlow, treasurer for Pine Street FC. Green jerseys kelly, gold numbers on back. I pay, coach Rob signs off',
    'orders Dana Whitlow; team Pine Street FC; jersey kelly; back-number gold',
  ],
  [
    'home jerseys white with red numbers, away jerseys red with white numbers. 12 players, each gets both',
    'home white; away red; home back-number red; away back-number white',
  ],
  [
    'Navy hoodies, everything on it in gold: BADGERS on the front and the kids names on the back',
    'hoodie navy; full-front BADGERS; full-front gold; name gold',
  ],
  [
    'Add white numbers to the sleeves too please. Jerseys are carolina blue, back numbers white 10 inches, no names',
    'jersey carolina; left-sleeve white; right-sleeve white; back-number white; back-number 254; no name',
  ],
  [
    '14 jerseys, cream colored, baseball. Names arched in brown over a brown number on the back. front: DUSTERS in brown script',
    'jersey cream; sport baseball; name brown; back-number brown; full-front DUSTERS; full-front brown',
  ],
  [
    'need quote: 20 tees, heather grey, 1 color print navy across front "RUN CLUB 27". sizes S-3 M-8 L-6 XL-3',
    'tee heather-grey; full-front RUN CLUB 27; full-front navy; # S x3; # M x8; # L x6; # XL x3',
  ],
  [
    'The jersey is black. The number is silver glitter. The name is silver glitter too. Everything on the back.',
    'jersey black; back-number silver; back-number glitter; name silver; name glitter',
  ],
  [
    'flag football, 9 guys, team Couch Kings. lime? no make it yellow jerseys, black numbers both sides',
    'sport football; team Couch Kings; jersey yellow; front-number black; back-number black',
  ],
  [
    'Soccer jerseys for the Tamarack Terriers, red, with puff vinyl numbers in white on the back, nothing on the front',
    'sport soccer; team Tamarack Terriers; jersey red; back-number white; back-number puff; no front-number',
  ],
  [
    'Our league wants white jerseys, names in navy on top and navy numbers beneath, 8" numbers. Roster below\n3 Alder M\n9 Birch L\n12 Cedar XL',
    'jersey white; name navy; back-number navy; back-number 203; # 3 Alder M; # 9 Birch L; # 12 Cedar XL',
  ],
  [
    'Could you put crystal stones around the numbers? SS10. Jerseys are black, the vinyl of the numbers hot pink',
    'jersey black; back-number pink; back-number stones SS10; back-number stones crystal',
  ],
  [
    '5 youth small, 7 youth medium, 3 adult small. Tees in purple, CAMP FERN on the front, white',
    'tee purple; full-front CAMP FERN; full-front white; # youth S x5; # youth M x7; # men S x3',
  ],
  [
    "Jackets in navy for the board, 6 of them, men's L. PRESIDENT'S CUP on the left chest in gold",
    "jacket navy; left-chest PRESIDENT'S CUP; left-chest gold; # men L x6",
  ],
  [
    'lax jerseys, white w/ black #s front + back, name on back also black. need em dec 19 by noon, picking up',
    'sport lacrosse; jersey white; front-number black; back-number black; name black; day 2026-12-19; hour 12:00',
  ],
  [
    "We're the Eastgate Otters swim team and want grey hoodies. Navy OTTERS on front. Swimmers name on the back, navy.",
    'team Eastgate Otters; hoodie grey; full-front OTTERS; full-front navy; name navy',
  ],
  [
    'Rugby shirts: maroon. Numbers: gold, back. Name of the club, STAGS RFC, on the right chest in gold.',
    'top maroon; back-number gold; right-chest STAGS RFC; right-chest gold; sport rugby',
  ],
  [
    "I want 4 gold numbers jerseys: number 2, 5, 8 and 13. The jerseys black. All men's XL.",
    'jersey black; back-number gold; # 2 men XL; # 5 men XL; # 8 men XL; # 13 men XL',
  ],
  [
    'Youth baseball, Pebble Creek Pikes. Shirts navy blue, lettering PIKES in front and number on back, everything orange.',
    'sport baseball; team Pebble Creek Pikes; tee navy; full-front PIKES; full-front orange; back-number orange',
  ],
  [
    "White tees for a birthday, TEAM RUBY on the front in red flock. 2 toddler 3T, 4 youth S, 6 women's M",
    'tee white; full-front TEAM RUBY; full-front red; full-front flock; # toddler 3T x2; # youth S x4; # women M x6',
  ],
  [
    'hi! 7 girls, volleyball. Jersey color pink, numbers in black on front & back, last names in black. Sizes: 4 womens S, 3 womens M',
    'sport volleyball; jersey pink; front-number black; back-number black; name black; # women S x4; # women M x3',
  ],
  [
    'We need game jerseys in cardinal with old gold numbers on both sides and a thin black outline around the numbers',
    'jersey cardinal; front-number gold; back-number gold; front-number outline black',
  ],
  [
    'Need to order 10 hoodies, forest green, for the Elm Street Eagles boosters. EAGLES on front gold vinyl, BOOSTER on the right sleeve in white vinyl',
    'hoodie dark-green; full-front EAGLES; full-front gold; right-sleeve BOOSTER; right-sleeve white',
  ],
  [
    'numbers only, no names, silver on black jerseys, 6 in front 8 in back. 22 L, 7 M, 15 XL, 30 M',
    'jersey black; front-number silver; back-number silver; no name; # 22 L; # 7 M; # 15 XL; # 30 M',
  ],
  [
    'Jerseys like last time but in white: black numbers back, names black over. Actually make the names red',
    'jersey white; back-number black; name red',
  ],
  [
    'The guys want orange jerseys with their nicknames on the back in black and the number on the front in black too',
    'jersey orange; name black; front-number black',
  ],
  [
    'Softball, Ladies of Lager, 11 tanks, royal blue, name + number on the back in white glitter, womens sizes',
    'sport softball; tee royal; name white; name glitter; back-number white; back-number glitter',
  ],
  [
    'Can I get 3 black polos mens L with COACH on the left chest in red, and 12 red jerseys with black numbers on the back?',
    'polo black; left-chest COACH; left-chest red; jersey red; back-number black; # men L x3',
  ],
  [
    '15 tees in yellow. front says SUNNY DAYS, back says STAFF, both black',
    'tee yellow; full-front SUNNY DAYS; full-front black; text STAFF; yoke black',
  ],
  [
    'Hockey: teal jerseys, number white w/ black shadow on back, white numbers on sleeves, names white',
    'sport ice-hockey; jersey teal; back-number white; back-number shadow black; left-sleeve white; right-sleeve white; name white',
  ],
  [
    'Kids team Marsh Wrens: jersey light blue, number navy. Names? yes in navy above number. Size youth medium for all 8.',
    'team Marsh Wrens; jersey carolina; back-number navy; name navy',
  ],
  [
    'our colors are purple and gold. So purple jerseys, gold numbers on the back with names, also gold.',
    'jersey purple; back-number gold; name gold',
  ],
  [
    'Please make the shirts charcoal and all print white. Front: OAK & IRON. Back: a number for each guy.',
    'tee grey; full-front OAK & IRON; full-front white; back-number white',
  ],
  [
    'For our 5k: 30 tees safety orange, FINISHER on the front in black. 10 S 10 M 10 L',
    'tee orange; full-front FINISHER; full-front black; # S x10; # M x10; # L x10',
  ],
  [
    'jersey tops, navy mesh, white block numbers front 6" back 10", for football, the Ridge Rams. JV.',
    'jersey navy; sport football; front-number white; front-number 152; back-number white; back-number 254',
  ],
  [
    "Handball team. I'd say red shirts with white numbers on the chest and on the back, plus the surname in white",
    'sport handball; tee red; front-number white; back-number white; name white',
  ],
  [
    'We have 12 navy hoodies already, poly cotton 50/50. Need TITANS on the front in silver metallic vinyl, 3 inches high',
    'hoodie navy; hoodie own; full-front TITANS; full-front silver; full-front foil; full-front 76',
  ],
  [
    '8 jerseys green (kelly), the back number gold, the front number gold, the name gold as well. due friday dec 11',
    'jersey kelly; back-number gold; front-number gold; name gold; day 2026-12-11',
  ],
  [
    "Black shirts, dance team, with SPIN on the front in holographic, oh wait you don't have that? then silver glitter",
    'tee black; full-front SPIN; full-front silver; full-front glitter',
  ],
  [
    'coach here. 9 womens jerseys in black: numbers pink glitter w crystal stones around them, names plain pink',
    'jersey black; back-number pink; back-number glitter; back-number stones crystal; name pink',
  ],
  [
    'Numbers white 8 inches back. Names white. Jersey red. Team is Dogwood Devils, soccer',
    'back-number white; back-number 203; name white; jersey red; team Dogwood Devils; sport soccer',
  ],
  [
    'Uniform tops in gold with maroon numbers, front and back, maroon names. Our mascot is the Mule but no logo.',
    'jersey gold; front-number maroon; back-number maroon; name maroon',
  ],
  [
    'We bring the jerseys (white, polyester). You add royal numbers on the back and royal names. 10 players',
    'jersey white; jersey own; back-number royal; name royal',
  ],
  [
    'could I order two sets, home is grey with navy numbers and away is navy with grey numbers, names on both in the color of the number',
    'home grey; away navy; home back-number navy; away back-number grey',
  ],
  [
    'White number on the back, white name. Jerseys in royal. 4 Sloane YM, 8 Tate YL, 19 Wren YS',
    'jersey royal; back-number white; name white; # 4 Sloane youth M; # 8 Tate youth L; # 19 Wren youth S',
  ],
  ['25 tees, 15 black and 10 white, ROCKETS on the front in red', 'tee black; tee white; full-front ROCKETS; full-front red'],
  [
    'Need uniforms for a 3v3 tournament on Nov 29. Tees navy, numbers in yellow on the front only',
    'tee navy; front-number yellow; no back-number; day 2026-11-29',
  ],
  [
    'Womens basketball league, team Rim Shots. Jerseys white, trim black. Numbers red, front and back.',
    'sport basketball; team Rim Shots; jersey white; front-number red; back-number red',
  ],
  [
    'Thinking navy quarter zip jackets with GREENWOOD ROWING on the back, white, and a small initials on the left chest',
    'jacket navy; text GREENWOOD ROWING; yoke white',
  ],
]
