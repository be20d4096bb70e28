import { unbroken } from '../../../../over-lines.ts';
import type { Item, Name } from '../items/item.ts';
import { isMeasure, isName, isOil, type Part, partsOf } from '../settling/parts.ts';
import { same } from '../state.ts';
import { absenceIn, isHarmlessBesideOil, NO_ABSENCE } from './beside-oils.ts';
import { HARMLESS_PHRASES } from './harmless-phrases.ts';
import { apart } from './vessels.ts';

/** Oils that may not be in the pot, or not all of them, and the words that leave it open. */
export type Doubt = { readonly names: readonly Name[]; readonly text: string };

/** Stands for amounts, names and what the grammar read, and for lye. */
const [READ, LYE] = ['#', '@'];
/** "My nan's recipe:". */
const [RECIPE, OF_PAPER] = ['recipe', /recipe|book|card|note|receta|libro|ficha|nota/u];
const spoken = (items: readonly Item[]): string =>
  items
    .map((item, at) =>
      // What is left away may be told in any word.
      items[at - 1]?.is !== 'without' &&
      (item.is === 'word' || item.is === 'link' || item.is === 'joint' || item.is === 'mark')
        ? item.text
        : isName(item) && item.known === 'lye'
          ? LYE
          : item.is === 'planned' && OF_PAPER.test(item.text)
            ? RECIPE
            : READ,
    )
    .join(' ');

/** What a colon closes is a heading. */
const HEAD = /^[^#]*:/u;

/** "300 g coconut my mate has": who tells of another behind an amount tells of none that is in the pot. */
function another(items: readonly Item[]): string | undefined {
  const oil = items.findIndex(isOil);
  const at = items.findIndex((item, place) => item.is === 'planned' && place > oil);
  return oil !== -1 && at !== -1 && items.slice(0, at).some(isMeasure) && !items.slice(at).some(isMeasure)
    ? items[at]!.text
    : undefined;
}

/** Words of the clause of an oil that are not known to leave it in the pot. */
function strangeIn({ items }: Part): readonly string[] {
  const planned = another(items);
  if (planned !== undefined) return [planned];
  const plain = HARMLESS_PHRASES.reduce(
    (said, phrase) => said.replace(phrase, READ),
    spoken(items).replace(HEAD, READ).replace(NO_ABSENCE, READ),
  );
  return plain
    .split(/[^\p{L}'’-]+/u)
    .map(word => word.replace(/^['’-]+|['’-]+$/gu, ''))
    .filter(word => word !== '' && !isHarmlessBesideOil(word));
}

/** What may stand between a denial and what was not done. */
const BETWEEN = /^(?:he|ha|hemos|han|le|les|lo|la|los|las|me|se|nos|to|be|been|even|it|them)$/u;
/** Putting an oil into the pot. */
const PUT_IN = new RegExp(
  unbroken`
    ^(?:add|added|put|pour|poured|use|used|mix|mixed|tip|tipped|melt|melted|in|go|going|went|included?|
    echad[oa]|eche|echo|echamos|puest[oa]|puse|pongo|pusimos|us[eo]|usad[oa]|usamos|agregu?[eo]|agregad[oa]|
    anad[io]|anadid[oa]|met[io]|metid[oa]|vert[io]|vertid[oa]|va|van|lleva|entra)$
  `,
  'u',
);

/** "200 g de coco que no he echado", "that I did not add": it is denied that an oil went in, and nothing else is named that stays out. */
function deniedIn(items: readonly Item[]): string | undefined {
  const oil = items.findIndex(isOil);
  for (const [at, item] of items.entries()) {
    if (at < oil || (item.is !== 'not' && item.is !== 'without')) continue;
    const rest = items.slice(at + 1);
    const verb = rest.find(one => !('text' in one && BETWEEN.test(one.text)));
    if ((verb?.is === 'word' || verb?.is === 'actual') && PUT_IN.test(verb.text) && !rest.some(isName))
      return verb.text;
  }
  return undefined;
}

/**
 * The oils of a line whose clause has a word that is not known to leave them in the pot, or whose sentence says that something is not
 * in yet: "200 g coconut that I borrowed". What keeps an oil out has no end of words, so that the harmless ones are known instead.
 * Undefined where every oil is surely in. Takes the items of a line, from where the recipe that counts begins, and the oils that count.
 * Pure.
 */
export function doubtOfOil(items: readonly Item[], counted: readonly Name[]): Doubt | undefined {
  const isCounted = (one: Item | undefined): one is Name =>
    isOil(one) && counted.some(name => same(name, one));
  // What is said of an oil that was left away or taken out again is of none in the pot.
  const parts = partsOf(items).filter(part => !part.items.some(isOil) || part.items.some(isCounted));
  const names: Name[] = [];
  const words: string[] = [];
  const doubt = (some: readonly Name[], said: string) => {
    names.push(...some.filter(one => names.every(other => !same(one, other))));
    words.push(...said.split(' ').filter(word => !words.includes(word)));
  };
  const elsewhere = apart(parts);
  if (elsewhere) doubt([elsewhere.name], elsewhere.text);
  for (const part of parts) {
    const oils = part.items.filter(isCounted);
    if (oils.length === 0) continue;
    const strange = strangeIn(part);
    if (strange.length > 0) doubt(oils, strange.join(' '));
    const denied = deniedIn(part.items);
    if (denied !== undefined) doubt(oils, denied);
    const sentence = parts.filter(one => one.sentence === part.sentence && !isQuestion(one));
    for (const { items: said } of sentence) {
      const open = absenceIn(spoken(said));
      if (open === undefined) continue;
      // The oil of which it is said, where one is named beside it; else any of the sentence.
      const own = said.filter(isCounted);
      doubt(own.length > 0 ? own : sentence.flatMap(one => one.items.filter(isCounted)), open);
    }
  }
  return names.length === 0 ? undefined : { names, text: words.join(' ') };
}

/** A clause without any part of the recipe that asks for something. */
const isQuestion = ({ items }: Part): boolean =>
  items.some(({ is }) => is === 'asks') &&
  !items.some(item => isMeasure(item) || (isName(item) && item.known === 'oil'));
