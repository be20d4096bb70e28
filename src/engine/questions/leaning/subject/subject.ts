import type { Colourant } from '../../../colourants/colourant.ts';
import { holderOf } from '../../../colourants/holding-hues.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { amountsIn } from '../../found/amounts.ts';
import { thingsIn } from '../../found/names/entities.ts';
import { wordsOf } from '../../found/words-of.ts';
import type { Subject } from './talk-subject.ts';
import { thingOf } from './things.ts';

const SCENT =
  /(?<!\p{L})(?:fragranc\p{L}*|scents?|scented|perfum\p{L}*|esencias?|aromas?|fragancias?|essential oils?|aceites? esencial\p{L}*|fo|fos|eo|eos)(?!\p{L})/u;
/** Longer texts are stories, characters. */
const LONGEST = 300;

/** What a text names that can be spoken of further. */
function namedIn(text: string): Omit<Subject, 'isFresh'> {
  if (text.length > LONGEST) return {};
  const words = wordsOf(text);
  const things = thingsIn(words);
  const colourants = things.filter(one => one.colourants.length > 0);
  const amounts = amountsIn(words, things).filter(({ of }) => of !== 'powder');
  const [portion] = amounts;
  const told = portion && {
    portion:
      portion.of === 'oils' && !/oil|aceite/u.test(portion.text) ? `${portion.text} oils` : portion.text,
  };
  if (colourants.length === 1) return { named: colourants[0]!.text, ...told };
  const hues = words.words.filter(word => holderOf(word) !== undefined);
  if (colourants.length === 0 && new Set(hues).size === 1) return { hue: hues[0]!, ...told };
  return SCENT.test(unaccented(text)) ? { isScent: true, ...told } : { ...told };
}

/** A command that a question was answered with. */
type Commanded = { readonly command: string; readonly given: Readonly<Record<string, string>> };

/** What a command was about. */
function ofCommand({ command, given }: Commanded): Omit<Subject, 'isFresh'> {
  const portion = given.portion === undefined ? {} : { portion: given.portion };
  const named = thingOf({ given });
  if (named !== undefined) return { named, ...portion };
  const hue =
    command === 'match' ? given.target?.split(' ').find(word => holderOf(word) !== undefined) : undefined;
  return hue === undefined ? portion : { hue, ...portion };
}

/** What a talk is about after a turn: what it names, else what was spoken of before. Pure. */
export function subjectAfter(
  earlier: Subject | undefined,
  { text, ran: commanded }: { readonly text: string; readonly ran: Commanded | undefined },
): Subject | undefined {
  const ran = commanded ? ofCommand(commanded) : {};
  const told = namedIn(text);
  const { named, hue, isScent } = 'named' in ran || 'hue' in ran ? ran : { ...told };
  const portion = ran.portion ?? told.portion ?? earlier?.portion;
  const of = portion === undefined ? {} : { portion };
  if (named !== undefined) return { named, ...of, isFresh: true };
  if (hue !== undefined) return { hue, ...of, isFresh: true };
  if (isScent) return { isScent, ...of, isFresh: true };
  return earlier && { ...earlier, ...of, isFresh: false };
}

const SPANISH_HUE =
  /^(?:roj|colorad|azul|verde|amarill|rosa|rosad|morad|blanc|negr|dorad|platead|naranja|violeta|marron|gris|cafe|celeste)/u;
const nameIn = ({ names }: Colourant, hue: string): string =>
  (SPANISH_HUE.test(unaccented(hue)) ? names.es : names.en).toLowerCase();

/** The colourant that a talk is about: the one that was named, or the one that holds of the colour that was. Pure. */
export function colourantOf(subject: Subject | undefined): string | undefined {
  if (subject?.named !== undefined) return subject.named;
  return subject?.hue === undefined ? undefined : holderNamed(subject.hue);
}

/** The name of the colourant that holds of a hue, in the language of the hue. Pure. */
export const holderNamed = (hue: string): string | undefined => {
  const holder = holderOf(hue);
  return holder && nameIn(holder, hue);
};
