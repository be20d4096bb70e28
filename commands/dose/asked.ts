import type { Context } from '../../src/conversation/context.ts';
import { readPart } from '../../src/engine/colour/reading/mix-text.ts';
import type { Batter } from '../../src/engine/dispersion/batter.ts';
import { strengthInPortion } from '../../src/engine/dosing/amount-in-portion.ts';
import { parseCarrier, parsePremix } from '../../src/engine/dosing/parse-premix.ts';
import { portionMillilitres } from '../../src/engine/dosing/portion.ts';
import type { DoseAsked } from '../../src/engine/dosing/request.ts';
import type { Portion } from '../../src/engine/quantities/amount.ts';
import { hasFigure } from '../../src/engine/quantities/number.ts';
import {
  parseStrength,
  splitStrength,
  USUAL,
  type WantedStrength,
} from '../../src/engine/quantities/strength.ts';
import { MEASURES, type Measures } from '../../src/engine/quantities/units.ts';
import { Refusal, refuse } from '../../src/engine/refusal.ts';
import { remembered } from '../../src/engine/remembered.ts';
import { excerpt } from '../../src/engine/text/excerpt.ts';
import { carrierNamed } from '../../src/engine/text/names/carrier-name.ts';
import { spooned } from '../../src/presenting/colour/jars.ts';
import { listShelf } from '../../src/records/shelf/index.ts';
import { findJar, type Jar, knownOf } from '../../src/records/shelf/jars/jar.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'premix-carrier-twice': { readonly premix: string; readonly carrier: string };
  }
}

/** What a dose is asked for with: the options of the command. */
export type DoseOptions = {
  readonly colourant: string;
  readonly portion: string;
  readonly strength?: string | undefined;
  readonly carrier?: string | undefined;
  readonly premix?: string | undefined;
  readonly with: readonly string[];
  readonly recipe?: string | undefined;
};

type Shelf = Context['shelf'];

/** Whether a jar of the asker's would be named. */
export async function doseNamesJar(
  { colourant, with: others }: DoseOptions,
  { shelf }: Context,
): Promise<boolean> {
  // Most own none here; what they ask for is read when it is answered.
  if ((await listShelf(shelf)).length === 0) return false;
  return (await jarsMeant([colourant, ...others], shelf)).some(({ item }) => item !== undefined);
}

/** The jars that these names mean, whatever amounts are told beside them. */
export const jarsMeant = async (names: readonly string[], shelf: Shelf): Promise<readonly Jar[]> =>
  (await Promise.all(names.map(one => findColoured(one, MEASURES.us, shelf)))).map(({ jar }) => jar);

/** The jars that are meant, and how much is wanted of each in a portion of that batter. */
export async function readColours(asked: DoseOptions, measures: Measures, shelf: Shelf) {
  const first = await findColoured(asked.colourant, measures, shelf);
  const others = await Promise.all(asked.with.map(one => findColoured(one, measures, shelf)));
  const strength = asked.strength === undefined ? first.strength : strengthOf(asked.strength);
  refuseTwoLiquids(asked);
  const wetted = {
    ...(asked.carrier !== undefined && { carrier: carrierOf(asked.carrier) }),
    ...(asked.premix !== undefined && { premix: parsePremix(asked.premix, measures) }),
  };
  const coloured = [{ ...first, strength }, ...others];
  return {
    jars: coloured.map(({ jar }) => jar),
    wantedIn: (portion: Portion, batter: Batter): readonly DoseAsked[] => {
      const millilitres = portionMillilitres(portion, batter);
      return coloured.map(({ jar, strength: wanted }, at) => ({
        // What the member's own jar is known to do narrows the answer.
        ...knownOf(jar, measures),
        strength: strengthInPortion(wanted, spooned(jar, measures), { millilitres, measures }),
        ...(at === 0 && wetted),
      }));
    },
  };
}

/** A paste is in one liquid: a carrier beside it may name the one it leaves out, and no other. */
function refuseTwoLiquids({ premix, carrier }: Pick<DoseOptions, 'premix' | 'carrier'>): void {
  if (premix === undefined || carrier === undefined) return;
  const inPaste = carrierNamed(premix);
  if (inPaste !== undefined && inPaste !== parseCarrier(carrier))
    refuse('premix-carrier-twice', { premix: excerpt(premix), carrier: excerpt(carrier) });
}

// There are a dozen ways to say either.
const [split, strengthOf, carrierOf] = [
  remembered(splitStrength),
  remembered(parseStrength),
  remembered(parseCarrier),
];

type Coloured = { readonly jar: Jar; readonly strength: WantedStrength };

/** "gold mica pastel", "gold mica 1 tsp": a jar, and how much of it is told beside, unless the whole is the name of one. */
async function findColoured(asked: string, measures: Measures, shelf: Shelf): Promise<Coloured> {
  const { rest, strength } = split(asked);
  // Only a jar of one's own can be called so as a whole; whoever has none is not looked for.
  if (strength && (await listShelf(shelf)).length === 0) return { jar: await findJar(shelf, rest), strength };
  const whole = await findJar(shelf, asked).catch(orUnread);
  if (strength)
    return !(whole instanceof Refusal) && whole.item
      ? { jar: whole, strength: USUAL }
      : { jar: await findJar(shelf, rest), strength };
  if (!(whole instanceof Refusal)) return { jar: whole, strength: USUAL };
  if (!hasFigure(asked)) throw whole;
  const { name, dose = USUAL } = readPart(asked, measures);
  return name === asked.trim() ? Promise.reject(whole) : { jar: await findJar(shelf, name), strength: dose };
}

const orUnread = (error: unknown): Refusal => {
  if (error instanceof Refusal) return error;
  throw error;
};
