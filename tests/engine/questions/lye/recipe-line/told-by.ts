import { prepared } from '../../../../../src/engine/questions/lye/amounts/prepared.ts';
import { plainWords } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import { recipeLine } from '../../../../../src/engine/questions/lye/recipe-line/recipe-line.ts';

/** What is no, and what is empty, is left out. */
const nonempty = (told: object): object =>
  Object.fromEntries(
    Object.entries(told).filter(
      ([, one]) => one !== undefined && one !== false && !(Array.isArray(one) && one.length === 0),
    ),
  );

/** The recipe that a text tells in plain words, or what is unclear of it, with all that is told beside. */
export function toldBy(text: string): object {
  const { doubt, ways, ...told } = {
    doubt: undefined,
    ways: undefined,
    ...recipeLine(prepared(text), plainWords(text, { clauses: true })),
  };
  return nonempty({
    ...told,
    doubt: doubt?.names.map(name => name.text),
    ways: ways?.map(({ line }) => line),
  });
}

/** A text, the recipe or what is unclear, and what is told beside. */
export type Row = readonly [text: string, told: string, beside?: object];

/** Every row with what stands beside it. */
export const whole = (rows: readonly Row[]) =>
  rows.map(([text, told, beside = {}]): readonly [string, string, object] => [text, told, beside]);
