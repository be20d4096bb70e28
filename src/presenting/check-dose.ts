import type { Block } from '../conversation/reply.ts';
import { colourantById } from '../engine/colourants/catalogue.ts';
import { batchPartIn } from '../engine/hazards/index.ts';
import { practicalSpoons } from '../engine/quantities/spoons.ts';
import { isUltramarine } from '../engine/stability/check.ts';
import { otherUseOf } from '../engine/stability/legal-share.ts';
import type { Component, IngredientReport, PowderKind } from '../engine/stability/report.ts';
import { cut } from '../engine/text/excerpt.ts';
import type { Meant } from '../records/shelf/meant.ts';
import type { Words } from '../words/index.ts';
import { partName } from './ingredient-name.ts';

export const texts = (...lines: readonly (string | undefined)[]): readonly Block[] => {
  const text = lines.filter(Boolean).join('\n');
  return text === '' ? [] : [{ kind: 'text', text }];
};

/** Sold as a colour by the name of a listed one, and in no list itself. */
const IN_NO_LIST: ReadonlySet<string> = new Set(['strontium-aluminate']);

/** True of an ingredient that is sold as a colour and stands in no list of them. */
export const inNoList = ({ id }: Component): boolean => IN_NO_LIST.has(id);

/** The name of what a powder is. */
export const kindName = (kind: PowderKind, say: Words): string =>
  ({ ...say.colourants.kinds, ...say.stability.kinds })[kind];

/** What colours nothing gets no dose: what it is in the batch instead, each kind once. */
function partsOfBatch({ components }: IngredientReport, say: Words): readonly string[] {
  const parts = components.map(({ as }) => ({ as, part: batchPartIn(as) ?? 'plain' }));
  const telling = parts.filter(
    ({ part }, at) => part !== 'plain' && parts.findIndex(one => one.part === part) === at,
  );
  return telling.slice(0, 3).map(({ as, part }) => say.checking.inBatch({ name: cut(as, 40), part }));
}

export function doseBlock({ report }: Meant, say: Words): readonly Block[] {
  const { kind, dose, carriers, light, verdictIfPresent } = report;
  const kinds = { label: say.checking.kind, value: kindName(kind, say), note: say.colourants.light[light] };
  if (verdictIfPresent === 'never') return [{ kind: 'text', text: say.checking.noDose }];
  if (kind === 'plain') return texts(...partsOfBatch(report, say));
  // What is listed for something else gets no dose that reads like leave to use it.
  const elsewhere = report.components.some(part => otherUseOf(part) || inNoList(part));
  if (!dose || elsewhere)
    return [
      { kind: 'measures', measures: [{ label: kinds.label, value: kinds.value }] },
      ...(elsewhere ? [] : texts(say.checking.noDoseKnown)),
    ];
  const spoons = (tsp: number) => say.quantities.measure(practicalSpoons(tsp));
  return [
    {
      kind: 'measures',
      measures: [
        {
          label: say.checking.fullDose,
          value: say.checking.perCup({ spoons: spoons(dose.fullTspPerCup) }),
          note: [
            say.checking.most({ spoons: spoons(dose.ceilingTspPerCup) }),
            ...(report.verdict === 'destroyed' ? [say.checking.doseInVain] : []),
          ].join(' '),
        },
        {
          label: say.checking.wetIn,
          value: say.checking.orList(carriers.map(carrier => say.colourants.carriers[carrier])),
          ...(carriers.includes('water') ? {} : { note: say.checking.neverWater }),
        },
      ],
    },
    { kind: 'measures', measures: [kinds], fold: 'why' },
  ];
}

/**
 * Those hints of the catalogue's entry that the rest does not say already; of an entry that is only like it, what to
 * take instead where both fail.
 */
export function hintsOf(meant: Meant, say: Words): readonly string[] {
  const acid = meant.report.components.some(isUltramarine) ? [say.colourants.hints['never-with-acid']] : [];
  return [...new Set([...acid, ...catalogueHints(meant, say)])].slice(0, 3);
}

function catalogueHints({ report, colourant }: Meant, say: Words): readonly string[] {
  const like = report.like === undefined ? undefined : colourantById(report.like);
  if (!like || report.verdictIfPresent === 'never') return [];
  const own = colourant?.id === like.id;
  const spoken: Readonly<Record<string, string>> = say.colourants.hints;
  return like.hints
    .filter(hint =>
      own ? !/^not-listed|^never-in-water$/.test(hint) : /instead$|coats-the-mica$/.test(hint),
    )
    .filter(() => own || like.alkali.behaviour === report.verdict || report.components.length === 1)
    .flatMap(hint => spoken[hint] ?? []);
}

/** Where each statement comes from, in small print; one source once. */
export function sourcesBlock({ report, colourant }: Meant, say: Words): Block {
  const { checking } = say;
  const lines = new Map<string, string[]>();
  const enter = (
    source: { readonly source: string; readonly trust: keyof typeof checking.trust },
    name: string,
  ) => {
    const key = `${checking.source(source)} (${checking.trust[source.trust]})`;
    lines.set(key, [...(lines.get(key) ?? []), name]);
  };
  for (const part of report.components) enter(part.source, partName(part));
  if (colourant && report.like === colourant.id) {
    enter(colourant.origins.dose, checking.doseSource);
    enter(colourant.origins.carriers, checking.carrierSource);
  }
  const all = [...lines].map(([source, names]) => `${[...new Set(names)].join(', ')}: ${source}`);
  return { kind: 'text', text: checking.sources({ lines: all }), folds: true, fold: 'law' };
}
