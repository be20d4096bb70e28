import type { Film } from './films.ts';

/** Every film of a folder of measured mixtures, and the wavelengths (nm) of its readings. */
export type MixtureData = { readonly films: readonly Film[]; readonly wavelengths: readonly number[] };

/** Drawdown cards, where the folder has no reading of them. */
const USUAL_WHITE = 0.85;
const USUAL_BLACK = 0.05;

/**
 * Reads the two tables of a folder of measured mixtures.
 * @param specifications lines `code TAB pigment-pigment|percent-percent`
 * @param spectra a header of wavelengths, then `code_side TAB` percent reflectances, where the side is
 *   `ow`, `ob` (paint over white, over black), `w` or `b` (the bare card)
 */
export function parseMixtures(specifications: string, spectra: string): MixtureData {
  const [header, ...rows] = linesOf(spectra).map(line => line.split('\t'));
  const wavelengths = (header ?? [])
    .slice(1)
    .filter(cell => cell.trim() !== '')
    .map(Number);
  const readings = new Map(
    rows.map(([name, ...cells]) => [name, cells.slice(0, wavelengths.length).map(percent)]),
  );
  const complete = (name: string) => {
    const values = readings.get(name);
    return values?.length === wavelengths.length && values.every(Number.isFinite) ? values : undefined;
  };
  const usual = (side: string) =>
    [...readings.keys()]
      .map(name => (name?.endsWith(side) === true ? complete(name) : undefined))
      .find(values => values !== undefined);
  const films = linesOf(specifications).flatMap(line => {
    const [code = '', recipe = ''] = line.split('\t');
    const overWhite = complete(`${code}_ow`);
    const overBlack = complete(`${code}_ob`);
    const white = complete(`${code}_w`) ?? usual('_w') ?? wavelengths.map(() => USUAL_WHITE);
    const black = complete(`${code}_b`) ?? usual('_b') ?? wavelengths.map(() => USUAL_BLACK);
    if ((overWhite ?? overBlack) === undefined) return [];
    const film: Film = {
      code,
      shares: sharesOf(recipe),
      white,
      black,
      ...(overWhite && { overWhite }),
      ...(overBlack && { overBlack }),
    };
    return [film];
  });
  return { films, wavelengths };
}

/** An empty cell is no reading, where `Number` would make it 0. */
function percent(cell: string): number {
  return cell.trim() === '' ? Number.NaN : Number(cell) / 100;
}

function linesOf(text: string): string[] {
  return text.split(/\r?\n/).filter(line => line.trim() !== '');
}

/** `Minium-ZincWhite|50.8-49.2` as shares of 1, absent pigments left out. */
function sharesOf(recipe: string): ReadonlyMap<string, number> {
  const [names = '', percents = ''] = recipe.split('|');
  const amounts = percents.split('-').map(Number);
  const total = amounts.reduce((sum, amount) => sum + amount, 0);
  const entries = names.split('-').map((name, at) => [name.trim(), (amounts[at] ?? 0) / total] as const);
  return new Map(entries.filter(([, share]) => share > 0));
}
