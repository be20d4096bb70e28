import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { drawn, hasChanged, WHOLE } from '../walk.ts';
import { MISSED, type Missed, missedIn, PARTS, type Part } from './missed.ts';
import { openConversation } from './open-conversation.ts';
import { type Score, score } from './score.ts';
import type { TextSet } from './text-set.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

/**
 * Texts by other hands, who saw neither the grammar nor its words. `first`: what was right on the first run, before anything
 * was tuned on that set; targets were 92 in 100 questions, 95 in 100 amounts and of what is outside. The first set was tuned on while the grammar was written, so it has no figure of that kind.
 */
const sets = [
  {
    file: 'beginner-in-a-hurry.json',
    first: undefined,
    // A dog that ate a colourant gets first aid: in doubt it is shown.
    held: { questions: 57, amounts: 50, colours: 49, scope: 23 },
  },
  {
    file: 'market-seller.json',
    first: { questions: 34, amounts: 36, colours: 47, scope: 11 },
    held: { questions: 58, amounts: 50, colours: 50, scope: 25 },
  },
  {
    file: 'three-generations.json',
    // Run once, before anything was tuned on it; of its 110 flaws 107 came first and all in the first three.
    first: { questions: 46, amounts: 39, colours: 39, scope: 25 },
    held: { questions: 58, amounts: 50, colours: 50, scope: 25 },
  },
  {
    file: 'club-of-five.json',
    // Run once, before anything was tuned on it; of its 110 flaws 106 came first and 109 in the first three.
    first: { questions: 54, amounts: 45, colours: 38, scope: 24 },
    held: { questions: 54, amounts: 49, colours: 48, scope: 24 },
  },
  {
    file: 'six-voices.json',
    // Run once, before anything was tuned on it; of its 110 flaws 103 came first and all in the first three.
    first: { questions: 53, amounts: 48, colours: 47, scope: 21 },
    held: { questions: 53, amounts: 48, colours: 47, scope: 21 },
  },
  {
    file: 'four-of-one-group.json',
    // Run once, before anything was tuned on it; of its 110 flaws 107 came first and 108 in the first three.
    first: { questions: 42, amounts: 44, colours: 47, scope: 20 },
    held: { questions: 58, amounts: 50, colours: 50, scope: 25 },
  },
  {
    file: 'station-and-stall.json',
    // Run once, before anything was tuned on it; of its 110 flaws 103 came first.
    first: { questions: 48, amounts: 43, colours: 38, scope: 21 },
    held: { questions: 55, amounts: 48, colours: 48, scope: 24 },
  },
  {
    file: 'tablet-and-hall.json',
    // Of 80 questions, 60 amounts, 60 colours and 60 of the field or not: run once, with the speller and before learning from it.
    first: { questions: 60, amounts: 46, colours: 52, scope: 56 },
    held: { questions: 77, amounts: 59, colours: 60, scope: 59 },
  },
  {
    file: 'cab-and-quay.json',
    // Of 60 questions, 50 amounts, 50 colours and 40 of the field or not: run once, before anything was tuned on it.
    first: { questions: 53, amounts: 47, colours: 45, scope: 35 },
    held: { questions: 60, amounts: 50, colours: 50, scope: 40 },
  },
  {
    file: 'ward-and-woolshed.json',
    // Of 150 questions, 120 amounts, 40 colours and 100 of the field or not: run once, before anything was tuned on it.
    first: { questions: 114, amounts: 78, colours: 28, scope: 74 },
    held: { questions: 138, amounts: 120, colours: 28, scope: 92 },
  },
  {
    file: 'six-countries.json',
    // As many; run once, before anything was tuned on it, while lines in two languages were still counted as missed.
    first: { questions: 92, amounts: 79, colours: 37, scope: 67 },
    held: { questions: 133, amounts: 117, colours: 37, scope: 88 },
  },
  {
    file: 'barrio-and-bayou.json',
    // As many; run once, when the two before had been learned from and nothing was tuned on it.
    first: { questions: 115, amounts: 100, colours: 33, scope: 82 },
    held: { questions: 134, amounts: 117, colours: 33, scope: 88 },
  },
  {
    file: 'jeepney-and-pasture.json',
    // As many; run once, before anything was tuned on it. Some lines are Tagalog or patois with the trade's words in English.
    first: { questions: 121, amounts: 101, colours: 28, scope: 92 },
    held: { questions: 138, amounts: 101, colours: 28, scope: 94 },
  },
  {
    file: 'bazaar-and-bothy.json',
    // As many; run once, before anything was tuned on it; amounts of oils that its writer labelled by another name are counted.
    first: { questions: 114, amounts: 92, colours: 31, scope: 82 },
    held: { questions: 134, amounts: 92, colours: 31, scope: 93 },
  },
  {
    file: 'harbour-and-hedge.json',
    // Of 170 questions, 130 amounts and 120 of the field or not: run once, before anything was tuned on it.
    first: { questions: 107, amounts: 65, colours: 0, scope: 99 },
    held: { questions: 125, amounts: 99, colours: 0, scope: 113 },
  },
  {
    file: 'depot-and-vineyard.json',
    // As many; run once, before anything was tuned on it.
    first: { questions: 122, amounts: 76, colours: 0, scope: 100 },
    held: { questions: 147, amounts: 108, colours: 0, scope: 115 },
  },
  {
    file: 'busline-and-feria.json',
    // 360 lines of the field or not: run once, before anything was tuned on it. In 20 of those missed now somebody may be hurt: first aid.
    first: { questions: 0, amounts: 0, colours: 0, scope: 267 },
    held: { questions: 0, amounts: 0, colours: 0, scope: 320 },
  },
  {
    file: 'oven-and-workshop.json',
    // Of 120 questions and 180 amounts: run once, before anything was tuned on it.
    first: { questions: 84, amounts: 159, colours: 0, scope: 0 },
    held: { questions: 96, amounts: 166, colours: 0, scope: 0 },
  },
  {
    file: 'taproom-and-olivar.json',
    // Of 100 questions, 80 amounts and 80 of the field or not: run once, before anything was tuned on it; of its 60 flaws 58 came first.
    first: { questions: 86, amounts: 70, colours: 0, scope: 70 },
    held: { questions: 89, amounts: 75, colours: 0, scope: 76 },
  },
  {
    file: 'allotment-and-laboratory.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 58 came first.
    first: { questions: 83, amounts: 60, colours: 0, scope: 61 },
    held: { questions: 87, amounts: 70, colours: 0, scope: 75 },
  },
  {
    file: 'staffroom-and-cradle.json',
    // Of 100 questions (two, which named a club and a make of tea, are left out), 80 amounts and 80 of the field or not: run once, before anything was tuned on it; of its 60 flaws 50 came first.
    first: { questions: 82, amounts: 71, colours: 0, scope: 74 },
    held: { questions: 86, amounts: 71, colours: 0, scope: 78 },
  },
  {
    file: 'van-and-hive.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 55 came first.
    first: { questions: 78, amounts: 71, colours: 0, scope: 79 },
    held: { questions: 89, amounts: 72, colours: 0, scope: 79 },
  },
  {
    file: 'ranch-and-obrador.json',
    // Of 240 questions: run once, before anything was tuned on it.
    first: { questions: 169, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 195, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'surgery-and-loom.json',
    // Of 200 questions and 120 amounts: run once, before anything was tuned on it; colours told as a list for a plan were counted as missed.
    first: { questions: 136, amounts: 115, colours: 0, scope: 0 },
    held: { questions: 175, amounts: 115, colours: 0, scope: 0 },
  },
  {
    file: 'salon-and-taxi.json',
    // 140 lines of recipes and lye alone (one is left out since): run once, before anything was tuned on it.
    first: { questions: 93, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 96, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'garage-and-apiary.json',
    // Of 100 questions, 80 amounts and 80 of the field or not: run once, before anything was tuned on it; of its 60 flaws 58 came first and all in the first three. One word, a trade mark, is another since.
    first: { questions: 82, amounts: 72, colours: 0, scope: 73 },
    held: { questions: 86, amounts: 72, colours: 0, scope: 77 },
  },
  {
    file: 'schoolroom-and-goatfold.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 59 came first and all in the first three.
    first: { questions: 88, amounts: 70, colours: 0, scope: 75 },
    held: { questions: 89, amounts: 70, colours: 0, scope: 77 },
  },
  {
    file: 'wharf-and-tlapaleria.json',
    // 200 lines of recipes and lye alone: run once, before anything was tuned on it.
    first: { questions: 111, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 122, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'nightshift-and-lorry.json',
    // Of 120 questions and 180 amounts: run once, before anything was tuned on it.
    first: { questions: 100, amounts: 149, colours: 0, scope: 0 },
    held: { questions: 108, amounts: 149, colours: 0, scope: 0 },
  },
  {
    file: 'switchboard-and-thimble.json',
    // 360 lines of the field or not, written to be hard to tell: run once, before anything was tuned on it. A dozen of what it calls inside tell of lye on skin: first aid is shown.
    first: { questions: 0, amounts: 0, colours: 0, scope: 292 },
    held: { questions: 0, amounts: 0, colours: 0, scope: 335 },
  },
  {
    file: 'fishmarket-and-dispensary.json',
    // Of 100 questions, 80 amounts and 80 of the field or not: run once, before anything was tuned on it; of its 60 flaws 57 came first and 58 in the first three.
    first: { questions: 83, amounts: 69, colours: 0, scope: 75 },
    held: { questions: 88, amounts: 69, colours: 0, scope: 77 },
  },
  {
    file: 'omnibus-and-porch.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 58 came first and all in the first three.
    first: { questions: 84, amounts: 68, colours: 0, scope: 76 },
    held: { questions: 88, amounts: 68, colours: 0, scope: 78 },
  },
  {
    file: 'pipewrench-and-seminar.json',
    // 160 lines of recipes and lye alone: run once, before anything was tuned on it.
    first: { questions: 82, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 82, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'conductor-and-neighbour.json',
    // Of 100 questions, 80 amounts and 80 of the field or not: run once, before anything was tuned on it; of its 60 flaws 59 came first and all in the first three.
    first: { questions: 89, amounts: 76, colours: 0, scope: 72 },
    held: { questions: 92, amounts: 79, colours: 0, scope: 76 },
  },
  {
    file: 'labbench-and-bakehouse.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 56 came first and 59 in the first three.
    first: { questions: 90, amounts: 75, colours: 0, scope: 75 },
    held: { questions: 93, amounts: 80, colours: 0, scope: 76 },
  },
  {
    file: 'fishstall-and-estuary.json',
    // 160 lines of recipes and lye alone: run once, before anything was tuned on it.
    first: { questions: 82, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 87, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'pit-and-guardia.json',
    // 160 lines of recipes and lye alone: run once, before anything was tuned on it.
    first: { questions: 111, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 130, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'tram-and-panaderia.json',
    // Of 100 questions, 80 amounts and 80 of the field or not: run once, before anything was tuned on it; of its 60 flaws 54 came first and 58 in the first three.
    first: { questions: 93, amounts: 76, colours: 0, scope: 73 },
    held: { questions: 93, amounts: 80, colours: 0, scope: 78 },
  },
  {
    file: 'prairie-and-needle.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 57 came first and 59 in the first three.
    first: { questions: 89, amounts: 78, colours: 0, scope: 69 },
    held: { questions: 89, amounts: 80, colours: 0, scope: 78 },
  },
  {
    file: 'infirmary-and-postbag.json',
    // 360 lines of the field or not, written to be hard to tell: run once, before anything was tuned on it. A dozen of what it calls inside tell of lye on skin or in the throat: first aid is shown. One word, a trade mark, is another since.
    first: { questions: 0, amounts: 0, colours: 0, scope: 304 },
    held: { questions: 0, amounts: 0, colours: 0, scope: 341 },
  },
  {
    file: 'canteen-and-caserio.json',
    // Of 120 questions and 180 amounts: run once, before anything was tuned on it; no weights were fitted to it, so that each fit anew moves it by a line or two (105, then 103 questions).
    first: { questions: 105, amounts: 139, colours: 0, scope: 0 },
    held: { questions: 103, amounts: 142, colours: 0, scope: 0 },
  },
  {
    file: 'dairy-and-comal.json',
    // 200 lines of recipes and lye alone: run once, with the reader before; a matter of lye that was answered as one is not counted in it.
    first: { questions: 58, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 175, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'creamery-and-mercado.json',
    // 140 of the same: run once, before anything was tuned on it, while the reader of recipes was being written.
    first: { questions: 65, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 111, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'schoolbus-and-comadre.json',
    // Of 100 questions, 80 amounts and 80 of the field or not: run once, before anything was tuned on it; of its 60 flaws 58 came first and all in the first three.
    first: { questions: 90, amounts: 77, colours: 0, scope: 78 },
    held: { questions: 96, amounts: 80, colours: 0, scope: 80 },
  },
  {
    file: 'galley-and-botica.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 58 came first and all in the first three.
    first: { questions: 92, amounts: 78, colours: 0, scope: 77 },
    held: { questions: 94, amounts: 79, colours: 0, scope: 78 },
  },
  {
    file: 'organ-and-volcano.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 57 came first and 58 in the first three.
    first: { questions: 86, amounts: 74, colours: 0, scope: 76 },
    held: { questions: 92, amounts: 77, colours: 0, scope: 78 },
  },
  {
    file: 'carriage-and-cloister.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 58 came first and all in the first three.
    first: { questions: 92, amounts: 78, colours: 0, scope: 77 },
    held: { questions: 95, amounts: 79, colours: 0, scope: 80 },
  },
  {
    file: 'padlock-and-altiplano.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 55 came first and 59 in the first three. One word, a trade mark, is another since.
    first: { questions: 91, amounts: 78, colours: 0, scope: 78 },
    held: { questions: 96, amounts: 80, colours: 0, scope: 77 },
  },
  {
    file: 'nightbake-and-florist.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 59 came first and all in the first three. One word, a trade mark, is another since.
    first: { questions: 82, amounts: 72, colours: 0, scope: 77 },
    held: { questions: 91, amounts: 79, colours: 0, scope: 79 },
  },
  {
    file: 'schoolkitchen-and-nightdesk.json',
    // Of 140 questions and 60 amounts: run once, before anything was tuned on it.
    first: { questions: 110, amounts: 58, colours: 0, scope: 0 },
    held: { questions: 119, amounts: 60, colours: 0, scope: 0 },
  },
  {
    file: 'beeyard-and-notary.json',
    // As many; run once, before anything was tuned on it. Honey and scents, which tell of a flaw and are no colourant that is named, are no label of it since.
    first: { questions: 103, amounts: 55, colours: 0, scope: 0 },
    held: { questions: 117, amounts: 59, colours: 0, scope: 0 },
  },
  {
    file: 'tramshed-and-swimhall.json',
    // As many; run once, before anything was tuned on it.
    first: { questions: 115, amounts: 59, colours: 0, scope: 0 },
    held: { questions: 123, amounts: 60, colours: 0, scope: 0 },
  },
  {
    file: 'physio-and-dispatch.json',
    // As many; run once, before anything was tuned on it.
    first: { questions: 111, amounts: 59, colours: 0, scope: 0 },
    held: { questions: 115, amounts: 59, colours: 0, scope: 0 },
  },
  {
    file: 'organloft-and-cablecar.json',
    // Of 100 questions, 80 amounts, 30 colours and 80 of the field or not: run once, before anything was tuned on it; of its 60 flaws 58 came first and 59 in the first three.
    first: { questions: 85, amounts: 76, colours: 27, scope: 78 },
    held: { questions: 92, amounts: 76, colours: 27, scope: 78 },
  },
  {
    file: 'pianotuner-and-phonestall.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 58 came first and in the first three.
    first: { questions: 88, amounts: 77, colours: 30, scope: 77 },
    held: { questions: 93, amounts: 77, colours: 30, scope: 77 },
  },
  {
    file: 'galleycook-and-kiln.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 59 came first and all in the first three. Two words, trade marks, are others since.
    first: { questions: 83, amounts: 77, colours: 29, scope: 79 },
    held: { questions: 94, amounts: 77, colours: 29, scope: 78 },
  },
  {
    file: 'hotelnight-and-ledger.json',
    // Of 200 questions: run once, before anything was tuned on it; a third of it was kept from tuning then.
    first: { questions: 178, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 187, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'roadside-and-bus.json',
    // As many; as that.
    first: { questions: 165, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 176, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'pharmacy-and-south.json',
    // As many; as that.
    first: { questions: 153, amounts: 0, colours: 0, scope: 0 },
    held: { questions: 179, amounts: 0, colours: 0, scope: 0 },
  },
  {
    file: 'nightclass-and-tianguis.json',
    // As many; run once, before anything was tuned on it; of its 60 flaws 57 came first and 58 in the first three.
    first: { questions: 90, amounts: 77, colours: 30, scope: 80 },
    held: { questions: 96, amounts: 78, colours: 30, scope: 80 },
  },
  {
    file: 'bakery-and-balcony.json',
    // Run once, before anything was tuned on it; of its 110 flaws 104 came first.
    first: { questions: 52, amounts: 47, colours: 46, scope: 22 },
    held: { questions: 55, amounts: 49, colours: 48, scope: 24 },
  },
  {
    file: 'cove-and-nightoven.json',
    // Run once, nothing was learned from it; of its 60 flaws 57 came first and 59 in the first three.
    first: { questions: 83, amounts: 79, colours: 30, scope: 77 },
    held: { questions: 84, amounts: 79, colours: 30, scope: 76 },
  },
  {
    file: 'prairiebus-and-taxirank.json',
    // Every question in the news of a day. Run once, nothing was learned from it; of its 60 flaws all came first.
    first: { questions: 75, amounts: 75, colours: 29, scope: 73 },
    held: { questions: 76, amounts: 75, colours: 29, scope: 72 },
  },
  {
    file: 'schoolcook-and-hairdresser.json',
    // Every question in the news of a day. Rules were tuned on two thirds of it; colours as they are now.
    first: { questions: 76, amounts: 76, colours: 27, scope: 76 },
    held: { questions: 84, amounts: 77, colours: 27, scope: 76 },
  },
  {
    file: 'vetnurse-and-chemistry.json',
    // Rules were tuned on two thirds of it; colours as they are now.
    first: { questions: 78, amounts: 66, colours: 29, scope: 79 },
    held: { questions: 81, amounts: 74, colours: 29, scope: 79 },
  },
  {
    file: 'elevator-and-ward.json',
    // Run once, nothing was learned from it; of its 60 flaws 58 came first and 59 in the first three.
    first: { questions: 85, amounts: 79, colours: 29, scope: 79 },
    held: { questions: 85, amounts: 79, colours: 29, scope: 79 },
  },
  {
    file: 'nightporter-and-seamstress.json',
    // Rules were tuned on two thirds of it; of its 60 flaws 58 came first and 59 in the first three.
    first: { questions: 84, amounts: 78, colours: 29, scope: 77 },
    held: { questions: 91, amounts: 79, colours: 29, scope: 79 },
  },
  {
    file: 'pastryschool-and-kindergarten.json',
    // Rules were tuned on two thirds of it; of its 60 flaws 59 came first and all in the first three.
    first: { questions: 81, amounts: 77, colours: 28, scope: 74 },
    held: { questions: 89, amounts: 78, colours: 28, scope: 78 },
  },
  {
    file: 'lighthouse-and-shepherd.json',
    // Rules were tuned on two thirds of it; of its 60 flaws 53 came first and 58 in the first three.
    first: { questions: 87, amounts: 76, colours: 25, scope: 75 },
    held: { questions: 92, amounts: 76, colours: 25, scope: 77 },
  },
];

/**
 * How many of each part the usual run asks of each set: where how texts are read has changed a thousand lines of all, so that what breaks one
 * line in a hundred is met ten times; else half of them. What goes through the whole conversation takes a twentieth of a second.
 */
const DRAWN = hasChanged('jobs', process.env.CHANGED)
  ? { questions: 4, amounts: 6, colours: 4, scope: 3 }
  : { questions: 2, amounts: 3, colours: 2, scope: 2 };

/** What is asked in the usual run: a sample of what is understood, of which nothing may be missed. */
const askedOf = (set: TextSet, missed: Missed, file: string): TextSet => {
  const understood = <Item>(part: Part, items: readonly Item[]) =>
    drawn(
      items.filter((_, at) => !missed[part].includes(at)),
      DRAWN[part],
      `${file} ${part}`,
    );
  return {
    ...set,
    questions: understood('questions', set.questions),
    amounts: understood('amounts', set.amounts),
    colours: understood('colours', set.colours),
    scope: understood('scope', set.scope),
  };
};

describe('what makers write is understood', () => {
  test.each(sets)(
    '$file',
    async ({ file, held }) => {
      const set = JSON.parse(readFileSync(new URL(file, import.meta.url), 'utf8')) as TextSet;
      const known = MISSED[file];
      // What is missed is known by number, so that nothing else may be; a set that is new is asked whole until it is.
      const isTooLong = (part: Part) => known && set[part].length - known[part].length < held[part];
      expect(PARTS.filter(isTooLong)).toEqual([]);
      const isWhole = WHOLE || !known;
      const { misses, ...parts }: Score = await score(
        isWhole ? set : askedOf(set, known, file),
        conversation,
      );
      for (const part of PARTS) {
        const { right, total } = parts[part];
        const tooMany = total - right > (isWhole ? total - held[part] : 0);
        expect({ part, right, total, misses: tooMany ? misses : [] }).toMatchObject({ misses: [] });
      }
      const found = isWhole && known ? missedIn(misses) : known;
      expect(found, 'write-missed.ts writes them').toEqual(known);
    },
    300_000,
  );
});
