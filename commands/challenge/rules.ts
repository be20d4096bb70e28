import type { Target, Terms } from '../../src/engine/challenges/terms.ts';
import type { Words } from '../../src/words/index.ts';

/** A colour of a palette, with its part of the face where one is asked for. */
const coloured = ({ hex, share }: Target) => (share === undefined ? hex : `${hex} ${Math.round(share)} %`);

/** The rules of a challenge, one a row. */
export function rulesOf(terms: Terms, say: Words): readonly string[] {
  const words = say.challenges;
  const { palette, mostColourants, madeFrom, leastCureDays, joinedBefore, quorum, ties } = terms;
  return [
    ...(palette.length > 0 ? [words.palette({ colours: palette.map(coloured) })] : []),
    `${words.classes[terms.class]}, ${words.constraints[terms.constraint]}`,
    words.entriesEach({ most: terms.entriesPerMember }),
    ...(mostColourants === undefined ? [] : [words.mostColourants({ most: mostColourants })]),
    ...(madeFrom === undefined ? [] : [words.madeFrom({ from: madeFrom })]),
    ...(leastCureDays ? [words.leastCure({ days: leastCureDays })] : []),
    words.decides[terms.decides],
    ...(terms.decides === 'colour' ? [] : [words.methods[terms.method]]),
    ...(terms.decides === 'votes' ? [] : [words.whiteSheet, words.withinError]),
    ...(joinedBefore === undefined ? [] : [words.joinedBefore({ before: joinedBefore, zone: terms.zone })]),
    ...(quorum === undefined ? [] : [words.quorum({ needed: quorum })]),
    ...(terms.decides === 'colour' ? [] : [words.ownEntry]),
    ties === 'shared' ? words.sharedTies : words.brokenTies,
  ];
}
