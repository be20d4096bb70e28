import type { Block, Caution, Measure } from '../conversation/reply.ts';
import type { Colourant } from '../engine/colourants/colourant.ts';
import type { Caution as DoseCaution } from '../engine/dosing/cautions.ts';
import type { Dose, DoseAnswer } from '../engine/dosing/request.ts';
import { practicalSpoons } from '../engine/quantities/spoons.ts';
import { capital, midSentence } from '../engine/text/capital.ts';
import type { Words } from '../words/index.ts';
import { swatchHex } from './colour/swatch.ts';

/** A dose and the name its reader knows it by: their own jar's, or the colourant's. */
export type NamedDose = { readonly dose: Dose; readonly name: string };

/** Two figures: powders vary more than a third figure could tell. */
export const rough = (value: number): number => Number(value.toPrecision(2));

/** What to spoon: of the premix where there is one, else of the dry powder. */
export const spoonsOf = ({ premix, spoons }: Dose, say: Words): string =>
  say.quantities.measure(premix?.spoons ?? spoons);

/** A colourant's name in the middle of a sentence. */
export const nameOf = ({ names }: Colourant, { language }: Words): string => midSentence(names[language]);

/** Words on the face of a dose. */
export const MOST_DOSE_WORDS = 90;

/** All that a dose says below its headline: its face, and what folds behind it. */
export const doseBlocks = (
  doses: readonly NamedDose[],
  colourants: readonly Colourant[],
  say: Words,
): readonly Block[] => [
  ...doseFace(doses, colourants, say),
  ...doses.flatMap(named => learntBlock(named, say)),
  { ...doseMeasures(doses, say), fold: 'numbers' },
  ...doseSteps(doses, say),
  ...(doses.length === 1 ? whyOf(doses[0]!, say) : []),
  doseAside(doses, colourants, say),
];

/** What one weighs now. One colour's spoons stand in the headline already; of several each has its cup. */
function doseFace(
  doses: readonly NamedDose[],
  colourants: readonly Colourant[],
  say: Words,
): readonly Block[] {
  const [first, ...others] = doses;
  if (!first) return [];
  if (others.length > 0)
    return [{ kind: 'rows', rows: doses.map(named => cupRow(named, say)), fold: 'face' }];
  const { dose, name } = first;
  const [colour] = colourants;
  const value = dose.premix ? premixUse(dose.premix, say) : weightOf(dose, say);
  return [
    {
      kind: 'measures',
      measures: [{ label: name, value, ...(colour && { hex: swatchHex(colour) }) }],
      fold: 'face',
    },
  ];
}

/** That the jar's own bars changed its spoons, and what a usual jar takes. */
function learntBlock(
  { dose: { timesKind, teaspoons, premix, askedTeaspoons }, name }: NamedDose,
  say: Words,
): readonly Block[] {
  if (timesKind === undefined) return [];
  const usual = (askedTeaspoons ?? teaspoons) * timesKind;
  const spoons = premix ? undefined : say.quantities.measure(practicalSpoons(usual));
  return [{ kind: 'text', text: say.dosing.learnt({ name, times: rough(timesKind), usual: spoons }) }];
}

/** `1/2 tsp gold mica, about 0.9 g, in 1 tsp light oil; whisk it in`. */
function cupRow({ dose, name }: NamedDose, say: Words): string {
  const { carrier, premix } = dose;
  const wetted = premix === undefined && carrier.millilitres > 0;
  const liquid = say.plan.liquid({
    spoons: say.quantities.measure(carrier.spoons),
    liquid: say.dispersion.carriers[carrier.choice],
    dipped: false,
  });
  const row = say.plan.dose({
    spoons: spoonsOf(dose, say),
    colour: name,
    grams: say.plan.figure(rough((premix?.grams ?? dose.grams).typical), 3),
    liquid: wetted ? liquid : undefined,
  });
  return `${row}; ${say.plan.blend[carrier.blend]}`;
}

/** The numbers of each colourant: spoons, grams, and how near the most it takes. */
const doseMeasures = (doses: readonly NamedDose[], say: Words): Block => ({
  kind: 'measures',
  measures: doses.map(named => measureOf(named, say)),
});

const weightOf = ({ grams }: Dose, say: Words): string =>
  say.dosing.grams({ low: rough(grams.low), typical: rough(grams.typical), high: rough(grams.high) });

function measureOf({ dose, name }: NamedDose, say: Words): Measure {
  const spoken = say.quantities.measure;
  const { premix, ceilingShare, ceilingTeaspoons } = dose;
  const ceiling = say.dosing.ceiling({
    spoons: spoken(practicalSpoons(ceilingTeaspoons, ceilingTeaspoons)),
    percent: Math.round(ceilingShare * 100),
  });
  if (!premix) return { label: name, value: `${spoken(dose.spoons)}, ${weightOf(dose, say)}`, note: ceiling };
  return { label: name, value: premixUse(premix, say), note: ceiling };
}

function premixUse({ share, grams, spoons: neutral }: NonNullable<Dose['premix']>, say: Words): string {
  const spoons = say.quantities.measure(neutral);
  const weight = rough(grams.typical);
  if (share === undefined) return say.dosing.ofPremix({ grams: weight, spoons });
  return share > 1
    ? say.dosing.pastes({ count: rough(share), grams: weight, spoons })
    : say.dosing.shareOfPaste({ percent: rough(share * 100), grams: weight, spoons });
}

/** The two steps of each colourant, wetting in the cup and blending into the batter; of several each has its fold. */
const doseSteps = (doses: readonly NamedDose[], say: Words): readonly Block[] =>
  doses.map(named => ({
    kind: 'rows',
    numbered: true,
    ...(doses.length > 1 && { title: named.name, fold: 'steps' }),
    rows: doses.length > 1 ? [...stepsOf(named, say), ...whyRows(named, say)] : stepsOf(named, say),
  }));

function stepsOf({ dose }: NamedDose, say: Words): readonly string[] {
  const { carrier, premix } = dose;
  const blend = say.dispersion.blend[carrier.blend];
  if (premix) return [say.dispersion.stirPremix, blend];
  const amount = `${say.quantities.measure(carrier.spoons)} (${Math.round(carrier.millilitres)} ml)`;
  const wet = say.dispersion.wet[carrier.wet]({ carrier: say.dispersion.carriers[carrier.choice], amount });
  const { paste, spoons } = dose.spoons;
  const dilution = paste && dilutionOf(paste, carrier.choice, say);
  if (!dilution) return [wet, blend];
  return spoons.length === 0
    ? [say.quantities.paste(dilution), blend]
    : [wet, blend, say.quantities.pasteOrSpoons(dilution)];
}

const dilutionOf = (
  paste: NonNullable<Dose['spoons']['paste']>,
  liquid: Dose['carrier']['choice'],
  say: Words,
) => ({
  powder: say.quantities.spoon(paste.powder),
  carrier: say.plan.liquid({
    spoons: say.quantities.measure({ spoons: paste.carrierSpoons }),
    liquid: say.dispersion.carriers[liquid],
    dipped: false,
  }),
  parts: paste.parts,
  part: say.quantities.measure({ spoons: paste.partSpoons }),
});

/** Why that carrier. */
const whyRows = ({ dose: { carrier, premix } }: NamedDose, say: Words): readonly string[] =>
  premix ? [] : [`${capital(say.dispersion.carriers[carrier.choice])}: ${say.dispersion.why[carrier.why]}.`];

const whyOf = (named: NamedDose, say: Words): readonly Block[] =>
  whyRows(named, say).map(text => ({ kind: 'text', text, fold: 'why' }));

/** What else is worth knowing, in small print: the same dose by cup and by pound, and the trade's hints. */
function doseAside(doses: readonly NamedDose[], colourants: readonly Colourant[], say: Words): Block {
  const spoken: Readonly<Record<string, string>> = say.colourants.hints;
  const hints = new Set(colourants.flatMap(colourant => colourant.hints.map(hint => spoken[hint] ?? hint)));
  const lines = doses.map(({ dose, name }) => {
    const per = say.dosing.perMeasure({
      perCup: rough(dose.perCup),
      perPound: rough(dose.perPoundOfOils),
    });
    return doses.length > 1 ? `${name}: ${per}` : per;
  });
  return { kind: 'text', text: [...lines, ...hints].join('\n'), folds: true, fold: 'why' };
}

/** Cautions of every dose of its kind: in full once, then in a line. */
const STANDING: ReadonlySet<string> = new Set(['raw-batter', 'dust'] satisfies DoseCaution['id'][]);
/** What is good to know and changes nothing that one does now. */
const FOLDED: ReadonlySet<string> = new Set([
  'percent-of-oils',
  'stick-blend-thickens',
  'froth-cup-only',
  'fades-in-light',
  'superfat-rises',
  'lye-thins',
  'typical-batter',
] satisfies DoseCaution['id'][]);

/** The cautions of a dose, spoken. */
export const doseCautions = (cautions: DoseAnswer['cautions'], say: Words): readonly Caution[] =>
  cautions.flatMap((caution, at): readonly Caution[] => {
    const { id } = caution;
    const full = { id, text: sentence(caution, say) };
    if (id === 'dish-test-first')
      return [
        // One line for all of them; each in full behind it.
        ...(cautions.findIndex(one => one.id === id) === at
          ? [{ id, text: say.dosing.dishTest, fold: 'face' as const }]
          : []),
        { ...full, fold: 'safety' },
      ];
    if (STANDING.has(id))
      return [{ ...full, firm: true, brief: say.dosing.brief[id as keyof typeof say.dosing.brief] }];
    return [FOLDED.has(id) ? { ...full, fold: 'safety' } : full];
  });

const sentence = ({ id, values }: DoseCaution, say: Words): string =>
  (say.dosing.cautions[id] as (given: typeof values) => string)(values);
