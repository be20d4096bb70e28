import { colourants } from '../../engine/colourants/catalogue.ts';
import { remembered } from '../../engine/remembered.ts';
import type { ResultCounts } from '../../engine/stability/evidence.ts';
import { identitiesAlike } from '../../engine/stability/identity.ts';
import { evidence, evidenceOn, part, under } from '../keys.ts';
import { read, readable } from '../record.ts';
import { atHand, type Entry, everything, everythingIn } from '../store.ts';
import { filed } from './filed.ts';
import type { EvidenceScope, Report } from './report.ts';
import { reportKind } from './schema.ts';
import { sharedWith, shares } from './sharing.ts';

/** A report, and whether the member who looks made it. */
export type ReportView = Report & { readonly mine: boolean };

/** What was seen of a colour: here one by one, in other groups that share only as counts. */
export type Evidence = { readonly here: readonly ReportView[]; readonly elsewhere: ResultCounts };

/** How often each result was reported. */
export function tally(reports: readonly Pick<Report, 'result'>[]): ResultCounts {
  const of = (result: Report['result']) => reports.filter(report => report.result === result).length;
  return { held: of('held'), shifted: of('shifted'), faded: of('faded'), bled: of('bled') };
}

/** `member/process` of a report's key: the same member's report in a second group is the same report. */
const makerOf = ({ key }: Entry): string => key.split('/').slice(2).join('/');

const newestFirst = (a: Report, b: Report) => b.at.getTime() - a.at.getTime();

const viewsOf = (entries: readonly Entry[], viewer: string): readonly ReportView[] =>
  readable(reportKind, entries).map(({ key, fields }) => ({
    ...fields,
    mine: key.split('/')[3] === part(viewer),
  }));

const filedFor = remembered(identity => identitiesAlike(identity).map(filed));

const reportsIn = remembered(group => under(evidence(group)));

/** Whether the group has reported anything: most have not, and one look serves all colours until something is written. */
async function hasReports({ store, group }: EvidenceScope): Promise<boolean> {
  const span = reportsIn(group);
  const first = atHand(store, span, 1) ?? (await store.range(span.from, span.to, 1));
  return first.length > 0;
}

/** False where there can be no report on any colour: the group has made none, and counts none of others. */
export async function mayBeReported(scope: EvidenceScope): Promise<boolean> {
  return (await hasReports(scope)) || (await shares(scope));
}

const NOTHING: Evidence = { here: [], elsewhere: tally([]) };

/**
 * Every report on a colour, newest first, those on its bare ingredients and on their catalogue entries included; and
 * the counts of other groups where both share.
 */
export async function reportsOn(scope: EvidenceScope, identity: string, viewer: string): Promise<Evidence> {
  const colours = filedFor(identity);
  const [hasOwn, sharing] = await Promise.all([hasReports(scope), sharedWith(scope)]);
  const own = hasOwn
    ? await everythingIn(
        scope.store,
        colours.map(colour => under(evidenceOn(scope.group, colour))),
      )
    : [];
  if (own.length === 0 && sharing.length === 0) return NOTHING;
  const known = new Set(own.map(makerOf));
  const others = await everythingIn(
    scope.store,
    sharing.flatMap(group => colours.map(colour => under(evidenceOn(group, colour)))),
  );
  const shared = new Map(others.filter(entry => !known.has(makerOf(entry))).map(one => [makerOf(one), one]));
  return {
    here: viewsOf(own, viewer).toSorted(newestFirst),
    elsewhere: tally(readable(reportKind, [...shared.values()]).map(({ fields }) => fields)),
  };
}

/** The identity that a button's filing stands for; undefined when no report is left that would tell. */
export async function identityFiled(
  { store, group }: EvidenceScope,
  colour: string,
): Promise<string | undefined> {
  const known = colourants.flatMap(({ id }) => identitiesAlike(id)).find(one => filed(one) === colour);
  if (known !== undefined) return known;
  const { from, to } = under(evidenceOn(group, colour));
  const [entry] = await store.range(from, to, 1);
  return entry && read(reportKind, entry.key, entry.value).identity;
}

/** Every report of the group, by colour, the newest of each first. */
export async function everyReport(scope: EvidenceScope, viewer: string): Promise<readonly ReportView[]> {
  const entries = await everything(scope.store, under(evidence(scope.group)));
  return viewsOf(entries, viewer).toSorted(
    (a, b) => a.identity.localeCompare(b.identity) || newestFirst(a, b),
  );
}
