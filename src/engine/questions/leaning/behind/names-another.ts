import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unaccented } from '../../../text/unaccented.ts';

/* What a turn that hardly tells anything names beside what was asked before. */

/** Whether it names an oil, which is a subject of its own. Pure. */
export const namesOil = (turn: string): boolean =>
  (turn.match(/\p{L}+/gu) ?? []).some(word => knownOil(word) !== undefined);
/** Whether it names an oil or tells a figure, of which near lye a recipe may be changed. Pure. */
export const namesOilOrFigure = (turn: string): boolean => /\d/u.test(turn) || namesOil(turn);

const DENIES = /(?<!\p{L})(?:didn'?t|did not|wasn'?t|isn'?t|not|never|no use|sin|nunca|no)(?!\p{L})/u;
/** Whether it says that something was otherwise. Pure. */
export const saysOtherwise = (turn: string): boolean => DENIES.test(unaccented(turn));

/** Batter that split is a flaw once it is poured: lye may lie under the oil. */
const IS_POURED = /(?<!\p{L})(?:poured|mou?lds?|moldes?|vertid[oa]|verti)(?!\p{L})/u;
/** Whether it tells that soap is poured. Pure. */
export const tellsOfPoured = (turn: string): boolean => IS_POURED.test(unaccented(turn));

const OF_SUDS = /(?<!\p{L})(?:lather|suds|foam|towels?|flannels?|espuma|toallas?)(?!\p{L})/u;
/** Whether it asks of suds or of towels. Pure. */
export const asksOfSuds = (turn: string): boolean => OF_SUDS.test(unaccented(turn));
