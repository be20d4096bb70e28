import { spaced } from '../../../engine/over-lines.ts';
import type { askedBackRefusals as en } from '../../en/batch/asked-back.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';
import { batch } from './batch.ts';

const { whole, one } = numbersIn('es');

export const askedBackRefusals: typeof en = {
  'oil-is-liquid': ({ text }) =>
    `«${text}» no es una grasa: la sosa no tiene con qué hacer jabón y quedaría libre. Nombra los aceites, y esto escríbelo en liquid:«${text.trim()}».`,
  'lye-or-bleach': ({ text }) => spaced`
    «${text}»: ¿sosa cáustica (NaOH) o la lejía de limpiar? La de limpiar no hace jabón y nunca debe
    entrar. Si la etiqueta dice hidróxido de sodio, escribe «NaOH».
  `,
  'lye-not-hydroxide': ({ text }) =>
    `«${text}» no es sosa: los carbonatos y otras sales no hacen jabón. Solo el hidróxido de sodio (NaOH) o de potasio (KOH); lee la etiqueta.`,
  'lye-drain-cleaner': ({ text }) => spaced`
    «${text}» puede llevar virutas de aluminio (hidrógeno), lejía o perfume además de la sosa: no sirve
    para jabón. Usa hidróxido de sodio (NaOH) puro, 97 % o más en la etiqueta.
  `,
  'lye-potash-unclear': ({ text }) =>
    `«${text}»: ¿potasa cáustica (KOH) o carbonato de potasio? Solo el KOH hace jabón. Si la etiqueta dice hidróxido de potasio, escribe «KOH».`,
  'lye-by-volume': ({ text }) =>
    `«${text}»: la sosa va por peso, nunca por volumen; se diferencian en la mitad. Pésala y da su porcentaje en peso, como «solución de NaOH al 50%».`,
  'lye-weight-told': ({ text }) =>
    `«${text}»: cuánta sosa hace falta lo calculo por los aceites. Di solo cuál: «NaOH» o «KOH», con su pureza en porcentaje si la etiqueta la da.`,
  'oven-too-hot': ({ ovenC, most, material }) => spaced`
    ${degrees(ovenC)} es demasiado horno para
    jabón${material === 'plastic' ? ' en un molde de plástico, que se ablanda' : ': hierve y se agrieta'}.
    Como mucho ${degrees(most)}, y luego apagado.
  `,
  'start-too-hot': ({ startC, most }) =>
    `${degrees(startC)} es demasiado caliente para verter: la masa sube y quema. Aquí como mucho ${degrees(most)}; lo normal, 38 °C (100 °F).`,
  'size-very-large': ({ kilograms }) => spaced`
    Son ${whole(kilograms)} kg de aceites: ¿de verdad? Si es así, da el tamaño en kilos:
    size:«${whole(kilograms)} kg de aceites». Si no, revisa las cantidades.
  `,
  'amounts-whose': ({ text }) =>
    `«${text}»: no sé qué peso es de qué nombre. Escribe cada peso delante de su nombre, con comas: «500 g oliva, 200 g coco, 230 g agua».`,
  'recipe-corrected': ({ text }) =>
    `Has corregido algo por el camino («${text}»). Escribe la receta otra vez, como ha de ser: «500 g oliva, 200 g coco, sobreengrasado 5%».`,
  'recipe-scaled': ({ text }) =>
    `«${text}»: multiplica cada aceite, la sosa y el agua por un mismo número y pregunta con esos pesos: «500 g oliva, 200 g coco, 90 g sosa, 200 g agua».`,
  'oil-shared': ({ text }) =>
    `«${text}»: de un solo aceite. Escribe cada aceite con el peso que hay o va en la olla, y el sobreengrasado: «500 g oliva, 200 g coco, sobreengrasado 5%».`,
  'recipe-words': ({ text }) =>
    `No sé qué cambia «${text}» en la receta. Escribe solo los aceites con su peso y el sobreengrasado: «500 g oliva, 200 g coco, sobreengrasado 5%».`,
  'oil-told-twice': ({ name, one, other }) =>
    `«${name}» sale dos veces: ${one} y ${other}. Escribe cada aceite una vez, con lo que hay o va en la olla, todo en un peso: «… g ${name}».`,
  'oil-lost': ({ text }) => spaced`
    «${text}»: falta parte del aceite. Pesa cada aceite que hay ahora en la olla y pregunta con eso: «500 g
    oliva, 200 g coco, sobreengrasado 5%». Ya mezclados: pesa la mezcla y di «800 g de aceites, 60% oliva,
    40% coco». Antes, nada de sosa.
  `,
  'vessel-weighed': ({ text }) => spaced`
    «${text}»: ¿está eso en los pesos de los aceites? Un recipiente contado como aceite es demasiada sosa.
    Réstalo donde estuvo en la báscula y pregunta con lo que pesa solo el aceite: «500 g oliva, 200 g coco,
    sobreengrasado 5%».
  `,
  'lye-damp': ({ text }) => spaced`
    «${text}»: la sosa que tomó agua del aire perdió fuerza, y nadie sabe cuánta; el jabón quedaría blando y
    graso. Los terrones no se rompen a golpes: saltan astillas. Usa sosa nueva y seca, y pregunta su peso
    sin estas palabras.
  `,
  'lye-shares-untold': ({ text }) =>
    `«${text}»: ¿cuánto de cada una? Escribe las partes, como «NaOH 60 %, KOH 40 %», o pregunta con un solo álcali: no se cambian peso por peso.`,
  'cocoa-which': ({ text }) =>
    `«${text}»: ¿manteca de cacao o cacao en polvo? Solo la manteca gasta sosa. Escribe «manteca de cacao» con su peso, o deja el polvo fuera de los aceites.`,
  'superfat-under-one': ({ text, percent }) => spaced`
    «${text}»: ¿un
    sobreengrasado${percent === undefined ? ' en porcentaje' : ` del ${one(percent)} %, dicho como parte de uno`}, o de verdad menos
    del 1 %, que casi no deja reserva y puede dejar sosa en la pastilla? Escribe el porcentaje, como
    «sobreengrasado 5%»; menos del 1 % solo lo toma /plan.
  `,
  'superfat-twice': ({ one, other }) => spaced`
    Hay dos sobreengrasados: «${one}» y «${other}». Un descuento de sosa es lo mismo con otro nombre:
    escribe el que vale, o la suma, como «sobreengrasado …%».
  `,
  'recipe-planned': ({ text }) =>
    `Lo que iba a llevar está junto a lo que lleva («${text}…»). Escribe solo lo que hay o va en la olla: «500 g oliva, 200 g coco, sobreengrasado 5%».`,
  'recipe-of-another': ({ text }) => spaced`
    Junto a tu olla cuentas otra («${text}…»), y cada una lleva su propia sosa. Escribe solo lo que hay o
    va en la que preguntas: «500 g oliva, 200 g coco, sobreengrasado 5%».
  `,
  'oil-in-pot': ({ names, text }) => spaced`
    ${names.length === 1 ? `¿Está «${names[0]}» en la olla, todo?` : `¿Están ${names.map(name => `«${name}»`).join(', ')} en la olla, todo?`}
    No lo sé por «${text}». Escribe solo lo que hay o va dentro: «500 g oliva, 200 g coco, sobreengrasado
    5%».
  `,
  'lye-which-unknown': ({ text }) => spaced`
    «${text}»: no lo uses hasta saber cuál es. El hidróxido de sodio (NaOH) y el de potasio (KOH) se ven
    igual y no pesan lo mismo: lo dice la etiqueta o quien lo vendió, nada de casa. Con uno etiquetado,
    pregunta otra vez: «NaOH, 500 g oliva, 200 g coco».
  `,
  'pots-compared': ({ text }) => spaced`
    Ahí hay dos ollas («${text}…»), y cada aceite lleva su propia sosa: la cantidad que va bien en una
    quema en otra. Pregunta por una olla cada vez: «500 g oliva, sobreengrasado 0%».
  `,
  'oils-left-out': ({ text, names, ways = [] }) =>
    names.length === 0
      ? `«${text}»: ¿qué aceites van y cuáles no? Escribe solo lo que hay o va en la olla: «500 g oliva, 200 g coco, sobreengrasado 5%».`
      : ways.length > 1
        ? spaced`
          «${text}»: ¿va ${names.map(name => `«${name}»`).join(', ')} en la olla? Pulsa lo que sea, o
          escribe solo lo que hay o va dentro: «500 g oliva, 200 g coco, sobreengrasado 5%».
        `
        : spaced`
          «${text}»: entiendo que ${names.map(name => `«${name}»`).join(', ')} se queda fuera, y nada más.
          Si es así, pulsa el botón; si no, escribe solo lo que va dentro: «500 g oliva, 200 g coco,
          sobreengrasado 5%».
        `,
  'lye-ready-strength': ({ text }) =>
    `«${text}» ya lleva agua, así que pesa más que la sosa seca: ¿qué fuerza tiene? Pregunta con su porcentaje, como «solución de sosa al 50%».`,
  'lye-of-soft-soap': ({ text }) => spaced`
    «${text}» se hace con hidróxido de potasio (KOH), una pastilla con hidróxido de sodio (NaOH), y no
    pesan lo mismo. Escribe cuál dice tu etiqueta, con la receta: «KOH, 500 g oliva, 200 g coco».
  `,
  'oil-number-spaced': ({ text, joined, last }) =>
    `«${text}»: ¿${joined} o ${last}? Escribe la cantidad sin espacio dentro, como «${joined}».`,
  'additive-over-usual': ({ additive: id, percent, most }) => spaced`
    ${whole(percent)} % de los aceites es demasiado
    (${batch.additives[id]}${id === 'honey' || id === 'sugar' ? ', todo el azúcar junto' : ''}): como mucho
    ${most} %.${id === 'honey' || id === 'sugar' ? ' Más recalienta la barra, que puede salirse.' : ''}
    Revisa la cantidad.
  `,
  'oil-unclear': ({ text }) =>
    `«${text}»: ¿qué grasa lleva? Lee la etiqueta y nombra cada una, como «soja 60%, palma 40%»; cada grasa pide su propia sosa.`,
  'oil-is-food': ({ text }) => spaced`
    «${text}» es un alimento con solo algo de grasa: la sosa para todo su peso quemaría. Nombra la grasa
    sola, como «aceite de almendras», «manteca de cerdo» o «manteca de cacao».
  `,
  'oils-without-unit': () =>
    'Estos números no son porcentajes: suman más de 100. Añade g u oz a cada uno, como «oliva 500 g, coco 300 g».',
};
