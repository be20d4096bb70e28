import { spaced } from '../../../engine/over-lines.ts';
import type { Portion } from '../../../engine/quantities/amount.ts';
import { quoted } from '../../../engine/text/lines/option-line.ts';
import type * as en from '../../en/conversation/ask.ts';
import { numbersIn } from '../../numbers.ts';
import { compared } from './compared.ts';
import { lawElsewhere } from './law-elsewhere.ts';

const { percent, plain } = numbersIn('es');
const list = (names: readonly string[]) => names.join(', ');

const THREE_TO_ONE = 'Tres cucharas de líquido por una de polvo; algo más si aún hace grumos.';

const portion = (told: Portion): string =>
  `${told.measure === 'mass' ? `${plain(told.grams)} g` : `${plain(told.millilitres)} ml`}${told.of === 'oils' ? ' de aceites' : ''}`;

export const ask: typeof en.ask = {
  usualBatch: '500 g de aceites',
  understood: ({ line }) => `Entendido como: ${line}`,
  comparing: ({ names }) => `comparar ${names.length > 1 ? names.join(' y ') : 'tus botes'}`,
  target: ({ name, hex }) => `El color: ${name}, más o menos ${hex}.`,
  corrected: ({ from, to }) => `(«${from}» leído como «${to}»)`,
  readAs: ({ name }) => `Leído como ${name}.`,
  sameForAll: ({ text, names }) =>
    `«${text}» puede ser varios: ${list(names)}. La dosis es la misma para todos; elige el tuyo para saber qué le hace la sosa.`,
  ...lawElsewhere,
  change: 'Preguntarlo de otro modo',
  changeLabel: 'El comando, o tu pregunta con otras palabras',
  severalJars: ({ count }) => `${count} botes: ¿los añado? Uno por pulsación.`,
  addJar: ({ name }) => `Añadir «${name}»`,
  oilsWithoutShares: ({ oils }) =>
    `¿Cuánto de cada aceite: ${list(oils)}? Da los porcentajes o pesos con que planear, como oils:«oliva 50%, coco 30%, palma 20%». Nunca adivino una parte.`,
  doIt: 'Hazlo',
  confirm: ({ line }) => `¿Hago esto? ${line}`,
  ratherThat: ({ job }) => `Quería decir: ${job}`,
  toldAmount: v => {
    const usual = v.isMedium ? `Lo usual al empezar: ${v.usual}, medio` : `Color pleno: ${v.usual}`;
    const most = v.isMedium ? `el color pleno, lo máximo, es ${v.most}` : `lo máximo es ${v.most}`;
    return v.times > 1.05
      ? `Demasiado: ${most}; ${v.told} es ${plain(Number(v.times.toPrecision(2)))} veces eso. ${usual}`
      : `No es demasiado: ${most}; ${v.told} es el ${percent(Math.min(1, v.times))}. ${usual}`;
  },
  portion,
  reckoned: v => {
    switch (v.by) {
      case 'count':
        return `${v.count} ${v.noun} de ${v.each} = ${portion(v.comes)}.`;
      case 'share':
        return `${v.share} de ${v.whole} = ${portion(v.comes)}.`;
      case 'lost':
        return `${v.whole} menos ${v.lost} = ${portion(v.comes)}.`;
    }
  },
  whichPortion: ({ portions }) =>
    `¿Para ${portions.map(portion).join(', o para ')}? Tus palabras valen para cada una, así que pregunto antes de decir una cantidad.`,
  oneOfTwo: ({ first, second }) =>
    `Esto es para ${first} a solas. Si ${second} va en la misma masa: media dosis de cada uno. En una parte suya: pregunta por esa parte.`,
  byTheCup: 'No dijiste cuánta masa, así que esto es para 1 taza.',
  hotProcess: spaced`
    Hablas de proceso en caliente: las dosis son las mismas, pero la masa está espesa y caliente; humedece
    bien el color y cuenta con que los sensibles al calor cambien más.
  `,
  lawOfSelling:
    'Lo que debe llevar una etiqueta depende de dónde y como qué vendas: consúltalo con tu autoridad. Puedo decirte qué dice la norma de un color; dime cuál.',
  jobs: {
    dose: 'cuánto poner',
    'survives-lye': 'si aguanta la sosa',
    law: 'si está permitido',
    diagnose: 'qué salió mal',
    mix: 'cómo lograr un color',
    preview: 'cómo se verá',
    lye: 'sosa y agua',
    plan: 'planear el lote',
    compare: 'qué distingue dos colores',
    wet: 'en qué humedecerlo',
    'shelf-add': 'añadir a la estantería',
    'shelf-use': 'sacar de la estantería',
    'shelf-show': 'cuánto queda',
    challenge: 'retos de color',
    doubt: 'cómo salió una respuesta',
    help: 'qué sé hacer',
  },
  lacks: {
    dose: '¿Qué colorante y para cuánta masa? Por ejemplo «azul ultramar para 2 tazas».',
    'survives-lye': '¿Qué color o lista de ingredientes? Por ejemplo «aguanta la sosa: mica, CI 45410».',
    law: '¿Qué color? Puedo decir qué dicen las normas de EE. UU. y la UE, por ejemplo «¿se permite el dióxido de titanio en Europa?».',
    diagnose: '¿Qué ves? Describe la pastilla, o manda una foto con /diagnose.',
    mix: '¿Qué color quieres? Nómbralo, por ejemplo «cómo hago rosa viejo», o da su código hex.',
    preview: '¿Qué lleva y en cuánta masa? Por ejemplo «cómo se ve 1/4 cdta de carbón en 2 tazas».',
    lye: '¿Qué aceites y cuánto de cada uno? Por ejemplo «cuánta sosa para 500 g de oliva y 200 g de coco». Nunca supongo un aceite.',
    plan: spaced`
      Para un plan necesito tus aceites con porcentajes o pesos, por ejemplo «oliva 50%, coco 30%, palma
      20%». Usa /plan con oils, size y portions; /plan solo abre un formulario.
    `,
    compare: '¿Qué dos colores? Por ejemplo «cuál es más fuerte, el óxido rojo o la mica roja».',
    wet: '¿Qué colorante quieres humedecer?',
    'shelf-add': '¿Qué añado y cuánto? Por ejemplo «añade 50 g de dióxido de titanio a mi estantería».',
    'shelf-use': '¿Qué usaste y cuánto? Por ejemplo «usé 2 g de mica dorada, quítala de mi estantería».',
    'shelf-show': '¿Qué producto? /shelf list los enseña todos.',
    challenge: 'Mira /challenge list.',
    doubt: '¿Qué respuesta? Pregúntalo otra vez.',
    help: 'Mira /help.',
  },
  mixWithoutTarget: ({ mix }) =>
    `No puedo listar todos los colores que salen de ahí. Dime el color que quieres («cómo hago verde salvia»), o mira una mezcla: /preview mix:${quoted(mix)}.`,
  doubted: {
    headline:
      'Haces bien en preguntar: puedo equivocarme. Pregúntalo otra vez con el color, la cantidad y la intensidad.',
    why: spaced`
      Si ahora sale la mitad o el doble, casi siempre es por una de estas cosas: gramos de aceites o de
      masa, otra intensidad, otro tipo del mismo color, otro tamaño de cuchara.
    `,
    how: spaced`
      Por ejemplo «azul ultramar, 500 g de masa, media intensidad». «Entendido como» enseña qué leí; «Por
      qué» y «Todos los números» enseñan de dónde sale.
    `,
    lye: '¿Era sobre la sosa? No viertas nada hasta aclararlo: pesa otra vez los aceites, usa /plan y compáralo con otra cuenta.',
  },
  hello: 'Hola. Pregúntame con tus palabras por el color de tu jabón, o elige.',
  welcome: 'De nada. Pregunta lo siguiente cuando haga falta.',
  chat: {
    joke: '¿Qué le dijo el aceite a la sosa? «Sin ti no habría cuajado.» Se me da mejor el color.',
    taste: 'No veo colores, así que no tengo favorito. Dime el tuyo y te digo cómo se hace y si aguanta.',
    cannot:
      'Eso no puedo hacerlo: solo respondo aquí. Puedo decir qué color conseguir, cuánto va y si aguanta.',
    program:
      'Soy un programa, no una persona: respondo con tablas y cuentas, y digo cuándo no estoy seguro. Pregunta sin miedo.',
    remind:
      'Solo recuerdo jabón vertido: /batch poured lo apunta y avisa de cuándo cortarlo, darle la vuelta y usarlo. Para lo demás, pon una alarma.',
    draw: 'No dibujo remolinos. Un color, o una mezcla, lo enseño antes de verter: /preview. Cómo se hace un remolino lo cuento con palabras.',
    noHarm: 'No pasa nada.',
    night: 'Buenas noches, y que mañana siga siendo jabón.',
    wellDone: 'Bien hecho. Déjalo tapado y córtalo solo cuando esté firme, en uno o dos días.',
    pictures:
      'Sí: adjunta la foto a /diagnose y cuenta en pocas palabras qué ves. Busco fallos de la pastilla, no opino del gusto.',
    here: 'Sí, dime: qué color, cuánto aceite y qué polvos tienes.',
    any: 'Aquí estoy: pregúntame con tus palabras por el color de tu jabón.',
  },
  trouble: {
    headline: '¿Qué pasó: en la olla, en el molde o en una pastilla ya hecha?',
    why: 'Toca lo que sea, o dímelo en pocas palabras: qué color, cómo se ve, desde cuándo, qué llevaba. Una pastilla hecha: /diagnose, con foto si tienes.',
    hurt: 'Sosa o masa sobre alguien',
    wantedOrTurned: (v: { colour: string }) => `¿Quieres ${v.colour}, o algo se puso ${v.colour}?`,
    wanted: (v: { colour: string }) => `Quiero ${v.colour}`,
    turned: (v: { colour: string }) => `Se puso ${v.colour}`,
    became: (v: { colour: string }) => `se puso ${v.colour}`,
  },
  tellMore:
    'Cuéntame un poco más: qué color, para cuánta masa o aceites, o cómo se ve, desde cuándo y qué llevaba.',
  notUnderstood: 'No lo entendí como una pregunta sobre color en jabón, así que no voy a adivinar.',
  nearestFor: ({ name }) =>
    `De ${name} puedo decir: cuánto («cuánto ${name} para 2 tazas»), si aguanta la sosa, en qué humedecerlo y qué dice la norma.`,
  canDo: spaced`
    Puedo decir cuánto color y cómo humedecerlo, si aguanta la sosa y se permite, qué salió mal, cómo
    lograr un color, y sosa y agua para tus aceites. /help lo enseña todo.
  `,
  outside: {
    'lye-elsewhere':
      'La sosa para algo que no sea jabón queda fuera de lo mío: guíate por su etiqueta y por quien conoce ese oficio. Ninguna receta de jabón vale ahí.',
    'hot-process':
      'Cómo se cuece el proceso en caliente está fuera de mi campo: horas y calor son los de su receta y su olla. De su color, su sosa y su secado sí sé.',
    'melt-and-pour':
      'La base para derretir está fuera de mi campo: mis dosis son para masa de proceso en frío, hecha con sosa.',
    candles: 'Las velas están fuera de mi campo: solo sé de color en jabón de proceso en frío.',
    'bath-products':
      'Los productos de baño están fuera de mi campo: solo sé de color en jabón de proceso en frío.',
    'body-care':
      'Cremas, lociones y bálsamos están fuera de mi campo: solo sé de color en jabón de proceso en frío.',
    medical: spaced`
      Es una pregunta médica y no doy consejos médicos: consulta con un médico o farmacéutico. Si la sosa o
      el jabón crudo hacen daño a alguien ahora: /first-aid.
    `,
    food: 'La cocina está fuera de mi campo: solo sé de color en jabón de proceso en frío.',
    textiles: 'Teñir otras cosas está fuera de mi campo: solo sé de color en jabón de proceso en frío.',
    business:
      'Precios, tiendas y publicidad están fuera de mi campo: solo sé de color en jabón de proceso en frío.',
    other: 'Eso está fuera de mi campo: solo sé de color en jabón de proceso en frío.',
  },
  ...compared,
  hueHolds: ({ dose, light }) =>
    `${light === 'holds' ? 'Aguanta la sosa y la luz' : 'Aguanta la sosa, con la luz se va despacio'}: ${dose}`,
  trueRed:
    'El rojo más cercano al puro: esta laca no sangra. El óxido de hierro rojo tampoco se mueve, pero es teja; los rojos de planta quedan de rosa a marrón.',
  isEnough: ({ has, needs, dose }) =>
    has >= needs
      ? `Alcanza: lleva unos ${plain(needs)} g de tus ${plain(has)} g. ${dose}`
      : `No alcanza: lleva unos ${plain(needs)} g y tienes ${plain(has)} g. ${dose}`,
  forBars: ({ bars, each, dose }) => `${dose}. Contado como ${bars} pastillas de ${each} g.`,
  noColours: ({ names, dose }) => `Sin parte para ${list(names)}: no es colorante mío. ${dose}`,
  toldShares: ({ grams, of, dose }) => `${plain(grams)} g ${of}, repartidos como dijiste. ${dose}`,
  eachShare: ({ parts, grams, of, dose }) => `Cada una de ${parts}: ${plain(grams)} g ${of}. ${dose}`,
  planParts: ({ parts, each, dose }) => `${parts} partes de ${each}. ${dose}`,
  planShares: ({ whole, dose }) => `${whole}, repartidos como dijiste. ${dose}`,
  planPlain: ({ part, colour }) => `${part} quedan en ${colour}.`,
  planTouch: ({ part, colour }) => `Un toque de ${colour} se toma como una veinteava parte: ${part}.`,
  planNeedsOils:
    'Dime también tus aceites con pesos o porcentajes y calculo sosa, agua, orden y calor: /plan abre un formulario.',
  wetIn: ({ carrier, name }) => `Humedece ${name} en ${carrier}`,
  mayWetIn: ({ carrier, name }) => `Sí: ${carrier} sirve para humedecer ${name}`,
  carrierAmount: ({ amount, carrier, powder, name }) => `${amount} de ${carrier} para ${powder} de ${name}`,
  carrierRule: {
    oil: `${THREE_TO_ONE} Saca el aceite de los ya pesados antes de echar la sosa, y la receta queda igual.`,
    water: `${THREE_TO_ONE} Resta el mismo peso del agua de la sosa, nunca por debajo del peso de la sosa.`,
    glycerin: `${THREE_TO_ONE} La glicerina se suma a la receta: mucha deja la barra blanda y calienta la masa.`,
  },
  byWeight: ({ grams, dose }) => `Unos ${plain(grams)} g: ${dose}`,
  atMost: ({ dose, most }) =>
    `${dose}. Como máximo ${most} en esta porción: más tiñe la espuma y los paños, o estropea la barra`,
  likeliestOf: ({ text, name }) =>
    `«${text}» puede ser varios: este es ${name}, que aguanta la sosa. ¿El tuyo es otro? Púlsalo.`,
  bothEnds: ({ portion, doses }) => `Para ${portion}: ${doses}`,
};

export const askRefusals: typeof en.askRefusals = {
  'question-empty': () =>
    'No hay nada que responder: haz una pregunta, por ejemplo «¿cuánto ultramar para 2 tazas?».',
  'powder-without-amount': ({ text }) =>
    `«${text}» no dice cuánto: escríbelo como «2 cdtas arcilla rosa» o «5 g».`,
  'line-forgotten': () => 'Esa pregunta es de hace mucho. Hazla otra vez.',
};
