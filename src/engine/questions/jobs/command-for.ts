import { barredIn } from '../../hazards/index.ts';
import { unbroken } from '../../over-lines.ts';
import type { Facts } from '../found/facts.ts';
import type { Job } from './jobs.ts';

/** A command and its options as they would be typed. */
export type Command = {
  readonly command: string;
  readonly given: Readonly<Record<string, string>>;
  /** Options that the question does not tell and the command cannot do without. */
  readonly missing: readonly string[];
};

/** Strengths that are shares of full colour in the strengths' own grammar, where a bare percent is one of the oils. */
const strengthText = (strength: string | undefined): string | undefined => {
  if (strength === 'double') return '200% of full';
  if (strength === 'half') return '50% of full';
  return strength !== undefined && /^\d+%$/u.test(strength) ? `${strength} of full` : strength;
};

/** "Take the green oxide off my shelf": with no amount it is the whole jar that goes. */
const OFF_THE_SHELF = new RegExp(
  unbroken`
    \b(?:remove|delete|take|get rid of|drop|clear|quit\p{L}+|sac\p{L}+|borr\p{L}+|
    elimin\p{L}+)\b.*\b(?:shelf|list|inventory|estante\p{L}*|repisa|lista|inventario)\b
  `,
  'iu',
);

/** "Ya se me acabó el ultramar": nothing of the jar is left to be told. */
const RUN_OUT = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:se )?(?:me |nos )?(?:acab[oó]|termin[oó]|gast[oó] tod[oa])|(?:ran|run|am|i['’]?m) (?:all )?out of|
    used up|finished (?:off|the)|used the last|
    (?:is|are|its|it['’]s) (?:now )?(?:empty|all gone|finished|used up)|no queda nada|est[aá] vac[ií][oa]|qued[oó] vac[ií][oa])(?!\p{L})
  `,
  'iu',
);
/** Whether a jar is told to be empty. Pure. */
export const isRunOut = (question: string): boolean => RUN_OUT.test(question);

/** A label has more ingredients than that. */
const LEAST_OF_A_LABEL = 3;

/** What a powder is wetted in, where it is named as a thing: "does glycerin work for mica". */
const IS_CARRIER = /^(?:glycerine?|glycerol|glicerina|water|agua|(?:\p{L}+ )?oil|aceite(?: de \p{L}+)?)$/u;

/** Soap itself, and the selling of it, is no colour whose law is asked. */
const OF_SELLING = /\b(?:sell\w*|soaps?|bars?|vend\w+|jabon(?:es)?|pastillas?)\b/iu;
const subjectOf = (job: Job, { subject }: Facts): string | undefined =>
  job === 'law' && subject !== undefined && OF_SELLING.test(subject) ? undefined : subject;

/** One thing without an amount is looked at as strong as it is told. */
function shownMix({ mix, named, strength, powder }: Facts): string | undefined {
  const isNamed = strength !== undefined && /^(?:tint|pastel|medium|full)$/u.test(strength);
  return isNamed && mix !== undefined && mix === named[0] && named.length === 1 && powder === undefined
    ? `${mix} ${strength}`
    : mix;
}

/** The command that does a job, with what the question tells as its options. */
export function commandFor(job: Job, question: string, facts: Facts): Command {
  const [thing] = facts.named;
  const wanted = (given: Readonly<Record<string, string | undefined>>, needed: readonly string[] = []) => ({
    given: Object.fromEntries(
      Object.entries(given).filter((entry): entry is [string, string] => entry[1] !== undefined),
    ),
    missing: needed.filter(name => given[name] === undefined),
  });
  switch (job) {
    case 'dose':
      return {
        command: 'dose',
        ...wanted(
          {
            colourant: thing,
            portion: facts.portion,
            carrier: facts.carrier,
            strength: strengthText(facts.strength),
          },
          ['colourant', 'portion'],
        ),
      };
    case 'wet':
      return {
        command: 'dose',
        ...wanted(
          {
            colourant: facts.named.find(name => !IS_CARRIER.test(name)),
            portion: facts.portion,
            carrier: facts.carrier ?? facts.named.find(name => IS_CARRIER.test(name)),
          },
          ['colourant'],
        ),
      };
    case 'survives-lye':
    case 'law': {
      // What no catalogue holds is told beside the check of what one does.
      const known = facts.named.filter(name => !facts.plants?.includes(name));
      // A powder that is sold for something else is told of by its label, where that is read out.
      const read = known.filter(name => barredIn(name) === undefined);
      const listed = read.length >= LEAST_OF_A_LABEL ? read : known;
      return listed.length > 1
        ? { command: 'colourant check', ...wanted({ ingredients: listed.join(', ') }) }
        : { command: 'colourant check', ...wanted({ item: thing ?? subjectOf(job, facts) }, ['item']) };
    }
    case 'diagnose':
      return { command: 'diagnose', ...wanted({ words: question.slice(0, 5000).trim() }) };
    case 'mix':
      return {
        command: 'match',
        ...wanted(
          {
            target: facts.target?.text,
            portion: facts.portion,
            from: facts.fromShelf ? 'shelf' : undefined,
            with: facts.onHand?.join(', '),
          },
          ['target'],
        ),
      };
    case 'preview':
      return { command: 'preview', ...wanted({ mix: shownMix(facts), portion: facts.portion }, ['mix']) };
    case 'lye':
      return {
        command: 'plan',
        ...wanted(
          {
            oils: facts.oils,
            // Shares alone tell no amount: how much is told beside them.
            size: facts.oils?.includes('%') ? facts.size : undefined,
            superfat: facts.superfat === undefined ? undefined : String(facts.superfat),
            water: facts.concentration === undefined ? undefined : `${facts.concentration}% lye`,
          },
          ['oils'],
        ),
      };
    case 'plan':
      return {
        command: 'plan',
        ...wanted({ oils: facts.oils, size: facts.size, portions: facts.portions }, ['oils']),
      };
    case 'compare':
      // No strength is known of a plant that no catalogue holds: what lye does to both is told.
      if (facts.plants !== undefined && thing !== undefined)
        return { command: 'colourant check', ...wanted({ item: thing }) };
      return {
        command: 'compare',
        ...wanted({ first: facts.named[0], second: facts.named[1] }, ['first', 'second']),
      };
    case 'shelf-add':
      return { command: 'shelf add', ...wanted({ item: thing, amount: facts.powder }, ['item']) };
    case 'shelf-use':
      if (facts.powder === undefined && (OFF_THE_SHELF.test(question) || isRunOut(question)))
        return { command: 'shelf remove', ...wanted({ item: thing }, ['item']) };
      return { command: 'shelf use', ...wanted({ item: thing, amount: facts.powder }, ['item', 'amount']) };
    case 'shelf-show':
      return thing === undefined
        ? { command: 'shelf list', given: {}, missing: [] }
        : { command: 'shelf show', ...wanted({ item: thing }) };
    case 'challenge':
      return { command: 'challenge list', given: {}, missing: [] };
    case 'doubt':
    case 'help':
      return { command: 'help', given: {}, missing: [] };
  }
}
