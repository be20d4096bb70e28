/**
 * What tells of an emergency, in the grammar of `flaws/reading/pattern.ts`: ideas of the lexicon parted by blanks, all
 * within `~N` of the first on the ruler of reading distance (a sentence end is 4); `a|b` either; `!a` not within 4.
 * Wider windows where the first idea alone says most.
 */
const SCENE_PATTERNS = {
  swallowed: [
    'swallow caustic|raw ~14 !fume',
    'swallow making mouth|drool|hurts ~26 !fume',
    'taste raw|caustic people|drool|hurts|mouth ~16',
    'taste making drool|hurts|swallow ~14',
    'mouth caustic|raw drool|hurts ~22 !fume !cough',
    'mouth contact caustic|raw ~12 !fume !cough',
    'drool caustic|raw mouth|taste|swallow|mine ~30',
    "swallow 'soap|'jabon ~6 !fume",
    "taste 'soap|'jabon mine ~9",
    'mouth grain contact|taste ~12',
    'swallow grain ~8',
    'drool caustic ~16',
    'mouth making drool|hurts ~40 !fume !cough',
    'mouth caustic|raw hurts|drool ~40 !fume !cough',
  ],
  eye: [
    'eye caustic|raw contact ~16',
    'eye caustic|raw hurts|itch|sore|blind ~18',
    'eye making contact hurts|blind|sore ~30',
    'eye contact hurts|blind ~12',
    'eye making blind ~30',
    'eye caustic ~5',
    'eye contact making ~7',
    'eye contact raw|caustic ~40',
    "eye 'soap|'jabon|'shampoo|'champu itch|sore ~8",
    'eye grain contact ~16',
    'eye caustic|raw ~9',
    'eye raw|caustic hurts|blind|contact ~40',
    'specs behind caustic ~10',
  ],
  fumes: [
    'fume breathe|cough caustic|making ~40',
    'cough caustic ~14',
    'breathe fume ~8',
    'cough fume ~12',
    'breathe caustic cough|hurts ~16',
  ],
  sulphide: ['rotten !yolk', 'ultramarine acid fume|cough|erupt ~24'],
  metal: [
    'alu fizz caustic|raw ~30',
    'alu fizz making ~20',
    'alu caustic help ~24',
    'alu raw help ~20',
    'alu seethe seethe ~24',
    'ware fizz caustic ~14',
    'alu caustic ~6',
  ],
  eruption: [
    'wateronlye pour ~8',
    'erupt caustic|vessel ~14',
    'erupt caustic|vessel help|pour|seethe ~40',
    'caustic seethe seethe ~14',
    'vessel seethe seethe ~10',
    'caustic seethe help ~9',
  ],
  skin: [
    'body caustic|raw contact ~14',
    'body caustic|raw hurts ~16',
    'body vessel contact hurts ~16',
    'body caustic hurts|contact ~26',
    'lyeburn',
    'caustic hurts ~1.6',
    "'chemical hurts ~2",
    'body caustic hurts ~40',
    'body raw hurts ~30',
    'body caustic contact ~30',
    'body hurts making contact people ~20',
  ],
  animal: [
    'animal beast caustic|raw ~24',
    'animal beast making ~16',
    'animal caustic help ~14',
    'animal drool making ~26',
  ],
  rash: [
    'rash used|making ~40',
    'itch body|used making ~24',
    'sore body used ~12',
    'sore body making itch|used|help ~16',
  ],
} as const;

/** What a text can show; {@link readEmergencies} makes emergencies of it. */
export type Scene = keyof typeof SCENE_PATTERNS;

/** Each scene's patterns as `compileOver` reads them. */
export const SCENES = Object.fromEntries(
  Object.entries(SCENE_PATTERNS).map(([scene, patterns]) => [scene, patterns.join('; ')]),
) as { readonly [One in Scene]: string };
