import type { Block, Caution, FoldId } from '../../src/conversation/reply.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { type BatchNumbers, numbersFor, type RemedyNumber } from '../../src/engine/flaws/batch-numbers.ts';
import type { CauseId } from '../../src/engine/flaws/cause.ts';
import type { Diagnosis, RankedCause, Weight } from '../../src/engine/flaws/diagnosis.ts';
import type { RemedyId } from '../../src/engine/flaws/remedies.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { capital } from '../../src/engine/text/capital.ts';
import { spoonedOut } from '../../src/presenting/spoons.ts';
import type { Words } from '../../src/words/index.ts';

/** Causes that are shown with their reasons, and the least chance of one; the rest would only blur the picture. */
const SHOWN = 3;
const WORTH_SHOWING = 0.1;
const REASONS = 3;
/** Percent of free lye from which the number itself is worth saying. */
const LYE_PERCENT = 15;

/** The first line: first aid before anything, then that nothing can be told, then the likeliest cause or two. */
export function flawHeadline(diagnosis: Diagnosis, say: Words): string {
  const { firstAid, cantTell, doNotUse } = diagnosis;
  if (firstAid) return say.flaws.firstAid[firstAid];
  if (leadsByLye(diagnosis)) return say.flaws.lyeFirst({ percent: percent(diagnosis.freeLye) });
  if (cantTell) return say.flaws.cantTell[cantTell];
  if (!doNotUse) return verdict(diagnosis, say);
  const lye = diagnosis.causes[0]?.doNotUse;
  return `${lye ? say.flaws.dontUse : say.flaws.dontUseYet} ${verdict(diagnosis, say)}`;
}

/** What else the bar has comes after lye that is as likely as not. */
const LYE_LEADS = 0.5;
/** Liquid in the pockets of a bar may be lye: there a third is enough. Chosen for caution, not measured. */
const LYE_LEADS_IN_LIQUID = 0.3;
const leadsByLye = ({ causes, findings, freeLye, doNotUse }: Diagnosis): boolean => {
  const holdsLiquid = findings.some(({ id, present }) => id === 'liquid-pockets' && present);
  return (
    doNotUse && freeLye >= (holdsLiquid ? LYE_LEADS_IN_LIQUID : LYE_LEADS) && causes[0]?.doNotUse !== true
  );
};

function verdict({ causes, together }: Diagnosis, say: Words): string {
  const [first] = causes;
  if (together) {
    const [one, other] = together.causes;
    return say.flaws.together({
      first: say.flaws.causes[one].name,
      second: say.flaws.causes[other].name,
      percent: percent(together.probability),
    });
  }
  return first ? ranked(first, say) : say.flaws.cantTell['nothing-known'];
}

/** The words a maker reads, and the spoons they own. */
export type Bench = { readonly measures: Pick<Measures, 'owned'>; readonly say: Words };

/** The warning, what happened, and what to do with this batch and the next. */
export function flawAdvice(diagnosis: Diagnosis, bench: Bench): readonly Block[] {
  const { say } = bench;
  const { causes, cantTell, firstAid, together, batch } = diagnosis;
  const warning =
    leadsByLye(diagnosis) && !firstAid ? [firm(say.flaws.doNotUse)] : lyeWarning(diagnosis, say);
  if (cantTell && !firstAid)
    return leadsByLye(diagnosis) ? [...warning, text(say.flaws.cantTell[cantTell])] : warning;
  const told = causes.slice(0, together ? 2 : 1);
  const now = each(told, ({ thisBatch }) => thisBatch);
  const next = each(told, ({ nextBatch }) => nextBatch).filter(id => !now.includes(id));
  const unsure =
    firstAid && cantTell && cantTell !== 'nothing-known' ? [text(say.flaws.cantTell[cantTell])] : [];
  return [
    ...warning,
    ...unsure,
    ...((firstAid || leadsByLye(diagnosis)) && !cantTell ? [text(verdict(diagnosis, say))] : []),
    ...(cantTell ? [] : told.map(({ id }) => text(why(id, told.length > 1, say)))),
    rows(
      say.flaws.thisBatch,
      now.map(id => say.flaws.remedies[id]),
    ),
    ...(cantTell ? [] : [inFold('steps', rows(say.flaws.nextBatch, remedies(next, batch, bench)))]),
  ].filter(block => block.kind !== 'rows' || block.rows.length > 0);
}

/** What happened, headed by the cause's name where there are two. */
function why(id: CauseId, several: boolean, say: Words): string {
  const { name, why: sentence } = say.flaws.causes[id];
  return several ? `${capital(name)}: ${sentence}` : sentence;
}

/** Remedies of every cause told, each once. */
const each = (
  causes: readonly RankedCause[],
  of: (cause: RankedCause) => readonly RemedyId[],
): RemedyId[] => [...new Set(causes.flatMap(of))];

function lyeWarning({ doNotUse, freeLye }: Diagnosis, say: Words): readonly Block[] {
  if (!doNotUse) return [];
  const chance = percent(freeLye);
  return [firm(chance >= LYE_PERCENT ? say.flaws.mayHoldLye({ percent: chance }) : say.flaws.doNotUse)];
}

/** Which causes there are, and what spoke for and against each, by whose word. */
export function flawReasons(diagnosis: Diagnosis, say: Words): readonly Block[] {
  const { causes, cantTell, cut } = diagnosis;
  const shown = causes.slice(0, SHOWN).filter(({ probability }) => probability >= WORTH_SHOWING);
  const unread = cut ? [text(say.flaws.cut)] : [];
  if (cantTell === 'nothing-known') return unread;
  if (cantTell) {
    const lines = shown.map(cause => ranked(cause, say));
    return [...(lines.length > 0 ? [rows(say.flaws.maybe, lines)] : []), ...unread];
  }
  const told = shown.map(cause => rows(ranked(cause, say), reasons(cause, diagnosis, say)));
  return [...told.map(block => inFold('why', block)), ...unread];
}

/**
 * Lye in unknown excess is a caution of its own; a bar that crumbles may hold some whatever comes first, and is cut and
 * grated by the advice of its cause.
 */
export function flawCautions({ doNotUse, findings }: Diagnosis, say: Words): readonly Caution[] {
  if (doNotUse) return [{ id: 'do-not-use', text: say.flaws.doNotUse, firm: true }];
  const crumbles = findings.some(({ id, present }) => id === 'brittle-crumbly' && present);
  return crumbles ? [{ id: 'may-be-lye-heavy', text: say.flaws.crumbly, firm: true }] : [];
}

const percent = (probability: number): number => Math.min(99, Math.round(probability * 100));

const ranked = ({ id, probability }: RankedCause, say: Words): string =>
  say.flaws.ranked({ name: say.flaws.causes[id].name, percent: percent(probability) });

const firm = (line: string): Block => ({ kind: 'text', text: line, firm: true });

const inFold = (fold: FoldId, block: Block): Block => ({ ...block, fold });

const text = (line: string): Block => ({ kind: 'text', text: line });

const rows = (title: string, lines: readonly string[]): Block & { kind: 'rows' } => ({
  kind: 'rows',
  ...(title && { title }),
  rows: lines,
});

function reasons(cause: RankedCause, diagnosis: Diagnosis, say: Words): readonly string[] {
  const { findings, together, causes } = diagnosis;
  // What the one of two causes explains does not speak against the other.
  const explained = new Set(
    together?.causes.includes(cause.id)
      ? causes
          .filter(({ id }) => together.causes.includes(id))
          .flatMap(({ because }) => because.map(({ finding }) => finding))
      : [],
  );
  const told = (weights: readonly Weight[]) => {
    const each = [...Map.groupBy(weights, ({ finding }) => finding)].slice(0, REASONS);
    const byWitness = Map.groupBy(each, ([, all]) =>
      [...new Set(all.map(({ via }) => say.flaws.via[via]))].join(', '),
    );
    return [...byWitness].map(([witnesses, list]) => {
      const named = list.map(([finding, all]) => {
        const seen = findings.find(one => one.id === finding && all.some(({ via }) => via === one.via));
        const name = say.flaws.findings[finding];
        const there = seen?.present !== false;
        return { there, name: there ? name : say.flaws.notThere({ finding: name }) };
      });
      // What is there comes first: "no sign of this, that" would deny both.
      const names = named.toSorted((a, b) => Number(b.there) - Number(a.there)).map(({ name }) => name);
      return say.flaws.seenBy({ findings: names.join(', '), witnesses });
    });
  };
  const line = (title: string, names: readonly string[]) =>
    names.length > 0 ? [`${title}: ${names.join('; ')}`] : [];
  return [
    ...line(say.flaws.because, told(cause.because)),
    ...line(say.flaws.against, told(cause.against.filter(({ finding }) => !explained.has(finding)))),
  ];
}

/** Remedies, each with the numbers of this batch that make it plain; no number twice. */
function remedies(ids: readonly RemedyId[], batch: BatchNumbers, bench: Bench): readonly string[] {
  const { say } = bench;
  const told = new Set<string>();
  return ids.map(id => {
    const lines = numbersFor(id, batch).map(one => numberLine(one, bench));
    const fresh = lines.filter(line => !told.has(line));
    for (const line of fresh) told.add(line);
    return [say.flaws.remedies[id], ...fresh].join(' ');
  });
}

function numberLine(number: RemedyNumber, { measures, say }: Bench): string {
  const words = say.flaws.numbers;
  switch (number.id) {
    case 'rate': {
      const { portion, colourant, perCup, full, most, timesKind } = number.rate;
      const spoons = (value: number) => say.quantities.measure(practicalSpoons(value));
      const name = colourantById(colourant)?.names[say.language] ?? colourant;
      return words.rate({
        portion,
        name,
        had: spoons(perCup),
        full: spoonedOut(full, measures, say),
        most: spoons(most),
        learnt: timesKind !== undefined,
      });
    }
    case 'lever': {
      const { id, to = 0, peakCoreC, gelChance } = number.lever;
      return say.heat.lever({ id, to, peakC: peakCoreC, gelChance });
    }
    case 'carrier':
      return words.carrier(number);
    case 'water':
      return words.water(number);
    case 'superfat':
      return words.superfat(number);
    case 'heat':
      return words.heat(number);
  }
}
