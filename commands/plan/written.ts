import { choice, number, text } from '../../src/conversation/option.ts';
import type { WrittenPlan } from '../../src/engine/batch/planning/written-plan.ts';
import type { KeptPlan } from '../../src/records/recipes/index.ts';

export const PROCESSES = {
  ambient: { en: 'On the bench', es: 'Sobre la mesa' },
  insulated: { en: 'Wrapped', es: 'Abrigado' },
  oven: { en: 'Warm oven, switched off', es: 'Horno templado y apagado' },
  fridge: { en: 'Fridge', es: 'Nevera' },
} as const;
export const MATERIALS = {
  silicone: { en: 'Silicone', es: 'Silicona' },
  wood: { en: 'Wood', es: 'Madera' },
  plastic: { en: 'Plastic', es: 'Plástico' },
  cardboard: { en: 'Cardboard', es: 'Cartón' },
} as const;
export const SWIRLS = {
  'in-the-pot': { en: 'In the pot', es: 'En la olla' },
  drop: { en: 'Drop', es: 'A hilo' },
  layered: { en: 'Layered', es: 'En capas' },
  hanger: { en: 'Hanger', es: 'Con percha' },
  single: { en: 'One colour', es: 'Un solo color' },
} as const;

const long = { most: 1500 };

/** What amounts of a plan are read as, in options and forms alike. */
export const READS = { oils: 'oils', size: 'size' } as const;

/** The options that are the plan's own words. */
export const written = {
  oils: text(
    {
      en: 'Oils: “coconut 30%, olive 50%, palm 20%”, or weights',
      es: 'Aceites: «coco 30%, oliva 50%, palma 20%», o pesos',
    },
    { ...long, reads: READS.oils },
  ).optional(),
  size: text(
    {
      en: '“1000 g oils”, “1.2 l batter”, “mould 25x9x7 cm”, “12 x 100 ml”',
      es: '«1000 g de aceites», «1,2 l de masa», «molde 25x9x7 cm», «12 x 100 ml»',
    },
    { reads: READS.size },
  ).optional(),
  superfat: number(
    {
      en: 'Percent of the oils left unsaponified. 5 unless you say',
      es: 'Por ciento de aceites sin saponificar. 5 si no dices nada',
    },
    { least: -100, most: 100 },
  ).optional(),
  lye: text({
    en: 'NaOH, “KOH 90%”, both: “NaOH 95% + KOH 5%”, or ready: “50% lye solution”',
    es: 'NaOH, «KOH 90%», ambas: «NaOH 95% + KOH 5%», o lista: «solución al 50%»',
  }).optional(),
  water: text({
    en: '“33% lye”, “2:1” (water to lye) or “38% of oils”. 33% lye unless you say',
    es: '«33% sosa», «2:1» (agua a álcali) o «38% de aceites». Si no, 33% sosa',
  }).optional(),
  portions: text(
    {
      en: '“2 cups ultramarine blue; 500 ml gold mica pastel in water; rest plain”',
      es: '«2 tazas azul ultramar; 500 ml mica dorada pastel en agua; resto sin color»',
    },
    long,
  ).optional(),
  fragrance: text({
    en: '“3%” of the oils, with “vanillin 8%” if the label says',
    es: '«3%» de los aceites, con «vainillina 8%» si lo dice la etiqueta',
  }).optional(),
  additives: text(
    {
      en: '“honey 10 g, salt 5%, clay 1 Tbsp, citric acid 5 g”',
      es: '«miel 10 g, sal 5%, arcilla 1 cda, ácido cítrico 5 g»',
    },
    { most: 500 },
  ).optional(),
  liquid: text({
    en: 'Instead of water: “goat milk”, “half beer, half water”, “cream 100 g in the oils”',
    es: 'En vez de agua: «leche de cabra», «mitad cerveza», «nata 100 g en los aceites»',
  }).optional(),
  swirl: choice({ en: 'How you pour', es: 'Cómo viertes' }, SWIRLS).optional(),
  process: choice(
    { en: 'Where the loaf spends its first day', es: 'Dónde pasa la barra el primer día' },
    PROCESSES,
  ).optional(),
  material: choice({ en: 'What the mould is made of', es: 'De qué es el molde' }, MATERIALS).optional(),
  start: text({
    en: 'Batter when poured: “38 C”, “100 F”',
    es: 'La masa al verter: «38 C», «100 F»',
  }).optional(),
  room: text({ en: 'The room: “21 C”, “70 F”', es: 'La habitación: «21 C», «70 F»' }).optional(),
  oven: text({
    en: 'The oven before it is switched off: “77 C”',
    es: 'El horno antes de apagarlo: «77 C»',
  }).optional(),
  purity: number(
    {
      en: 'Percent of the lye that is lye, from its label',
      es: 'Por ciento de álcali en la sosa, según la etiqueta',
    },
    { least: 1, most: 100 },
  ).optional(),
  scale: number(
    {
      en: 'What your scale steps in, grams: 0.1 or 1',
      es: 'De cuánto en cuánto va tu báscula, gramos: 0,1 o 1',
    },
    { least: 0.001, most: 10 },
  ).optional(),
  reserve: number(
    {
      en: 'Percent of batter that clings to pot and cups. 2 unless you say',
      es: 'Por ciento de masa que se pega a la olla y los vasos. 2 si no dices',
    },
    { least: 0, most: 100 },
  ).optional(),
};
const WRITTEN = Object.keys(written) as (keyof WrittenPlan)[];

/** The plan's own words among what was given. */
export const wordsGiven = (given: Readonly<Record<string, unknown>>): Partial<WrittenPlan> =>
  Object.fromEntries(WRITTEN.flatMap(key => (given[key] === undefined ? [] : [[key, given[key]]])));

/** Words that are written anew count once, whatever the plan was rescaled by. */
export function changed(plan: KeptPlan, words: Partial<WrittenPlan>, spoons: KeptPlan['spoons']): KeptPlan {
  const sizeless = plan.written.size === undefined && words.oils !== undefined;
  return {
    ...plan,
    written: { ...plan.written, ...words },
    // The cups are those of whoever wrote the portions.
    spoons: words.portions === undefined ? plan.spoons : spoons,
    times: {
      size: words.size !== undefined || sizeless ? 1 : plan.times.size,
      portions: words.portions === undefined ? plan.times.portions : 1,
      additives: words.additives === undefined ? plan.times.additives : 1,
      ...(words.liquid === undefined && plan.times.liquids !== undefined && { liquids: plan.times.liquids }),
    },
  };
}
