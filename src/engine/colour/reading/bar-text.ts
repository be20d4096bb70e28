import { unbroken } from '../../over-lines.ts';
import { parseColour } from '../../quantities/colour.ts';
import { plainText } from '../../quantities/number.ts';
import { parseStrength, type Strength } from '../../quantities/strength.ts';
import { MEASURES, type Measures } from '../../quantities/units.ts';
import { Refusal, refuse } from '../../refusal.ts';
import { excerpt } from '../../text/excerpt.ts';
import { type Lab, labOfHex } from '../spectra/cielab.ts';
import { readDose } from './mix-text.ts';
import { saysPlain } from './plain-soap.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    'test-bar-unreadable': { text: string };
    'lab-out-of-range': { text: string };
  }
}

/** A dose of a test bar: none in a plain one; grams and spoons count by the cup. */
export type BarDose =
  | Strength
  | { readonly by: 'grams-a-cup'; readonly grams: number }
  | { readonly by: 'plain' };

/** A test bar as it is written. */
export type WrittenBar = { readonly dose: BarDose; readonly lab: Lab };

const NUMBER = String.raw`[+-]?\d+(?:\.\d+)?`;
/** `lab(52 20 -31)`, `Lab 52, 20, -31`, `L 52 a 20 b -31`. */
const LAB = new RegExp(
  unbroken`
    \b(?:cie\s*)?l(?:\*?\s*a\*?\s*b\*?)?\*?\s*[:=(]?\s*(${NUMBER})
    %?\s*[,;/ ]\s*(?:a\*?\s*[:=]?\s*)?(${NUMBER})\s*[,;/ ]\s*(?:b\*?\s*[:=]?\s*)?(${NUMBER})\s*\)?\s*$
  `,
  'iu',
);
/** `0`, `0 tsp per cup`. */
const NOTHING = /^0(?:\s*\p{L}.*)?$/u;

/**
 * Reads a test bar: its dose, then its colour, as in `1/4 tsp per cup #6b5aa8`, `pastel = rebeccapurple`,
 * `0.8 g/cup lab(52 20 -31)`, or `plain #efe6cf` for a bar without colourant. Spoons and grams are to the cup.
 * Throws a Refusal: `test-bar-unreadable`, `lab-out-of-range`, `strength-out-of-range`.
 */
export function parseBar(text: string, measures: Measures = MEASURES.us): WrittenBar {
  const plain = plainText(text.slice(0, 120).replaceAll('−', '-'));
  const unread = () => refuse('test-bar-unreadable', { text: excerpt(text) });
  const lab = LAB.exec(plain);
  if (lab) {
    const dose = plain.slice(0, lab.index);
    return { dose: parseBarDose(dose, measures) ?? unread(), lab: checked(lab, text) };
  }
  const words = plain.split(/[\s,;:=→]+/u).filter(word => word !== '');
  for (const many of [1, 2, 3]) {
    for (const [colour, dose] of [
      [words.slice(-many), words.slice(0, -many)],
      [words.slice(0, many), words.slice(many)],
    ] as const) {
      const hex = orNothing(colour.join(' '));
      const read = hex && parseBarDose(dose.join(' '), measures);
      if (hex && read) return { dose: read, lab: labOfHex(hex) };
    }
  }
  return unread();
}

/**
 * What stands before the colour of a bar, and that colour, in every way the text can be parted so, the longest name of a colour
 * first. Throws a Refusal `lab-out-of-range`.
 */
export function colourLast(text: string): readonly { readonly before: string; readonly lab: Lab }[] {
  const plain = plainText(text.replaceAll('−', '-')).trim();
  const lab = LAB.exec(plain);
  if (lab) return [{ before: plain.slice(0, lab.index), lab: checked(lab, text) }];
  return [3, 2, 1].flatMap(many => {
    const parted = new RegExp(String.raw`^(.+?)[\s:=→,;]+((?:\S+\s+){${many - 1}}\S+)$`, 'u').exec(plain);
    const hex = parted && orNothing(parted[2]!);
    return parted && hex ? [{ before: parted[1]!, lab: labOfHex(hex) }] : [];
  });
}

/** Reads the dose of a test bar; undefined when it is none. Throws a Refusal `strength-out-of-range`. */
export function parseBarDose(text: string, measures: Measures = MEASURES.us): BarDose | undefined {
  const said = text.replace(/[\s,;:=→-]+$/u, '').trim();
  if (said === '') return undefined;
  if (saysPlain(said) || NOTHING.test(said)) return { by: 'plain' };
  const grams =
    /^([\d.,]+)\s*(?:g|grams?|gramos?)\s*(?:(?:\/|per|por|a)\s*(?:us\s+|la\s+)?(?:c|cups?|tazas?))?$/iu.exec(
      said,
    )?.[1];
  if (grams !== undefined) {
    const read = readDose(`${grams} g`, measures);
    return read?.by === 'amount' && read.amount.measure === 'mass'
      ? { by: 'grams-a-cup', grams: read.amount.grams }
      : undefined;
  }
  return strengthOf(said);
}

function strengthOf(said: string): Strength | undefined {
  try {
    return parseStrength(said);
  } catch (refusal) {
    if (refusal instanceof Refusal && refusal.id === 'strength-unreadable') return undefined;
    throw refusal;
  }
}

function orNothing(text: string): string | undefined {
  try {
    return parseColour(text);
  } catch {
    return undefined;
  }
}

function checked([, l, a, b]: RegExpExecArray, text: string): Lab {
  const lab = { l: Number(l), a: Number(a), b: Number(b) };
  const fits = lab.l >= 0 && lab.l <= 100 && Math.abs(lab.a) <= 128 && Math.abs(lab.b) <= 128;
  return fits ? lab : refuse('lab-out-of-range', { text: excerpt(text) });
}
