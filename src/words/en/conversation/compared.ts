import type { ColourantKind } from '../../../engine/colourants/colourant.ts';
import { numbersIn } from '../../numbers.ts';

const { plain } = numbersIn('en');
const list = (names: readonly string[]) => names.join(', ');

/** What is said of two colourants and more side by side. */
export const compared = {
  stronger: (v: { one: string; other: string; times: number }) =>
    `${v.one} is stronger: about ${plain(v.times)} times ${v.other}, spoon for spoon`,
  asStrong: (v: { one: string; other: string }) =>
    `${v.one} and ${v.other} are about as strong, spoon for spoon`,
  fullInACup: (v: { spoons: string }) => `Full colour: ${v.spoons} a cup.`,
  /** What a powder is in a comparison. */
  kinds: {
    oxide: 'a mineral pigment (iron oxide), matt and opaque',
    ultramarine: 'a mineral pigment (ultramarine), clear and clean',
    chromium: 'a mineral pigment (chromium green), matt and opaque',
    mica: 'a mica, pigment or dye on shimmering flakes',
    neon: 'a neon, dye held in resin',
    white: 'a white pigment',
    lake: 'a lake, dye fixed on a base',
    dye: 'a dye, which dissolves',
    carbon: 'carbon black, matt',
    clay: 'a soft, earthy clay, which thickens the batter a little',
    botanical: 'a plant powder, which varies and may leave specks',
  } satisfies Record<ColourantKind, string>,
  whatItIs: (v: { name: string; kind: string; hue: string | undefined }) =>
    v.hue === undefined ? `${v.name} is ${v.kind}` : `${v.name} is ${v.kind}: ${v.hue}`,
  coatDecides: 'What coats it decides what lye does: read its list to /colourant check.',
  compareNote:
    'This is by kind (common practice). Two jars of one kind differ by lot: only test bars tell them apart, see /calibrate.',
  compareWhich: (v: { names: readonly string[] }) =>
    v.names.length === 0
      ? 'Which two colours? Your shelf is empty.'
      : `Which two? On your shelf: ${list(v.names)}.`,
};
