import { LONGEST_WORDS } from '../text/tokens.ts';
import { CAUSE_IDS, type CauseId } from './cause.ts';
import { CAUSES } from './causes.ts';
import { type Considered, consider, type Known } from './consider.ts';
import { areUntestedSpecks, freeLye, guarded, hurt, mayHoldLye, testedFirst } from './danger.ts';
import type { Diagnosis, Evidence, RankedCause, ReadFinding } from './diagnosis.ts';
import { chanceOfBoth, type Posterior, weigh } from './inference.ts';
import { tellingFindings, worthAsking } from './questions.ts';
import { refuseMetalPowder } from './reading/metal-powder.ts';
import { isSign } from './signs.ts';

/** A cause below this chance is not worth a line. */
const LEAST_SHOWN = 0.02;
/** A verdict needs its first cause at least this likely. */
const VERDICT = 0.4;
/** A contribution below this says nothing. */
const LEAST_WEIGHT = 0.15;
const LOOK_AT = 3;

/** Two causes are told as a pair when both at once are likelier than not, or nearly. */
const TOGETHER = 0.4;

/**
 * Reads a description of a flaw and ranks its causes by probability, with what spoke for and against each.
 * Words longer than 5,000 characters are cut. Throws only the Refusals `metal-never-in-lye` and `metal-and-hurt`,
 * where the words put a metal powder into soap.
 * @example diagnose('orange spots on old bars and a rancid smell').causes[0].id // 'rancidity'
 */
export function diagnose(words: string, known: Known = {}): Diagnosis {
  const considered = consider(words, known);
  const { evidence, posterior } = considered;
  const firstAid = hurt(evidence, words.slice(0, LONGEST_WORDS));
  refuseMetalPowder(words.slice(0, LONGEST_WORDS), firstAid);
  const doNotUse =
    firstAid !== undefined || mayHoldLye(evidence, posterior, { warned: known.warned === true });
  const cantTell = doubt(evidence, posterior);
  const settled = [
    ...evidence.map(item => item.finding),
    ...(known.withdrawn ?? []),
    ...(known.unanswered ?? []),
  ];
  const telling = tellingFindings(posterior, new Set(settled));
  const ask = worthAsking(posterior, telling);
  const causes = rank(considered, { doNotUse, hurts: firstAid !== undefined });
  const together = pairOf(causes, posterior);
  return {
    causes,
    findings: evidence.map(asRead),
    doNotUse,
    freeLye: freeLye(posterior),
    ...(firstAid === undefined ? {} : { firstAid }),
    ...(cantTell === undefined ? {} : { cantTell }),
    ...(together === undefined ? {} : { together }),
    lookAt: telling.slice(0, LOOK_AT).map(item => item.finding),
    ...(ask === undefined ? {} : { ask }),
    batch: considered.batch,
    ...(considered.cut ? { cut: true as const } : {}),
  };
}

type Danger = { readonly doNotUse: boolean; readonly hurts: boolean };

function rank(considered: Considered, danger: Danger): RankedCause[] {
  const { causes } = considered.posterior;
  return CAUSE_IDS.filter(id => causes[id] >= LEAST_SHOWN)
    .sort((a, b) => causes[b] - causes[a])
    .map(id => rankedCause(id, considered, danger));
}

function rankedCause(id: CauseId, { evidence, posterior, wording }: Considered, danger: Danger): RankedCause {
  const weights = evidence.map(item => weigh(item, id));
  const { thisBatch, nextBatch, doNotUse } = CAUSES[id];
  return {
    id,
    probability: posterior.causes[id],
    because: weights.filter(item => item.weight >= LEAST_WEIGHT).sort((a, b) => b.weight - a.weight),
    against: weights.filter(item => item.weight <= -LEAST_WEIGHT).sort((a, b) => a.weight - b.weight),
    wording: wording[CAUSE_IDS.indexOf(id)]!,
    thisBatch: danger.doNotUse
      ? guarded(thisBatch, { split: id === 'separation' && !danger.hurts })
      : areUntestedSpecks(evidence)
        ? testedFirst(thisBatch)
        : thisBatch,
    nextBatch,
    doNotUse,
  };
}

/** The two likeliest causes, where they are likely to be at work together. */
function pairOf([first, second]: readonly RankedCause[], posterior: Posterior): Diagnosis['together'] {
  if (!first || !second) return undefined;
  const probability = chanceOfBoth(posterior, first.id, second.id);
  return probability >= TOGETHER ? { causes: [first.id, second.id], probability } : undefined;
}

const asRead = ({ finding, from, via, probability }: Evidence): ReadFinding => ({
  id: finding,
  from,
  via,
  present: probability > 0.5,
  probability,
});

function doubt(evidence: readonly Evidence[], posterior: Posterior): Diagnosis['cantTell'] {
  const [first = 0, second = 0] = Object.values(posterior.causes).sort((a, b) => b - a);
  if (!evidence.some(item => item.probability > 0.5)) return 'nothing-known';
  const signs = evidence.some(item => item.probability > 0.5 && isSign(item.finding));
  if (first >= VERDICT && signs) return undefined;
  return second > first * 0.8 && first > VERDICT / 2 ? 'evenly-matched' : 'too-little';
}
