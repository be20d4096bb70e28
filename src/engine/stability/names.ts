import { groupedBy } from '../grouped.ts';
import { fold, foldedWords, wordSet, wordSetOf } from '../text/fold.ts';
import { MapWhenAsked, whenAsked } from '../when-asked.ts';
import { substanceById, substances } from './substances/index.ts';
import type { Substance } from './substances/substance.ts';

function indexBy(keysOf: (substance: Substance) => readonly string[]): ReadonlyMap<string, Substance> {
  const index = new Map<string, Substance>();
  for (const substance of substances) {
    for (const key of keysOf(substance)) if (key !== '' && !index.has(key)) index.set(key, substance);
  }
  return index;
}

const byName = whenAsked(() => indexBy(({ names }) => names.map(fold)));
const byWords = whenAsked(() => indexBy(({ names }) => names.map(wordSet)));
const byNumber = indexBy(({ ci }) => (ci.length === 1 ? ci : []));
const byAnyNumber = indexBy(({ ci }) => ci);
const byE = indexBy(({ e }) => e ?? []);

/** Words that describe a grade or a plant part, not what the ingredient is. */
const gradeWords = new Set(
  `non nano cosmetic grade organic bio natural naturally certified pharma usp ep pure micronised micronized ultrafine fine ground coated treated
  uncoated untreated dispersible soluble hydrophobic hydrophilic synthetic nature derived identical ecocert
  cosmetico cosmetica natural puro organico ecologico raw
  pearl pearlescent effect matte matt`.split(/\s+/),
);
const plantParts = new Set(
  `root leaf seed flower fruit stem wood bark peel hull husk petal shell extract bulb rhizome plant whole dried raiz hoja semilla flor fruto extracto
  racine feuille graine fleur extrait wurzel blatt samen radice foglia seme fiore estratto raiz folha semente`.split(
    /\s+/,
  ),
);

/** Shades of certified colours in the languages of labels. */
const shades: ReadonlyMap<string, string> = new Map(
  Object.entries({
    red: 'red rojo rouge rot rosso vermelho',
    orange: 'orange naranja arancio arancione laranja',
    yellow: 'yellow amarillo jaune gelb giallo amarelo',
    green: 'green verde vert grun',
    blue: 'blue azul bleu blau blu',
    violet: 'violet violeta violett viola purple',
    black: 'black negro noir schwarz nero preto',
  }).flatMap(([shade, words]) => words.split(' ').map(word => [word, shade] as const)),
);
const lakeWords = new Set('lake laca laque lack lacca farblack verlackt toner'.split(' '));
const certifiedWords = new Set(
  `f fd d c fdc dc fdandc fdand no nr n num number numero ext al aluminium aluminio alluminio barium bario
  calcium calcio zirconium circonio strontium talc talco
  sodium ca ba zr sr of de du di dye colour colourant colorante certified pigment cosmetic`.split(/\s+/),
);

/**
 * The certified US colour a text names, as dye or as lake: "D&C Red No. 30 Aluminum Lake", "Red40", "FD&C Blue #1",
 * "Laca Rojo 40". Undefined when a word is left that such a name does not hold.
 */
function certified(folded: readonly string[]): Substance | undefined {
  // Every such name has a number, and hardly any other text.
  if (!folded.some(word => /\d/.test(word))) return undefined;
  const words = folded.flatMap(word => word.replace(/([a-z])(?=\d)/g, '$1 ').split(' '));
  if (words.length > 12) return undefined;
  const named = words.filter(word => shades.has(word));
  const numbers = words.filter(word => /^\d{1,2}$/.test(word));
  const others = words.filter(word => !shades.has(word) && !/^\d{1,2}$/.test(word));
  const [shade = ''] = named;
  if (named.length !== 1 || numbers.length !== 1) return undefined;
  if (!others.every(word => certifiedWords.has(word) || lakeWords.has(word))) return undefined;
  const key = `${shades.get(shade) ?? ''}-${numbers[0] ?? ''}`;
  if (key === 'black-2') return substanceById('carbon-black');
  if (key === 'black-3') return substanceById('bone-black');
  const dye = others.includes('ext') ? `ext-${key}` : key;
  return substanceById(others.some(word => lakeWords.has(word)) ? `${dye}-lake` : dye);
}

const without = (words: readonly string[], drop: ReadonlySet<string>): string =>
  words.filter(word => !drop.has(word)).join(' ');

/** The substance a name means, exactly but for accents, spelling, word order, grade words and plant parts. */
export function substanceNamed(text: string): Substance | undefined {
  const words = foldedWords(text);
  if (words.length === 0 || words.length > 16) return undefined;
  const exact = byName().get(words.join(' ')) ?? certified(words) ?? byWords().get(wordSetOf(words));
  if (exact !== undefined) return exact;
  const ungraded = without(words, gradeWords);
  const base = without(ungraded.split(' '), plantParts);
  return (
    byWords().get(wordSet(ungraded)) ??
    certified(foldedWords(ungraded)) ??
    (/\boil\b/.test(text) ? undefined : byWords().get(wordSet(base)))
  );
}

/** The substance with a Colour Index number; `19140:1` and the like are the lakes of dyes. */
export function substanceNumbered(number: string): Substance | undefined {
  const own = byNumber.get(number) ?? byAnyNumber.get(number);
  if (own !== undefined || !number.includes(':')) return own;
  const base = byNumber.get(number.split(':')[0] ?? '');
  return base === undefined ? undefined : (substanceById(`${base.id}-lake`) ?? base);
}

/** The substance with an E number, written without the E. */
export const substanceWithE = (number: string): Substance | undefined =>
  byE.get(number) ?? byE.get(number.slice(0, 3));

/** Every name there is, folded, by its length: what a misspelt name is compared with. Names with digits are not guessed at. */
export const namesByLength: ReadonlyMap<number, readonly (readonly [string, Substance])[]> = new MapWhenAsked(
  () =>
    groupedBy(
      [...byName()].filter(([name]) => !/\d/.test(name)),
      ([name]) => name.length,
    ),
);
