/** Everyday Spanish words, and English ones of the bench, that are near a word of the lexicon in spelling and mean none. */
export const EVERYDAY_WORDS: readonly string[] = [
  'alguien algo agua aguas antes aunque ayer bien buenas bueno busco cada casa casi como cosa cosas cual cuando cuanto',
  'debe debo decir desde despues dice donde dos ella ellos encima entre eran eres esta estaba estas este esto estoy',
  'favor forma fue gente gracias gran grande hace hacer haciendo hago hasta hay hecho hola horas igual jabones junto',
  'lado largo leche linda lindo listo luego lugar mal mama manera manteca mas mejor menos mientras minutos misma mismo',
  'mucha mucho mundo muy nada nadie necesito nueva nuevo nunca otra otro para parte pasa paso pasta pero poco poner',
  'porque posible primera primero puede puedo pues punto queda quedo quien quiere quiero quita recipiente saber sale',
  'seria siempre sirve sobre solo soy tanda tarde tengo tiempo tiene toda todo tres una uno usar vale vamos van veces',
  'venta verde vez vivo voy oliva aceite coco horno frio calor color blanco negro azul receta aroma esencia canela miel',
  'peso pesa mesa masas casco caso lisa misa risa rosa rosas roca rica rico pasto gusto gasto cuesta cuento cuesto',
  'dust duster duct dry rye dye dyes dyed tie pie die bye live love like line lime lice face lace pace race mice',
  'batch better butter bitter bottle bottom little letter latter later flame flame frame shape share shade shea olive',
  'trace track tray traces clear clean clock close closed floor flour flower order border powdered scent scents spice',
  'spray sprinkle swirl swirls swirled swirling stir stirs stirred string spring sting stripe stripes strip strips',
  'mother father brother sister friend neighbour neighbor teacher sell seller price label labels printer market',
  'think thick thing things think third though through thought moisture mixture texture picture nature',
  'colour colours palm castor coconut sunflower tallow lard canola jojoba almond avocado cocoa butter beeswax',
  'wet went west best rest test text next neat seat heat beat meat peat peak leak leaf lead read reads real',
  'place places glass class gloss grass press cross across stress dress possible cost coast roast toast',
  'sold cold hold told fold gold mold mould bold bowl bowls boil boils oil oils soil coil foil',
  'safe same some come home dome rome bone done gone stone tone zone cone',
  'scale scales scaled small smell smells smelled smelling spell shell shells still steel sheet short shirt shift',
  'estado estada estados raspa raspar raspo formaron formo formado tomate tomar toma temperatura mejor granulado corner corners splotch splotches seed seeds',
  'batido batida saltar salado salada salir salido salgo sigue sigo soga sopa solas sola sodio',
  'brillo blando blanda rato plato trato dato pato gasa tasa taza tazas grasa grasas',
]
  .join(' ')
  .split(' ');
