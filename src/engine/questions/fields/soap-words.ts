import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

const BAR =
  'soaps?|bars?|batter|loaf|loaves|batch|swirl\\w*|micas?|pigment\\w*|jabon\\w*|jaboncit\\w*|barras?|pastillas?|masa|lote';

/** Words of a bar and of its making, in text without accents: a note that has none tells of no bar. */
export const BAR_WORDS = new RegExp(String.raw`\b(?:${BAR})\b`, 'iu');

/** Words that only soap makers' questions have, those of the bar among them; in text without accents. */
export const OUR_WORDS = new RegExp(
  unbroken`
    \b(?:${BAR}|mezcla|lye|sosa|soda|lejia|naoh|saponif\w*|colou?rante?s?|colou?r\w*|oxid\w*|clay|arcilla|
    trace|traza|mould|mold|molde|superfat|curado|cure)\b
  `,
  'iu',
);

/** Of lye, by any of its names; in text in lower case without accents. */
export const LYE_WORDS =
  /\b(?:lye|caustic\w?|naoh|koh|sosa|soda|lejia|potasa|sodium hydroxide|hidroxido de sodio)\b/u;

/** Whether a text names lye, however it is accented and in whatever capitals. Pure. */
export const namesLye = (text: string): boolean => LYE_WORDS.test(unaccented(text));

/** Words that are of making soap and of no other craft, whatever pigments both share; in text without accents. */
export const SOAP_WORDS = new RegExp(
  unbroken`
    \b(?:soap\w*|jabon\w*|batter|lye|sosa|soda|caustic\w?|lejia|naoh|koh|saponif\w*|trace|traza|superfat|
    lather|suds|espuma|unmou?ld\w*|desmold\w*|cured?|curing|curado|curar|gel(?:led|ling|ifica\w*)?|loaf|
    loaves|batch\w*|lotes?|tandas?|swirls?|masa|mezcla|moldes?|mou?lds?|bars?|barras?|barritas?|pastillas?|
    cp|cold process|proceso frio|tallow|lard|sebo|seiz\w*|ppo)\b
  `,
  'iu',
);
