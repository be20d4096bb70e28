import type { Block, Caution } from '../conversation/reply.ts';
import { readKeptStrength } from '../engine/quantities/strength.ts';
import { type Posterior, posterior, type ResultCounts } from '../engine/stability/evidence.ts';
import { chemistryOf, identified } from '../engine/stability/identity.ts';
import { type Evidence, processes, type ReportView, tally } from '../records/evidence/index.ts';
import type { Words } from '../words/index.ts';
import { nameOf } from './dose.ts';

/** The name of a colour in the middle of a sentence, from what reports on it are filed under. */
export function identityName(identity: string, say: Words): string {
  const found = identified(identity);
  if ('colourant' in found) return nameOf(found.colourant, say);
  const names = found.names.join(' + ');
  return found.unknown === '' ? names : say.evidence.unknownPart({ names, unknown: found.unknown });
}

/** Reports on a colour as numbers: counts, and what the chemistry makes of them. */
export type Weighed = {
  readonly counts: ResultCounts;
  readonly elsewhere: ResultCounts;
  readonly posterior: Posterior;
};

/** Weighs reports, those of sharing groups included, against the chemistry's prior. */
export function weigh(identity: string, { here, elsewhere }: Evidence): Weighed {
  const counts = tally(here);
  const both = {
    held: counts.held + elsewhere.held,
    shifted: counts.shifted + elsewhere.shifted,
    faded: counts.faded + elsewhere.faded,
    bled: counts.bled + elsewhere.bled,
  };
  return { counts, elsewhere, posterior: posterior(chemistryOf(identity), both) };
}

const total = ({ held, shifted, faded, bled }: ResultCounts) => held + shifted + faded + bled;

/** True where there is nothing to weigh: then there is nothing to say either. */
export const nobodyReported = ({ here, elsewhere }: Evidence): boolean =>
  here.length === 0 && total(elsewhere) === 0;

const percent = (share: number) => Math.round(share * 100);

/** The counts in a sentence or two; empty where nobody has reported. */
export function evidenceLines(name: string, { counts, elsewhere }: Weighed, say: Words): readonly string[] {
  const [here, there] = [total(counts), total(elsewhere)];
  return [
    ...(here > 0 ? [say.evidence.seenHere({ name, held: counts.held, of: here })] : []),
    ...(there > 0 ? [say.evidence.seenElsewhere({ held: elsewhere.held, of: there })] : []),
  ];
}

/** Below this share of bars that hold, what was seen is a warning and no aside. */
const doubtful = 0.6;

/** What the group saw, for the dose of one colour: a warning where it mostly fails, else an aside, or nothing. */
export function evidenceForDose(
  name: string,
  weighed: Weighed,
  say: Words,
): { readonly aside?: string; readonly caution?: Caution } {
  const text = evidenceLines(name, weighed, say).join(' ');
  if (text === '') return {};
  return weighed.posterior.mean < doubtful ? { caution: { id: 'seen-here', text } } : { aside: text };
}

/** The share of bars that hold with its interval, and the counts behind it. */
export function weighedBlock(
  { counts, posterior: { mean, low, high, reports } }: Weighed,
  say: Words,
): Block {
  const words = say.evidence;
  return {
    kind: 'measures',
    measures: [
      {
        label: words.share,
        value: words.percent({ percent: percent(mean) }),
        note: [
          words.interval({ low: percent(low), high: percent(high) }),
          say.stability.evidence.reports({ reports }),
          ...(total(counts) > 0 ? [`${words.counts(counts)}.`] : []),
        ].join(' '),
      },
    ],
  };
}

/** How often it held in each way of making it; nothing where only one was reported. */
export function processBlock(here: readonly ReportView[], say: Words): readonly Block[] {
  const rows = processes.flatMap(process => {
    const those = here.filter(report => report.process === process);
    const { held } = tally(those);
    return those.length === 0 ? [] : [say.evidence.inProcess({ process, held, of: those.length })];
  });
  return rows.length < 2 ? [] : [{ kind: 'rows', rows }];
}

/** One report in a row: result, process, age, dose, base, note. */
export function reportRow(report: ReportView, say: Words, name?: string): string {
  const words = say.evidence;
  const { result, process, weeks, strength, base, note, photo, mine } = report;
  const facts = [
    `${name === undefined ? '' : `${name}: `}${words.results[result]}`,
    words.processes[process],
    weeks === undefined ? '' : words.weeks({ weeks }),
    strength === undefined ? '' : strengthName(strength, say),
    base === undefined ? '' : words.base({ base }),
    note === undefined ? '' : words.note({ note }),
    photo ? words.photo : '',
    mine ? words.mine : '',
  ];
  return facts.filter(Boolean).join('; ');
}

/** A printed strength as its reader says it. */
function strengthName(printed: string, say: Words): string {
  const strength = readKeptStrength(printed);
  return strength === undefined ? printed : say.quantities.strength(strength);
}
