import type { Carrier } from '../../../engine/colourants/colourant.ts';
import type { DoseCautions } from '../../../engine/dosing/cautions.ts';
import { spaced } from '../../../engine/over-lines.ts';
import { practicalSpoons } from '../../../engine/quantities/spoons.ts';
import type { HarmfulLiquid } from '../../../engine/text/names/carrier-name.ts';
import type * as en from '../../en/colourants/dosing.ts';
import { numbersIn } from '../../numbers.ts';
import { quantities, strengths } from '../quantities.ts';
import { dispersion } from './dispersion.ts';

const { teaspoons, measure } = quantities;
const inSpoons = (most: number): string => measure(practicalSpoons(most, most));
const about = (needed: number): string =>
  needed < 1 ? measure(practicalSpoons(needed)) : teaspoons(Math.ceil(needed * 4) / 4);
const { millilitres: ml, plain } = numbersIn('es');
const inCarrier = (carrier: Carrier) => dispersion.carriers[carrier];

const lyeChanges: Record<DoseCautions['lye-changes']['behaviour'], string> = {
  conditional: 'aguanta en unos lotes y en otros no: haz antes una barra de prueba',
  shifts: 'cambia de color con la sosa: haz antes una barra de prueba',
  destroyed: 'pierde el color con la sosa: espera poco o nada en la barra',
  bleeds: 'migra a lo que tiene al lado y puede manchar: no sirve para vetas nítidas',
  unknown: 'no está probado en sosa, que yo sepa: haz antes una barra de prueba',
};

const harms: Readonly<Record<HarmfulLiquid, string>> = {
  acid: 'es ácido: gasta sosa, y del ultramar libera sulfuro de hidrógeno, que es venenoso.',
  bleach: 'destruye el color, y con ácidos o amoníaco da gas venenoso.',
  lye: 'es cáustico: más sosa de la que cuenta la receta, y quema.',
  petroleum: 'no es aceite de jabón: la sosa no lo vuelve jabón, y queda en la pastilla y en la piel.',
};

export const dosing: typeof en.dosing = {
  dishTest: 'Cada lote es distinto: prueba una pizca en agua. ¿Se queda en el fondo? Usa aceite o glicerina.',
  brief: {
    'raw-batter': 'Guantes y gafas puestos.',
    dust: 'Sin polvo.',
  },
  cautions: {
    'raw-batter': () =>
      'Guantes y gafas: la masa cruda quema piel y ojos durante uno o dos días, también al fregar.',
    dust: () =>
      'No respires el polvo: sin corrientes, con mascarilla, y el polvo bajo el líquido antes de encender nada.',
    'capped-at-ceiling': ({ colourant, said, askedTeaspoons, ceilingTeaspoons }) => {
      const most = `${inSpoons(ceilingTeaspoons)} es lo máximo para esta porción, y eso te doy.`;
      if (said === 'amount') return `Pediste ${teaspoons(askedTeaspoons)} de ${colourant.es}; ${most}`;
      const needed = `pediría unas ${about(askedTeaspoons)} de ${colourant.es}`;
      return said === 'depth-of-weak-jar'
        ? `Tu bote es flojo: un color tan intenso ${needed}; ${most}`
        : `Un color tan intenso ${needed}; ${most}`;
    },
    'capped-by-law': ({ colourant, law, percent }) =>
      `La ley de ${law === 'us' ? 'EE. UU.' : 'la UE'} permite como mucho un ${plain(percent)} % de la pastilla de ${colourant.es}: la dosis queda por debajo.`,
    'percent-of-oils': ({ colourant, percent, oilsGrams }) =>
      `El ${plain(percent)} % de ${colourant.es} cuenta sobre los aceites de esta porción (${oilsGrams} g), en peso.`,
    'mix-scaled': ({ percent }) =>
      `Juntos, estos colores son demasiado para una porción: cada uno baja al ${percent} % de lo pedido.`,
    'whites-scaled': ({ percent }) =>
      `Los pigmentos blancos cuentan juntos y aquí son demasiado: cada color baja al ${percent} % de lo pedido.`,
    'coloured-lather': ({ colourant, ceilingTeaspoons }) =>
      `${colourant.es} por encima del color pleno puede teñir la espuma. Nunca más de ${inSpoons(ceilingTeaspoons)} en esta porción.`,
    staining: ({ colourant }) => `${colourant.es} mancha manos, paños y encimera, seco o mojado.`,
    brittle: ({ ceilingTeaspoons }) =>
      `El mínimo blanco que baste, nunca más de ${inSpoons(ceilingTeaspoons)} en esta porción: más hace la barra quebradiza, y el calor la agrieta.`,
    'stick-blend-thickens': () =>
      'La porción pasada por batidora espesa: hazla la última, o viértela la primera.',
    'froth-cup-only': () => 'El espumador es para el vaso. Nunca en la masa.',
    'dish-test-first': ({ colourant, carrier }) => spaced`
      Cada lote de ${colourant.es} es distinto: prueba antes una pizca en un plato con agua. Se abre: agua.
      Se queda en el fondo: aceite o glicerina. Mientras tanto, ${inCarrier(carrier)}.
    `,
    'dish-test-disagrees': ({ colourant, tested, asked }) =>
      `Tu prueba del plato de ${colourant.es} indicó ${inCarrier(tested)}; en ${inCarrier(asked)} espera puntos.`,
    'fades-in-light': ({ colourant }) =>
      `${colourant.es} puede perder color con la luz: cura y guarda las barras a oscuras.`,
    'lye-changes': ({ colourant, behaviour }) => `${colourant.es} ${lyeChanges[behaviour]}.`,
    'superfat-rises': ({ from, to }) =>
      `El aceite añadido sube el sobreengrasado de esta porción de un ${plain(from)} % a un ${plain(to)} %: queda algo más blanda.`,
    'lye-thins': ({ from, to }) => spaced`
      El agua añadida rebaja la sosa de esta porción de un ${plain(from)} % a un ${plain(to)} %: más riesgo
      de ríos de glicerina si se calienta. Resta esa agua del agua de la lejía, pero deja al menos tanta
      agua como sosa.
    `,
    'portion-small': ({ millilitres }) =>
      `${ml(millilitres)} es muy poco para cucharas: toma lo que quede en la punta de un palillo, mojado en unas gotas, o colorea 50 ml o más.`,
    'typical-batter': () => 'Convertido con una masa típica. Con tu receta la respuesta es más precisa.',
    'premix-strength-unknown': ({ colourant }) =>
      `Nadie dice cuánto pigmento lleva este ${colourant.es}: empieza con un cuarto, compara, sube y anota lo que funcionó.`,
  },
  headline: ({ spoons, colourant, portion }) => `${spoons} de ${colourant} para ${portion}`,
  usually: ({ grams, strength, full }) =>
    `, unos ${plain(grams)} g: ${strengths[strength]}, como se suele empezar; color pleno ${full}`,
  takenAsBatter: ({ portion, spoons }) => `. Tomado como masa; ${portion} de aceites: ${spoons}`,
  pasteOf: ({ colourant }) => `de tu pasta de ${colourant}`,
  grams: ({ low, typical, high }) => `unos ${plain(typical)} g (de ${plain(low)} a ${plain(high)} g)`,
  weighYourSpoon: ({ colourant }) =>
    `Los gramos son muy aproximados: pesa una cucharadita rasa de tu ${colourant} y los afino.`,
  ceiling: ({ spoons, percent }) => `${percent} % de lo máximo para esta porción (${spoons}).`,
  learnt: ({ name, times, usual }) => spaced`
    «${name}» es ${plain(times)} veces tan fuerte como lo normal, según tus propias
    pastillas${usual === undefined ? ': ya va contado.' : `: de un bote normal serían ${usual}.`}
  `,
  learntIn: ({ jars }) =>
    `Ya contado, según tus propias pastillas: ${jars.map(({ name, times }) => `«${name}» es ${plain(times)} veces tan fuerte como lo normal`).join(', ')}.`,
  perMeasure: ({ perCup, perPound }) =>
    `Son ${plain(perCup)} cdta por taza de masa, o ${plain(perPound)} cdta por libra de aceites.`,
  shareOfPaste: ({ percent, grams, spoons }) =>
    `Usa el ${plain(percent)} % de tu pasta: ${plain(grams)} g, o ${spoons}.`,
  pastes: ({ count, grams, spoons }) =>
    `Haz ${plain(count)} veces esa pasta y úsala toda: ${plain(grams)} g, o ${spoons}.`,
  ofPremix: ({ grams, spoons }) => `Usa ${spoons} de la premezcla, unos ${plain(grams)} g.`,
};

export const dosingRefusals: typeof en.dosingRefusals = {
  'never-meets-lye': ({ colourant }) =>
    `${colourant.es} nunca debe tocar la sosa. Déjalo fuera; usa una mica o un óxido de ese color.`,
  'spoon-weight-out-of-range': ({ grams, low, high }) =>
    `Una cucharadita rasa no puede pesar ${plain(grams)} g. Pésala otra vez: es posible de ${plain(low)} a ${plain(high)} g.`,
  'premix-unreadable': ({ text }) =>
    `No puedo leer «${text}» como premezcla. Escribe «30%», «1 cdta en 1 cda de aceite» o «desconocido».`,
  'premix-out-of-range': ({ text }) =>
    `«${text}» no es una pasta: el pigmento va de 0,1 a 95 % en peso, o hasta 2 partes de polvo por 1 de líquido.`,
  'carrier-is-fragrance': ({ text }) => spaced`
    «${text}» es un aroma, no un líquido para humedecer: muchos espesan la masa o la vuelven marrón, y su
    dosis tiene límite legal. Humedece el color en un aceite ligero, agua o glicerina, y añade el aroma
    aparte.
  `,
  'carrier-is-alcohol': ({ text }) =>
    `«${text}» arde y calienta la masa: no sirve aquí para humedecer. Usa agua, un aceite ligero o glicerina.`,
  'carrier-harms': ({ text, why }) =>
    `«${text}» ${harms[why]} Humedece el color en agua, un aceite ligero o glicerina.`,
  'premix-carrier-twice': ({ premix, carrier }) =>
    `La premezcla «${premix}» y el líquido «${carrier}» no son lo mismo: deja solo uno.`,
  'carrier-unknown': ({ text }) => `No conozco «${text}» como líquido. Usa agua, aceite o glicerina.`,
};
