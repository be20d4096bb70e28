import type { Block, FoldId, Reply } from '../conversation/reply.ts';
import type { AlkaliBehaviour } from '../engine/colourants/colourant.ts';
import { legalShareOf, otherUseOf } from '../engine/stability/legal-share.ts';
import { permittedUses } from '../engine/stability/permitted.ts';
import type { Component, IngredientReport } from '../engine/stability/report.ts';
import { midSentence } from '../engine/text/capital.ts';
import { cut } from '../engine/text/excerpt.ts';
import type { Meant } from '../records/shelf/meant.ts';
import type { Words } from '../words/index.ts';
import { doseBlock, hintsOf, inNoList, sourcesBlock, texts } from './check-dose.ts';
import { doseCautions } from './dose.ts';
import { evidenceLines, identityName, type Weighed, weighedBlock } from './evidence.ts';
import { longestPart, partName, plainName } from './ingredient-name.ts';
import { lawBlock, lawSummary } from './law.ts';

/** Words on the face of a check. */
const MOST_CHECK_WORDS = 80;

/** What a behaviour means, in a sentence; a colour or condition nobody knows asks for a test bar. */
export function verdictSentence(
  behaviour: AlkaliBehaviour,
  { towards, on }: { readonly towards?: string | undefined; readonly on?: string | undefined },
  say: Words,
): string {
  const { alkali, towards: colours, on: conditions } = say.stability;
  const colour = (colours as Readonly<Record<string, string>>)[towards ?? ''];
  const condition = (conditions as Readonly<Record<string, string>>)[on ?? ''];
  switch (behaviour) {
    case 'shifts':
    case 'destroyed':
      return colour ? alkali[behaviour]({ towards: colour }) : alkali.unknown();
    case 'conditional':
      return condition ? alkali.conditional({ on: condition }) : alkali.unknown();
    default:
      return alkali[behaviour]();
  }
}

/** What decides the verdict: the first ingredient that behaves like the whole. */
export const deciding = ({ components, verdict }: IngredientReport): Component | undefined =>
  components.find(({ alkali, ifPresent }) => alkali === verdict && !ifPresent) ??
  components.find(({ alkali }) => alkali === verdict);

/** The verdict of a whole powder in a sentence. */
export const wholeVerdict = ({ report, colourant }: Meant, say: Words): string =>
  verdictSentence(
    report.verdictIfPresent === 'never' ? 'never' : report.verdict,
    { towards: report.towards, on: colourant?.alkali.on ?? deciding(report)?.on },
    say,
  );

/** The name of what was asked about: the member's jar, or the catalogue's name; undefined for a bare list. */
export const meantName = ({ item, colourant }: Meant, say: Words): string | undefined =>
  item?.name ?? colourant?.names[say.language];

/** The first line of a check: what happens in raw soap, and toward which colour. */
function checkHeadline(meant: Meant, say: Words): string {
  if (meant.report.acidMeetsUltramarine) return say.stability.acidMeetsUltramarine;
  const name = meantName(meant, say);
  if (meant.report.kind === 'plain') return say.checking.coloursNothing;
  const weak = weakIfPresent(meant.report);
  const verdict =
    meant.report.verdict === 'stable' && weak.length > 0 && meant.report.verdictIfPresent !== 'never'
      ? say.checking.holdsUnless({ names: weak.map(plainName) })
      : wholeVerdict(meant, say);
  const told = name ? say.checking.named({ name, verdict: midSentence(verdict) }) : verdict;
  return lawFirst(meant.report, { told, verdict }, say);
}

/** What the US lists a colour for where that is not soap; undefined where it is, or where nothing lists it. */
function notForSoap(
  { components }: Pick<IngredientReport, 'components'>,
  verdict: string,
  say: Words,
): string | undefined {
  for (const part of components) {
    if (inNoList(part)) return say.checking.inNoList({ name: plainName(part), verdict }).trim();
    const use = otherUseOf(part);
    if (use) return say.checking.notForSoap({ name: plainName(part), use, verdict }).trim();
  }
  return undefined;
}

/** What the law says first where it says more than "listed": another use, or a share that no dose may pass. */
function lawFirst(
  report: IngredientReport,
  { told, verdict }: { readonly told: string; readonly verdict: string },
  say: Words,
): string {
  const elsewhere = notForSoap(report, verdict, say);
  if (elsewhere) return elsewhere;
  const legal = legalShareOf(report.components);
  if (!legal || legal.share >= SHARE_WORTH_A_HEADLINE) return told;
  const percent = Number((legal.share * 100).toPrecision(3));
  return say.checking.legalMost({ ...legal, percent, verdict: told });
}

/** No dose of ours comes near one percent of a bar: a wider limit is small print. */
const SHARE_WORTH_A_HEADLINE = 0.01;

/**
 * What a checked list says: suitability first, then what the group saw, dose and carriers, then law and sources in
 * small print.
 */
export function checkReply(meant: Meant, weighed: Weighed | undefined, say: Words): Reply {
  const { report, identity } = meant;
  const uses = report.components.map(component => ({ component: component.id, ...permittedUses(component) }));
  return {
    kind: 'reply',
    headline: checkHeadline(meant, say),
    data: {
      ...report,
      permitted: {
        us: uses.flatMap(({ component, us }) => us.map(use => ({ component, ...use }))),
        eu: uses.flatMap(({ component, eu }) => eu.map(use => ({ component, ...use }))),
      },
      ...(identity !== undefined && { colour: identity }),
      ...(weighed && { evidence: weighed }),
    },
    blocks: [
      ...partsBlock(meant, say),
      ...texts(perhaps(report, say), strange(report, say)),
      ...evidenceBlocks(meant, weighed, say),
      ...doseBlock(meant, say),
      ...inFold(
        'why',
        texts(
          report.predispersedIn &&
            say.stability.predispersed({ carrier: say.colourants.carriers[report.predispersedIn] }),
          ...hintsOf(meant, say),
          ...(report.verdictIfPresent === 'never'
            ? [say.stability.permitted.lyeFirst]
            : [say.checking.sure({ level: say.stability.confidence[report.confidence] })]),
        ),
      ),
      ...lawSummary(report, say),
      lawBlock(report, say),
      sourcesBlock(meant, say),
    ],
    cautions: report.dose ? doseCautions([{ id: 'raw-batter', values: {} }], say) : [],
    most: MOST_CHECK_WORDS,
  };
}

/** What the group saw, where anybody did. */
function evidenceBlocks(
  { item, identity = '' }: Meant,
  weighed: Weighed | undefined,
  say: Words,
): readonly Block[] {
  if (!weighed) return [];
  const lines = evidenceLines(item?.name ?? identityName(identity, say), weighed, say);
  return lines.length === 0
    ? []
    : [...texts(lines.join(' ')), { ...weighedBlock(weighed, say), fold: 'why' }];
}

const inFold = (fold: FoldId, blocks: readonly Block[]): readonly Block[] =>
  blocks.map(block => ({ ...block, fold }));

/** Each ingredient that does not simply hold, and those that do in one row; nothing where there is only one. */
function partsBlock({ report, colourant }: Meant, say: Words): readonly Block[] {
  const { components, unknown } = report;
  if (components.length === 0 || (components.length === 1 && (colourant || unknown.length === 0))) return [];
  const holding = components.filter(({ alkali }) => alkali === 'stable').map(partName);
  const bySentence = new Map<string, string[]>();
  for (const part of components.filter(({ alkali }) => alkali !== 'stable')) {
    const sentence = midSentence(verdictSentence(part.alkali, part, say));
    bySentence.set(sentence, [...(bySentence.get(sentence) ?? []), partName(part)]);
  }
  const rows = [...bySentence].map(([verdict, names]) => say.checking.part({ names, verdict }));
  const all = holding.length > 0 ? [...rows, say.checking.holds({ names: holding })] : rows;
  return [{ kind: 'rows', title: say.checking.inside, rows: all }];
}

/** The weakest ingredients that the list only may contain, where they would change the verdict. */
const weakIfPresent = ({ components, verdict, verdictIfPresent }: IngredientReport) =>
  verdict === verdictIfPresent
    ? []
    : components.filter(({ ifPresent, alkali }) => ifPresent && alkali !== 'stable' && alkali !== verdict);

function perhaps(report: IngredientReport, say: Words) {
  const weak = weakIfPresent(report);
  return weak.length === 0 ? undefined : say.checking.perhapsWorse({ names: weak.map(plainName) });
}

const strange = ({ unknown }: IngredientReport, say: Words) =>
  unknown.length === 0
    ? undefined
    : say.stability.notRecognised({ names: unknown.map(name => cut(name, longestPart)).slice(0, 8) });
