import { barredInSentence, batchPartIn, isPoison } from '../../../hazards/index.ts';
import { unbroken } from '../../../over-lines.ts';
import { plantNamed } from '../../../stability/plant-classes.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { isNamedElsewhere, MOST_SURELY_ELSEWHERE } from '../../fields/other-field.ts';
import { outsideField } from '../../fields/scope.ts';
import type { QuestionRead, Reading } from '../../read.ts';
import { BUTTER_YELLOW } from '../names/entities.ts';

/** What is told of a bar that is made, or done on a shelf, names a thing without asking to put it into soap. */
const ELSEWHERE = /^(?:diagnose|shelf|plan|lye|help|challenge)/u;
const OF_SOAP =
  /\b(?:soaps?|batter|lye|cold process|jab[oó]n(?:es)?|masa|sosa|colou?r\w*|te[nñ]ir|dar color|loaf|bars?)\b/iu;
/** Colour goes into baths and candles too. */
const IN_SOAP = /\b(?:soaps?|batter|lye|cold process|jab[oó]n(?:es)?|sosa|loaf)\b/iu;
const MAY =
  /^\W*(?:\w+,? )?(?:how much|can|could|may|should|is|are|will|does|would|puedo|se puede|podr[ií]a|sirven?|vale|cu[aá]nt[oa])\b/iu;
/** A jar beside a batch is to go into it. */
const ENOUGH = /\b(?:enough|suffice|alcanz\w+|suficiente)\b/iu;
/** "1 lb oils pastel" is how much and how strong, and no crayon. */
const OILS_AND_STRENGTH = /\boils,? (?=pastels?\b)/giu;
/** "A soft pastel yellow", "lo quiero soft pastel": how pale, where no stick of it is named. */
const SOFT_PASTEL = /\bsoft pastel\b(?!s| (?:sticks?|chalks?|crayons?|pencils?|set|powder))/giu;
/** "Smells like old crayons", "quede como pintura": what something is likened to is not in it. */
const LIKENED = new RegExp(
  unbroken`
    \b(?:smell\w*|stink\w*|look\w*|hue?l\w*|parece\w*|qued[ae]\w*|sali\w*|salen?|came out|comes out|
    turned out)(?: \p{L}+)? (?:like|of|a|como)(?: \p{L}+){1,2}|
    \b(?:white|blue|red|green|black|pink|yellow|blanc[oa]|azul|roj[oa]|verde|negr[oa]|rosa|amarill[oa])(?: \p{L}+)? (?:like|as|como)(?: \p{L}+){1,2}
  `,
  'giu',
);
/** "Soap and not make-up": what it is told not to be. */
const DENIED =
  /\b(?:(?:and|y|e|but|pero) (?:not|no(?: es)?)|rather than|que no es)(?: (?:a|an|un|una))? \p{L}+/giu;
const SCENT =
  /\b(?:(?:\w+ )?(?:essential|fragrance) oils?|aceites? esencial(?:es)?(?: de \p{L}+)?|vanilla (?:fragrance|extract)|fragancias?(?: de \p{L}+)?)\b/iu;

/**
 * A question for a thing that stays out of soap, or for a scent that lye is asked about, as a check of that thing by its
 * name, whatever else the sentence was read as; undefined where it asks for neither. Pure.
 */
export function staysOut(question: string, read: QuestionRead): Reading | undefined {
  const [reading] = read.readings;
  const dosed = poisonDosed(question);
  if (dosed !== undefined) return checkFor('survives-lye', dosed);
  const forWater = FOR_WATER.test(question) ? SPIRIT.exec(question)?.[0] : undefined;
  const checkOf = (item: string) => checkFor(reading?.job === 'law' ? 'law' : 'survives-lye', item);
  if (forWater !== undefined) return checkOf(forWater);
  const said = question.replace(LIKENED, ' ').replace(DENIED, ' ');
  const barred = barredInSentence(
    said.replace(OILS_AND_STRENGTH, 'oils, as pale as ').replace(SOFT_PASTEL, 'pale'),
  );
  // A plan with a poison among its colours is asked to put it into soap.
  const isPlanned = reading?.job === 'plan' && barred !== undefined && isPoison(barred);
  const isElsewhere =
    reading !== undefined &&
    ELSEWHERE.test(reading.job) &&
    !isPlanned &&
    !MAY.test(question) &&
    !ENOUGH.test(question);
  const isOnlyNamed = barred !== undefined && isNothingBut(barred, question);
  if (
    isElsewhere ||
    (read.outside !== undefined &&
      !isOnlyNamed &&
      !isAskedOf(barred, question) &&
      !(isNamedElsewhere(read) || read.elsewhere >= MOST_SURELY_ELSEWHERE ? IN_SOAP : OF_SOAP).test(question))
  )
    return undefined;
  if (barred !== undefined)
    return isReadOut(barred, read) || isHueOfAnother(barred, read) ? undefined : checkOf(barred);
  const pressed = pressedOf(question, read);
  if (pressed !== undefined) return checkOf(pressed);
  const spirit = OF_SOAP.test(question) && MAY.test(question) ? SPIRIT.exec(question)?.[0] : undefined;
  if (spirit !== undefined && read.facts.named.length < 2 && !/wine|beer|vino|cerveza/iu.test(question))
    return checkOf(spirit);
  const { item } = reading?.given ?? {};
  const isOfNothing = reading?.command === 'colourant check' && read.facts.named.length === 0;
  const scent = isOfNothing ? SCENT.exec(question)?.[0] : undefined;
  const isKnown = typeof item === 'string' && batchPartIn(item) === 'scent';
  return scent === undefined || isKnown ? undefined : checkOf(scent);
}

/** "A soft butter yellow; I have yellow oxide": a hue of every shade card, beside what is to make it. */
const isHueOfAnother = (barred: string, { facts: { named } }: QuestionRead): boolean =>
  BUTTER_YELLOW.test(barred) && named.some(name => !BUTTER_YELLOW.test(name));

/** A label has more ingredients than that. */
const LEAST_READ_OUT = 3;
/** A kitchen colour whose label is read out, its dye by name or number: that label tells what lye does to it, and nothing on it stays out. */
const isReadOut = (barred: string, { facts: { named }, readings: [reading] }: QuestionRead): boolean =>
  reading?.given.ingredients !== undefined &&
  named.filter(name => barredInSentence(name) === undefined).length >= LEAST_READ_OUT &&
  !isPoison(barred) &&
  named.every(name => [undefined, barred].includes(barredInSentence(name)));

/** True of a few words that are names of what stays out of soap and nothing else: "red lead", "cinnabar, vermilion pigment". */
function isNothingBut(barred: string, question: string): boolean {
  const rest = unaccented(question)
    .replace(barred, ' ')
    .replace(/\b(?:pigments?|powder|pigmento|polvo|vermill?ion|bermellon)\b|\P{L}+/gu, ' ')
    .trim();
  return rest === '' || (rest.split(' ').length < 3 && barredInSentence(rest) !== undefined);
}

const HOW_MUCH = /\b(?:how much|how many|cu[aá]nt[oa]s?)\b/iu;
/** Longer sentences are about more than one thing. */
const SHORT = 8;
const ALLOWED =
  /\b(?:ok(?:ay)?|safe|work|same|good|use|put|crush|sirven?|valen?|poner(?:le)?|usar|puedo|igual)\b/iu;

/** "Food colouring gel, the sort for icing, will it keep": what becomes of it is asked, and which kind it is is told. */
const FATE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:will|does|would|do) (?:it|they|this|that) (?:keep|hold|stay|last|survive|fade|stand|
    work)|(?:se )?(?:aguantar?[aá]?n?|mantendr?[aá]?n?|mantienen?|sobreviv\p{L}+|dura(?:r[aá])?n?|destiñen?|
    sirven?))(?!\p{L})
  `,
  'iu',
);
const EATEN = new RegExp(
  unbroken`
    (?<!\p{L})(?:fridge|freezer|bak(?:e|ed|ing)|cook(?:ed|ing)?|expir\p{L}+|out of date|nevera|heladera|
    congelador|hornear|horno|caduc\p{L}+|venc(?:e|io|ido))(?!\p{L})
  `,
  'iu',
);

/** Whether a few words ask no more than whether a thing that stays out of soap may go in, though it is named after another craft. */
function isAskedOf(barred: string | undefined, question: string): boolean {
  if (barred !== undefined && FATE.test(question) && !EATEN.test(question) && !HOW_MUCH.test(question))
    return true;
  if (barred === undefined || !(MAY.test(question) || ALLOWED.test(question))) return false;
  // Colour for nail varnish or resin is asked of, and how much a glaze takes: neither goes into soap.
  if (
    HOW_MUCH.test(question) ||
    new RegExp(String.raw`\b(?:in|into|for|to|en|para|al?)\b[^.]*${barred}`, 'iu').test(unaccented(question))
  )
    return false;
  const rest = unaccented(question).replace(barred, ' ');
  return rest.split(/\s+/u).length <= SHORT && outsideField(rest) === undefined;
}

/** "How much vermilion for 12 bars": a poison, also by a name that is a mere hue's elsewhere, with what it is to go into. */
const DOSED = new RegExp(
  unbroken`
    (?:^|\b(?:how much|how many|dose of|cu[aá]nt[oa]|dosis de|use|put|add|usar|poner|echar)\s)(?:of |de |
    some |the |el )?((?:\p{L}+ )?\p{L}+)(?: (?:powder|pigment|en polvo|molido))?,? (?:for|in|into|per|to|
    para|en|por|con)\s(?=.*\b(?:bars?|batter|batch|soaps?|loaf|oils?|pastillas?|jab[oó]n(?:es)?|masa|aceites?|
    lote)\b)
  `,
  'iu',
);
const OF_METAL_BARS = /\b(?:iron|steel|copper|gold|lead|chocolate|snack|handle) bars?\b/iu;

function poisonDosed(question: string): string | undefined {
  const name = OF_METAL_BARS.test(question) ? undefined : DOSED.exec(question)?.[1];
  if (name === undefined) return undefined;
  const found = [name, name.split(' ').at(-1)!].find(one => isPoison(one));
  return found === undefined || /\b(?:mica|oxide|[oó]xido|lake|laca)\b/iu.test(name) ? undefined : found;
}

/** Whatever the sentence is taken for, a spirit for the water is one. */
const FOR_WATER = /\b(?:instead of|in place of|en (?:vez|lugar) de(?:l)?) (?:the )?(?:water|agua)\b/iu;
const SPIRIT = new RegExp(
  unbroken`
    \b(?:rubbing alcohol|isopropyl alcohol|alcohol isoprop[ií]lico|alcohol|vodka|rum|gin|whisk(?:e?y)|
    tequila|mezcal|aguardiente|hydrogen peroxide|agua oxigenada)\b
  `,
  'iu',
);

/** A colour's plant as a juice, a tea or an oil is that, and no powder to be dosed by the spoon. */
function pressedOf(
  question: string,
  { facts: { named }, readings: [reading] }: QuestionRead,
): string | undefined {
  if (reading === undefined || !/^(?:colourant check|dose)$/u.test(reading.command)) return undefined;
  // What lye does to the juice of a plant that is listed is told by what colours it.
  const isTold = (name: string) => reading.job === 'survives-lye' && plantNamed(name) !== undefined;
  return named
    .filter(name => !isTold(name))
    .map(name => {
      const plain = name.replace(/[^\p{L}\p{N} ]/gu, '.');
      return new RegExp(
        `\\b${plain}(?:root)? (?:juice|water|milk|wine|syrup|vinegar|extract)\\b|\\b(?:zumo|jugo|agua|leche|vino|jarabe|extracto) de ${plain}\\b`,
        'iu',
      ).exec(question)?.[0];
    })
    .find(found => found !== undefined);
}

/** Who asks whether it is allowed is told what of it is, by the same check. */
const checkFor = (job: 'law' | 'survives-lye', item: string): Reading => ({
  job,
  score: 1,
  command: 'colourant check',
  given: { item },
  missing: [],
});
