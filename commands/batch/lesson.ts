import type { Block } from '../../src/conversation/reply.ts';
import { gramsPerHundred, usualTeaspoon } from '../../src/engine/colour/jars/colourant-optics.ts';
import { chromaOf, type Lab } from '../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../src/engine/colourants/catalogue.ts';
import { practicalSpoons } from '../../src/engine/quantities/spoons.ts';
import type { Measures } from '../../src/engine/quantities/units.ts';
import { whole } from '../../src/presenting/colour/view.ts';
import type { JarLearnt } from '../../src/presenting/colour/what-bars-say.ts';
import { rough } from '../../src/presenting/dose.ts';
import { spoonedOut } from '../../src/presenting/spoons.ts';
import type { Batch, Measured, PouredColour, PouredPortion } from '../../src/records/batches/index.ts';
import type { LessonBar } from '../../src/records/batches/lessons.ts';
import { countedTimes } from '../../src/records/shelf/jars/learnt-strength.ts';
import type { Words } from '../../src/words/index.ts';

/** What clean readings of a cured batch say of the maker's jars; a portion without a jar of theirs says nothing. */
export function lessonBars(batch: Batch, measured: readonly Measured[]): LessonBar[] {
  return measured.flatMap(({ portion, lab, plusMinus, unclean }) => {
    if (unclean) return [];
    const { colours } = batch.portions[portion]!;
    const mix = colours.flatMap(({ item, lot, colourant, pigment }) =>
      item !== undefined && lot !== undefined && pigment > 0
        ? [{ item, lot, colourant, grams: pigment }]
        : [],
    );
    if (mix.length === 0) return [];
    const others = colours.flatMap(({ item, colourant, pigment }) =>
      item === undefined ? [{ colourant, grams: pigment }] : [],
    );
    return [{ portion, mix, others, shades: batch.shades, gelled: batch.gelled, lab, plusMinus }];
  });
}

/** A chroma (CIELAB) by which a bar is plainly duller or livelier than was foretold, and one by which a lesson is. */
const PLAINLY = 5;
const SEEN = 2;

/** How a bar differs from what was foretold where what it would teach goes the other way; undefined where both agree. */
export function turnedAround(
  { portions }: Batch,
  { portion, lab }: Pick<LessonBar, 'portion' | 'lab'>,
  predicted: Lab,
): 'duller' | 'livelier' | undefined {
  const foretold = portions[portion]?.predicted;
  if (!foretold) return undefined;
  const bar = chromaOf(lab) - chromaOf(foretold.lab);
  const taught = chromaOf(predicted) - chromaOf(foretold.lab);
  if (Math.abs(bar) < PLAINLY || Math.abs(taught) < SEEN || bar * taught > 0) return undefined;
  return bar < 0 ? 'duller' : 'livelier';
}

/** A jar whose strength moved by less than this is as it was (level spoons scatter by as much). */
const AS_BEFORE = 0.08;
/** From here on a jar's hue or dullness is worth a word, in the model's own units. */
const WORTH_SAYING = 0.7;

/** What changes in spoons: for each jar how strong it is, and what to take for the colour that was foretold. */
export function learntBlocks(
  batch: Batch,
  learnt: readonly JarLearnt[],
  { measures, say }: { readonly measures: Pick<Measures, 'owned'>; readonly say: Words },
): readonly Block[] {
  const words = say.batches;
  const rows = learnt.flatMap(({ item, before, after, bars }) => {
    if (!after) return [];
    const [strength, covering, hue, dust] = after.parameters;
    const kind = colourantById(item.colourant ?? '');
    const counted = kind && countedTimes(kind, { k: Math.exp(strength), s: Math.exp(covering) });
    const used = colourOf(batch, item.id);
    const ratio = Math.exp((before?.parameters[0] ?? 0) - strength);
    const next = used && Math.min(used.colour.teaspoons * ratio, mostOf(used));
    const isSame = Math.abs(Math.log(ratio)) < AS_BEFORE;
    return [
      words.learnt({
        name: item.name,
        times: rough(counted ?? Math.exp(strength)),
        bars,
        before: whole(after.plusMinus.before),
        after: whole(after.plusMinus.after),
        spoons:
          used && next && next > 0 && used.colour.teaspoons > 0 && !isSame
            ? {
                used: say.quantities.measure(practicalSpoons(used.colour.teaspoons)),
                next: spoonedOut(next, measures, say),
                capped: next < used.colour.teaspoons * ratio,
              }
            : undefined,
        shifted: Math.abs(hue) >= WORTH_SAYING,
        dull: dust >= WORTH_SAYING,
      }),
    ];
  });
  return rows.length > 0 ? [{ kind: 'rows', title: words.learntTitle, rows }] : [];
}

type Used = { readonly colour: PouredColour; readonly portion: PouredPortion };

/** The first portion that a jar is in. */
const colourOf = ({ portions }: Batch, item: string): Used | undefined =>
  portions.flatMap(portion =>
    portion.colours.flatMap(colour => (colour.item === item ? [{ colour, portion }] : [])),
  )[0];

/** The most of it that goes into that portion, in its maker's teaspoons: by pigment, whatever else is in the jar. */
function mostOf({ colour, portion }: Used): number {
  const kind = colourantById(colour.colourant);
  if (!kind || colour.pigment <= 0) return Number.POSITIVE_INFINITY;
  const ceiling = gramsPerHundred(
    kind.dose.ceilingTspPerCup,
    usualTeaspoon(kind),
    portion.grams / portion.millilitres,
  );
  return Math.max(colour.teaspoons, (colour.teaspoons * ceiling) / colour.pigment);
}
