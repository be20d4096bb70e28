import { fold } from '../../engine/text/fold.ts';
import { mostOff, slipCost } from '../../engine/text/spelling/slip-cost.ts';

/** Words that makers use for one thing which commands call by one name each, in both languages. */
const ALIKE: readonly (readonly string[])[] = [
  'colourant item jar pigment colour mica powder name one colorante pigmento bote producto what',
  'portion size batter amount to for batch cantidad porcion tamano masa',
  'amount grams weight how-much quantity cantidad gramos peso',
  'oils fats oil recipe aceites grasas',
  'recipe name receta nombre',
  'save-as name as keep-as nombre guardar',
  'words text question description note what problem palabras texto pregunta',
  'target colour color hex wish objetivo',
  'mix colourants colours colors with mezcla colores',
  'photo picture image foto imagen',
  'strength shade depth intensity fuerza intensidad',
  'portions colours layers colores capas',
  'carrier wet in liquid portador vehiculo',
].map(words => words.split(' '));

/** The option of a command that was likely meant by a name it does not have: a slip, or another word for the same thing. */
export function optionMeant(typed: string, known: readonly string[]): string | undefined {
  const said = fold(typed).replaceAll(' ', '-').slice(0, 40);
  const spelt = known
    .map(name => ({ name, far: slipCost(said, name) }))
    .filter(({ name, far }) => far <= Math.max(1, mostOff(name.length)) && name.length > 2)
    .sort((a, b) => a.far - b.far)[0];
  if (spelt) return spelt.name;
  const alike = ALIKE.filter(names => names.some(name => fold(name) === said || name === said)).flat();
  return alike.find(name => known.includes(name));
}
