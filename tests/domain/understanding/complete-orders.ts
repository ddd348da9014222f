/** An order in each language that lacks nothing, so that what is said next answers its proof. */
export const completeOrders = {
  en: [
    '3 navy mesh soccer jerseys for the Marsh Harriers, white numbers on the back, need them Dec 12 at 5pm, Dana Whitlow ordering\n1 Ana YM\n2 Bea YM\n12 Cleo YL',
    'all 13 or older',
  ],
  es: [
    '3 jerseys de futbol de malla azul marino para los Gavilanes de Anáhuac, numeros blancos atras, los necesito el 12 de diciembre a las 5 de la tarde, soy Dana Ortiz\n1 Ana YM\n2 Bea YM\n12 Cleo YL',
    'nadie es menor de 13',
  ],
} as const
