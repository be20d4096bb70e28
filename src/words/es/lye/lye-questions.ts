import { spaced } from '../../../engine/over-lines.ts';
import type { LyeCheck } from '../../../engine/questions/lye/sums/check.ts';
import { midSentence } from '../../../engine/text/capital.ts';
import type { lyeQuestions as english } from '../../en/lye/lye-questions.ts';
import { numbersIn } from '../../numbers.ts';
import { degrees } from '../../temperatures.ts';
import { lyeAsked } from './lye-asked.ts';
import { lyeBasics } from './lye-basics.ts';
import { lyeBench } from './lye-bench.ts';
import { lyeByLitre } from './lye-by-litre.ts';
import { lyeCare } from './lye-care.ts';
import { lyeClass } from './lye-class.ts';
import { lyeFinished } from './lye-finished.ts';
import { lyeFire } from './lye-fire.ts';
import { lyeGeneral } from './lye-general.ts';
import { lyeHarm } from './lye-harm.ts';
import { lyeHeat } from './lye-heat.ts';
import { lyeHouse } from './lye-house.ts';
import { lyeIngredients } from './lye-ingredients.ts';
import { lyeJug } from './lye-jug.ts';
import { lyeMatters } from './lye-matters.ts';
import { lyeMisweighed } from './lye-misweighed.ts';
import { lyeMixing } from './lye-mixing.ts';
import { lyePowders } from './lye-powders.ts';
import { lyeProportions } from './lye-proportions.ts';
import { lyeSafety } from './lye-safety.ts';
import { lyeSums } from './lye-sums.ts';

const { figure, one } = numbersIn('es');

/** What is said to questions about lye: amounts that were weighed already, and its handling. */
export const lyeQuestions: typeof english = {
  matters: lyeMatters,
  byLitre: lyeByLitre,
  sums: lyeSums,
  topics: {
    ...lyeHarm,
    ...lyePowders,
    ...lyeFire,
    ...lyeMisweighed,
    ...lyeJug,
    ...lyeCare,
    ...lyeProportions,
    ...lyeGeneral,
    ...lyeFinished,
    ...lyeAsked,
    ...lyeBench,
    ...lyeHeat,
    ...lyeHouse,
    ...lyeMixing,
    ...lyeClass,
    ...lyeIngredients,
    ...lyeSafety,
    ...lyeBasics,
    // Asked the one way and the other, these are one matter.
    'water-onto-lye': lyeHarm['lye-into-water'],
    'lye-and-water-swapped': lyeHarm['amounts-swapped'],
  },
  water: v => `${figure(v.water, 0)} g de agua para ${figure(v.lye, 1)} g de sosa`,
  waterWhy: v => spaced`
    Es sosa al ${one(v.percent)} %: agua = sosa × (100 − ${one(v.percent)}) / ${one(v.percent)}. Nunca
    menos agua que sosa. Dime los aceites y compruebo también la sosa.
  `,
  oilsFor: v => spaced`
    ${v.oils.map(({ names, grams }) => `${figure(Math.ceil(grams), 0)} g de ${midSentence(names.es)}`).join(' + ')}
    para ${figure(v.lye.grams, 1)} g de ${v.lye.alkali}, con ${one(v.superfat)} % de sobreengrasado
  `,
  oilsForWhy: v => spaced`
    Nunca menos aceite: sobraría sosa. Los aceites varían: servirían en total entre
    ${figure(v.grams.low, 0)} y ${figure(v.grams.high, 0)} g. ${v.lye.alkali} contado al
    ${one(v.lye.purity * 100)} % de pureza. Pesa tus aceites y pregunta al revés, como «cuánta sosa para
    800 g de aceite de oliva», o usa /plan para el agua.
  `,
  checked(v: LyeCheck) {
    const what = `${figure(v.lye.grams, 1)} g de ${v.lye.alkali} para ${figure(v.oilGrams, 0)} g de aceites`;
    const superfat = `sobreengrasado ${one(v.superfat.typical)} %`;
    switch (v.verdict) {
      case 'lye-heavy':
        return `No lo uses: con ${what} sobra sosa, ${superfat}`;
      case 'may-be-heavy':
        return `Demasiado justo: con ${what} puede sobrar sosa, ${superfat}`;
      case 'soft':
        return `Poca sosa: ${what} deja ${superfat}`;
      case 'usual':
        return `${what} deja ${superfat}: no sobra sosa`;
    }
  },
  checkedWhy: v => spaced`
    Los aceites varían: el sobreengrasado queda entre ${one(v.superfat.low)} y ${one(v.superfat.high)} %.
    ${v.lye.alkali} contado al ${one(v.lye.purity * 100)} % de pureza. Al ${one(v.usualPercent)} % de
    sobreengrasado serían ${figure(Math.floor(v.usualGrams * 10) / 10, 1)} g.
  `,
  remedy: {
    'lye-heavy': spaced`
      No lo pongas en la piel. Masa o pastilla, con guantes y gafas. Puede rehacerse con los aceites que
      faltan, solo si cada peso es seguro; después se calcula otra vez. Si no, deséchalo como residuo
      cáustico según tus normas locales. Esperar no lo arregla, el papel de pH no lo absuelve, y nada de
      lengua.
    `,
    'may-be-heavy': spaced`
      Si aún no lo has mezclado, usa la sosa de la línea del 5 %. Si está hecho: guantes, cúralo cuatro
      semanas y prueba con papel de pH en la pastilla mojada, nunca la lengua: con 11 o más, o si pica, no
      lo uses: rehazlo con más aceite o deséchalo.
    `,
    soft: spaced`
      No será cáustico, pero sí blando, y se enranciará pronto. Si aún no hay sosa dentro, pesa la de la línea
      del 5 % en su lugar. Si ya la has echado, nunca pongas esa cifra encima: es toda la sosa, no lo que
      falta.
    `,
    usual: 'Prueba igualmente la pastilla curada antes de usarla.',
  },
  missing: v => spaced`
    Faltan ${figure(v.missing, 1)} g de ${v.check.lye.alkali}: ya hay ${figure(v.check.lye.grams, 1)} g, y
    ${figure(v.check.oilGrams, 0)} g de aceites gastan ${figure(v.all, 1)} g en total con
    ${one(v.check.usualPercent)} % de sobreengrasado
  `,
  missingWhy: v => spaced`
    Solo si entraron ${figure(v.check.lye.grams, 1)} g, enteros, y no se ha perdido nada desde entonces; si
    no estás seguro, no añadas. En la jarra: despacio y removiendo, se calienta otra vez; nunca más sosa
    que agua. En masa todavía líquida: primero disuelta en su mismo peso de agua, y luego batida. Un jabón
    ya cuajado no la toma por igual: déjalo como está, blando.
  `,
  keptAway:
    'Que no entre ningún animal ni niño hasta que esté aclarado y seco. Si alguno lo pisó, lo lamió o le cayó encima: /first-aid enseguida.',
  rateComesTo: v =>
    `${figure(v.lye, 1)} g de sosa por ${figure(v.per, 0)} g de aceite son ${figure(v.grams, 1)} g en los tuyos. Ninguna regla sirve para todo aceite.`,
  noRate: 'Ninguna regla sirve para todo aceite: el coco gasta cerca de un tercio más de sosa que la oliva.',
  tooMuchForAll: v =>
    `No: ${figure(v.lye, 1)} g de sosa es más de lo que gastan ${figure(v.oils, 0)} g de cualquier aceite que conozco`,
  hangsOnOils: v =>
    `Aún no sé si ${figure(v.lye, 1)} g de sosa van bien con ${figure(v.oils, 0)} g de aceites: cada aceite gasta la suya. ¿Qué aceites?`,
  nameOils:
    'Dime los aceites y los gramos de cada uno, como «200 g de sosa en 700 g de oliva y 300 g de coco». Hasta entonces, no lo uses.',
  noNumber:
    'Así que no doy cantidad de sosa: con algo mal leído sería la de otra receta. Corrígelo con el botón, o usa /plan.',
  weighedButUnread: 'Hasta calcular su sosa, trátalo como si sobrara: guantes y gafas, nada de piel.',
  readyHoldsWater: spaced`
    La sosa ya disuelta lleva agua: 100 g de solución al 50 % son 50 g de sosa seca. Nunca peses una por la
    cifra de la otra: faltaría sosa o sobraría el doble.
  `,
  bleachOrLye: spaced`
    «Lejía»: ¿sosa cáustica (NaOH) o la de limpiar? La de limpiar (hipoclorito) no hace jabón y nunca debe
    entrar. Si la etiqueta dice hidróxido de sodio, pregunta otra vez con «sosa».
  `,
  passedBy: ({ left }) =>
    `Dejado de lado: ${left
      .slice(0, 5)
      .map(one => `«${one}»`)
      .join(', ')}. Si es un aceite, da su peso y pregunta otra vez.`,
  saidBeside: ({ beside }) => spaced`
    También dices ${beside.map(one => `«${one}»`).join(' y ')}. Si eso cambia lo que va en la olla, un
    peso, el sobreengrasado o la sosa, no uses esta cifra: pregunta otra vez solo con lo que va dentro.
  `,
  respelt: ({ respelt }) => spaced`
    ${respelt.map(({ typed, read }) => `«${typed.slice(0, 40)}» leído como «${read}»`).join(', ')}. ¿Es
    otro aceite? Entonces esta sosa no vale: pregunta otra vez con su nombre.
  `,
  readWithout: ({ line }) => `Sin esas palabras leo: ${line}.`,
  asRead: 'Sí, solo eso',
  allIn: 'Sí, todo',
  leftOutOfPot: ({ names }) => `No, sin ${names.join(', ')}`,
  lyeFor: ({ line }) => `¿Cuánta sosa para ${line}?`,
  isItRight: ({ line }) => `¿Está bien esta sosa: ${line}?`,
  waterBeside: ({ water, lye }) =>
    water < lye
      ? `Poca agua: ${figure(water, 0)} g para ${figure(lye, 1)} g de sosa. Nunca menos agua que sosa: queda sin disolver y quema.`
      : `Agua de sosa al ${figure((100 * lye) / (lye + water), 0)} %${lye / (lye + water) < 0.22 ? ': muy floja, espesa tarde y seca despacio' : ''}.`,
  leftOut: ({ left }) =>
    `No ha entrado en este plan: ${left
      .slice(0, 5)
      .map(one => `«${one.slice(0, 40)}»`)
      .join(
        ', ',
      )}. Pulsa Cambiar y añádelo, como portions:«1 taza mica dorada», fragrance:«3%» o additives:«sal 20 g».`,
  beyondAllOils: ({ lye }) =>
    `${figure(lye, 1)} g de sosa es más de lo que gastan todos estos aceites juntos: no la uses.`,
  usualSuperfat: ({ percent }) => `Sobreengrasado ${one(percent)} %, el usual: no dijiste ninguno.`,
  purityTold: ({ alkali, percent }) =>
    `${alkali} del ${one(percent)} %, como dices: con otra pureza la cantidad es otra.`,
  poursHot: ({ startC }) =>
    `Tanto de ello es duro que solo se vierte por encima de ${degrees(startC)}: su calor se cuenta desde ahí, la sosa es la misma.`,
  usualKoh:
    'No dijiste pureza, así que el KOH se cuenta al 90 %. Mira la etiqueta: con otra pureza la cantidad es otra.',
};
