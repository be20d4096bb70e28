import type { techniqueBars as english } from '../../../en/colour/technique/bars.ts';

/** Lo que se dice de las pastillas: cortarlas, sellarlas, curarlas, guardarlas, regalarlas (`src/engine/questions/technique/asked`). */
export const techniqueBars: typeof english = {
  'store-bars': {
    answer: [
      'Pastillas curadas: seco, oscuro y con aire, en cartón o papel, no en bolsa cerrada.',
      'Duran un año o dos.',
    ],
    why: [
      'Un estante, un cajón o una caja con agujeros, lejos del baño y la cocina.',
      'Los aromas, separados, o se mezclan; los colores vegetales a oscuras, que la luz los destiñe.',
      'Mientras curan van al aire por todos lados.',
      'La humedad las hace sudar, y los aceites viejos dan manchas naranjas: esas, primero.',
    ],
  },
  'cured-when': {
    answer: [
      'Curado: de cuatro a seis semanas, firme, con el mismo peso de una semana a otra y sin calambre.',
    ],
    why: [
      'Pesa una pastilla cada semana y apúntalo: mientras pierda más de un gramo o así, aún se seca.',
      'El color no dice nada.',
      'Casi todo oliva tarda unos meses.',
      'Ante la duda, otras dos semanas no hacen daño.',
    ],
  },
  'start-when': {
    answer: [
      'Cuenta seis semanas hacia atrás desde ese día: cuatro de curado y dos por si hay que repetir un lote.',
    ],
    why: [
      'Así que vierte seis semanas antes, mejor aún más.',
      'Casi todo oliva: tres meses o más.',
      'A menos de cuatro semanas es demasiado joven para regalar: entonces base de glicerina, o una tarjeta que diga desde qué día se usa.',
      '/batch poured te avisa cuando está curado.',
    ],
  },
  'give-when': {
    answer: [
      'Desde las cuatro semanas, mejor seis, se vea como se vea; casi todo oliva, después.',
      'Sin calambre, primero en ti.',
    ],
    why: [
      'El jabón más joven es áspero y blando, y los primeros días quema.',
      'Un regalo demasiado joven lleva una nota con el día desde el que se puede usar.',
      'La ceniza es solo estética: vapor o un paño.',
      'Escribe qué lleva; quien tenga la piel mal pregunta al médico.',
    ],
  },
  'cut-with': {
    answer: [
      'Sirve un cuchillo de cocina largo y liso, empujado derecho; el alambre corta más fino y parejo.',
      'Solo para jabón.',
    ],
    why: [
      'Inoxidable, sin dientes, más ancho que el bloque; límpialo tras cada corte.',
      'Un alambre o cortador deja todas iguales, y el bloque puede ir de costado para que nada se arrastre por la cara.',
      'Firme como queso duro, casi siempre al día o a los dos.',
      'Guantes los dos primeros días.',
    ],
  },
  'air-out': {
    answer: [
      'Batidora inclinada al entrar, sácale el aire a la cabeza, siempre sumergida; vierte de bajo y golpea el molde en la mesa.',
    ],
    why: [
      'Toques cortos, y entre ellos a mano, sin varillas.',
      'Vierte por una espátula en traza ligera, que la masa espesa atrapa aire.',
      'Los huequitos son solo estéticos.',
      'Huecos con líquido no son aire: guantes, y no uses la pastilla.',
    ],
  },
  'fridge-mould': {
    answer: [
      'Sí, de 12 a 24 horas evita el gel y que se recaliente; tapado, en su propia bandeja, lejos de la comida.',
    ],
    why: [
      'Queda más claro, lechoso y mate, y quiere un día o dos más en el molde.',
      'A medias deja un anillo oscuro: enseguida y toda la noche.',
      'El jabón crudo quema: que no toque nada que se coma ni lo alcance un niño.',
      'Congelador, solo una hora o dos, para que despegue.',
    ],
  },
  'layers-apart': {
    answer: [
      'La de abajo ya había cuajado, o tenía mucho polvo.',
      'Vierte mientras aún pegue, y raya o humedece su cara.',
    ],
    why: [
      'La línea de mica, apenas un velo.',
      'Que gelifiquen o se enfríen juntas, y córtalo de costado con un alambre fino.',
      'Capas de distinta agua o aceites encogen distinto.',
      'Lo que se abrió es buen jabón: moja las dos caras, aprieta, envuelve y espera un día; o usa las mitades.',
    ],
  },
  'olive-soft': {
    answer: [
      'Es normal: el oliva puro queda blando semanas y endurece en meses.',
      'Déjalo en la rejilla seis semanas al menos.',
    ],
    why: [
      'Una vuelta por semana, con aire alrededor.',
      'Mejora hasta el año.',
      'Más firme la próxima: agua de 1,5 a 1,8 veces la sosa, molde abrigado, algo de sal o lactato.',
      'Si sigue grasoso o da calambre, no es solo que es joven.',
    ],
  },
  'stamp-when': {
    answer: ['Uno o dos días después de cortar: firme, ya no pegajoso, pero aún tierno para tomar la marca.'],
    why: [
      'Aprieta derecho, espera un respiro, levanta derecho.',
      'Si pega: unas horas más, o un film en medio, o el sello con un poco de mica o alcohol lejos del fuego.',
      'Si está duro se raja: antes la próxima.',
      'Guantes los dos primeros días.',
    ],
  },
  'plane-bars': {
    answer: [
      'Basta un milímetro, tras una o dos semanas de curado: cepillo de jabón o pelapapas, los bordes al final.',
    ],
    why: [
      'Más joven embarra, más duro se astilla.',
      'La ceniza es solo la piel, y un minuto de vapor la quita sin pérdida.',
      'Guarda las virutas para confeti.',
      'Guantes los dos primeros días.',
    ],
  },
  'cold-room': {
    answer: ['Sí, solo más despacio: tápalo, una toalla alrededor y un día o dos más en el molde.'],
    why: [
      'Empieza a 35 o 40 °C (95 a 104 °F) para que las mantecas no cuajen en la olla, que parece traza.',
      'Frío gelifica menos, queda más claro y tiene más ceniza: con tapa, y no en el piso frío.',
      'El curado va algo más lento; sobre cero no le pasa nada.',
    ],
  },
  'damp-room': {
    answer: [
      'El cuarto más seco, con aire, lejos de pared y piso; deshumidificador o ventilador a ratos.',
      'Ni baño ni cocina.',
    ],
    why: [
      'Con humedad la glicerina suda: se seca con un paño, no hace daño.',
      'Un ropero cerrado, en cartón, con un sobre de sílice o arroz seco al lado, sirve; míralo cada mes.',
      'Sin rejillas de metal.',
      'Nada hermético hasta que esté curado, y envuélvelo solo seco.',
    ],
  },
  'cure-outside': {
    answer: [
      'Mejor dentro: el sol destiñe y ablanda, la humedad las hace sudar.',
      'Un cuarto seco, con aire y sin luz directa.',
    ],
    why: [
      'Una rejilla o caja de cartón con huecos, con una vuelta por semana.',
      'Fuera le caen lluvia, rocío, polvo y animales, y el jabón joven quema a quien lo lame.',
      'Un cobertizo seco y cerrado está bien.',
    ],
  },
  scraps: {
    answer: ['Rallados en masa nueva como confeti, hasta un tercio; o refundidos, o para lavarse las manos.'],
    why: [
      'Los trocitos, en traza ligera; los viejos y secos, antes con una cucharada de agua.',
      'Sus colores quedan como motas.',
      'Nada que dé calambre, llore o tenga manchas naranjas.',
      'Su peso ya es jabón: no lleva sosa.',
    ],
  },
  'batter-or-bar': {
    answer: [
      'La masa cruda engaña: casi siempre más oscura y amarilla.',
      'Mira la pastilla cortada al día, y la curada a las cuatro semanas.',
    ],
    why: [
      'El gel la oscurece, sin gel queda lechosa, y al secar aclara.',
      'Algunos cambian en la olla y vuelven: el ultramar, ciertos rosas.',
      'Una cucharada aparte y tapada lo enseña mañana.',
    ],
  },
};
