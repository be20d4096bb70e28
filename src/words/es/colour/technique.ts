import type { technique as english } from '../../en/colour/technique.ts';
import { techniqueAsked } from './technique/asked.ts';
import { techniqueAskedOfPowders } from './technique/asked-of-powders.ts';
import { techniqueBars } from './technique/bars.ts';
import { techniqueBench } from './technique/bench.ts';
import { techniqueBeside } from './technique/beside.ts';
import { techniqueChoosing } from './technique/choosing.ts';
import { techniqueHues } from './technique/hues.ts';
import { techniqueIngredients } from './technique/ingredients.ts';
import { techniqueMatters } from './technique/matters.ts';
import { techniqueNamed } from './technique/named.ts';
import { techniqueOutright } from './technique/outright.ts';
import { colourGiven, techniquePlants } from './technique/plants.ts';
import { techniquePowders } from './technique/powders.ts';
import { techniqueScents } from './technique/scents.ts';
import { techniqueSwirls } from './technique/swirls.ts';
import { techniqueTrace } from './technique/trace.ts';

/** Lo que se dice a cómo se trabaja la masa con color: primero qué hacer, luego por qué y qué sigue. */
export const technique: typeof english = {
  rawBatter: 'Guantes y gafas puestos: la sosa y la masa cruda queman, la masa uno o dos días.',
  dust: 'Polvo fino: sin corrientes, mascarilla mientras esté seco, y se limpia en húmedo.',
  topics: {
    ...techniqueTrace,
    ...techniqueSwirls,
    ...techniquePowders,
    ...techniqueChoosing,
    ...techniqueScents,
    ...techniqueBeside,
    ...techniqueIngredients,
    ...techniqueBench,
  },
  named: {
    ...techniqueNamed,
    ...techniqueHues,
    ...techniquePlants,
    ...techniqueOutright,
    ...techniqueAsked,
    ...techniqueAskedOfPowders,
    ...techniqueBars,
  },
  given: colourGiven,
  matters: techniqueMatters,
};
