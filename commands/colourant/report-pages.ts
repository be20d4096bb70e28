import type { Follow } from '../../src/conversation/follow-ups/follow.ts';
import type { Choice, Reply } from '../../src/conversation/reply.ts';
import {
  evidenceLines,
  identityName,
  processBlock,
  reportRow,
  type Weighed,
  weigh,
  weighedBlock,
} from '../../src/presenting/evidence.ts';
import { type Evidence, filed, type Report, type ReportView } from '../../src/records/evidence/index.ts';
import type { Words } from '../../src/words/index.ts';

/** Reports on one page: what a phone shows in two screens. */
const perPage = 8;
/** A menu of the platform holds so many. */
const mostInMenu = 25;

/** Where the buttons of a page lead. */
export type Leads = {
  /** To a page, from 0, of the same reports. */
  readonly page: (page: number) => Follow;
  /** To the colour chosen from a menu. */
  readonly open?: Follow;
};

type Paged = { readonly shown: readonly ReportView[]; readonly page: number; readonly pages: number };

/** The page that is asked for, or the last there is. */
function paged(reports: readonly ReportView[], asked: number): Paged {
  const pages = Math.max(1, Math.ceil(reports.length / perPage));
  const page = Math.min(Math.max(0, asked), pages - 1);
  return { shown: reports.slice(page * perPage, (page + 1) * perPage), page, pages };
}

function turns({ page, pages }: Paged, leads: Leads, say: Words): readonly Choice[] {
  const button = (label: string, to: number): Choice => ({ kind: 'button', label, follow: leads.page(to) });
  return [
    ...(page > 0 ? [button(say.evidence.earlier, page - 1)] : []),
    ...(page + 1 < pages ? [button(say.evidence.further, page + 1)] : []),
  ];
}

/** For programs: a report without who made it. */
const reportData = ({ identity, at, ...rest }: ReportView) => ({
  ...rest,
  colour: identity,
  at: at.toISOString(),
});

const pageText = (one: Paged, say: Words) =>
  one.pages > 1
    ? [
        {
          kind: 'text',
          text: say.evidence.page({ page: one.page + 1, pages: one.pages }),
          folds: true,
        } as const,
      ]
    : [];

/** What was seen of one colour: how many saw it hold, the share with its interval, and the reports page by page. */
export function oneColourReply(
  identity: string,
  evidence: Evidence,
  { page, leads, say }: { readonly page: number; readonly leads: Leads; readonly say: Words },
): Reply {
  const name = identityName(identity, say);
  const weighed = weigh(identity, evidence);
  const [first, ...more] = evidenceLines(name, weighed, say);
  const one = paged(evidence.here, page);
  return {
    kind: 'reply',
    headline: first ?? say.evidence.none({ name }),
    data: {
      colour: identity,
      ...weighed,
      page: one.page,
      pages: one.pages,
      reports: one.shown.map(reportData),
    },
    blocks: [
      ...more.map(text => ({ kind: 'text', text }) as const),
      weighedBlock(weighed, say),
      ...processBlock(evidence.here, say),
      ...(one.shown.length > 0
        ? [{ kind: 'rows', rows: one.shown.map(report => reportRow(report, say)) } as const]
        : []),
      ...pageText(one, say),
    ],
    cautions: [],
    choices: turns(one, leads, say),
  };
}

/** Everything the group has seen, by colour, with a menu to look at one of the colours on the page. */
export function wholeGroupReply(
  reports: readonly ReportView[],
  { page, leads, say }: { readonly page: number; readonly leads: Leads; readonly say: Words },
): Reply {
  const one = paged(reports, page);
  const colours = [...new Set(one.shown.map(({ identity }) => identity))];
  const all = new Set(reports.map(({ identity }) => identity));
  return {
    kind: 'reply',
    headline: say.evidence.whole({ reports: reports.length, colours: all.size }),
    data: {
      colours: all.size,
      total: reports.length,
      page: one.page,
      pages: one.pages,
      reports: one.shown.map(reportData),
    },
    blocks: [
      ...(one.shown.length > 0
        ? [
            {
              kind: 'rows',
              rows: one.shown.map(report => reportRow(report, say, identityName(report.identity, say))),
            } as const,
          ]
        : []),
      ...pageText(one, say),
    ],
    cautions: [],
    choices: [
      ...turns(one, leads, say),
      ...(leads.open && colours.length > 0
        ? [
            {
              kind: 'menu',
              label: say.evidence.open,
              items: colours
                .slice(0, mostInMenu)
                .map(identity => ({ label: identityName(identity, say), value: filed(identity) })),
              least: 1,
              most: 1,
              follow: leads.open,
            } as const,
          ]
        : []),
    ],
  };
}

/** That a report was kept, and how the colour stands with it. */
export function reportedReply(
  { kept, name, withPhoto }: { readonly kept: Report; readonly name: string; readonly withPhoto: boolean },
  done: { readonly replaced: boolean; readonly repeated: boolean; readonly weighed: Weighed },
  say: Words,
): Reply {
  const words = say.evidence;
  const { identity, result, process, weeks } = kept;
  const { replaced, repeated, weighed } = done;
  const notices = [
    ...(repeated ? [words.repeated] : []),
    ...(replaced ? [words.replaced] : []),
    ...(withPhoto ? [words.photoKept] : []),
    ...evidenceLines(identityName(identity, say), weighed, say),
  ];
  return {
    kind: 'reply',
    headline: words.reported({ name, result, process }),
    data: { colour: identity, result, process, weeks, replaced, repeated, evidence: weighed },
    blocks: [{ kind: 'text', text: notices.join('\n') }, weighedBlock(weighed, say)],
    cautions: [],
  };
}
