import type * as en from '../../en/challenges/challenge-step-refusals.ts';
import { numbersIn } from '../../numbers.ts';
import { challengeSteps } from './challenge-steps.ts';
import { challenges } from './challenges.ts';

const { plain } = numbersIn('es');

const { phases, violations } = challenges;

export const challengeStepsRefusals: typeof en.challengeStepsRefusals = {
  'challenge-none-such': ({ needs }) =>
    `Ahora ningún reto de aquí ${phases[needs[0] ?? 'entering']}. Mira /challenge list.`,
  'challenge-which': ({ titles }) =>
    `¿Qué reto: ${titles.map(title => `«${title}»`).join(', ')}? Nómbralo con la opción «challenge».`,
  'challenge-title-taken': ({ title }) =>
    `Ya hay un reto «${title}» en marcha: da otro título a este, o cancela antes el otro.`,
  'challenge-bar-taken-out': v =>
    `${challengeSteps.takenOutOfYours(v)} Su lugar sigue ocupado: ninguna otra lo toma.`,
  'challenge-date-unreadable': ({ text }) => `No entiendo «${text}» como día. Escríbelo como 2026-11-20.`,
  'challenge-entry-unfit': ({ violations: found }) =>
    found.map(one => (violations[one.id] as (v: typeof one) => string)(one)).join(' '),
  'challenge-entry-which': ({ entries }) => `¿Cuál de tus barras? Da su número: ${entries.join(', ')}.`,
  'challenge-entry-none': () => 'No tienes ninguna barra en este reto. Inscribe una con /challenge enter.',
  'challenge-bar-title-unfit': ({ most }) => `Una barra necesita un nombre de 1 a ${most} caracteres.`,
  'challenge-colourants-missing': () => 'Di qué colorantes lleva la barra, separados por comas.',
  'challenge-shares-unfit': ({ sum }) =>
    `Las partes de una paleta suman 100 %, las tuyas ${plain(sum)} %; deja una sin parte para que tome el resto.`,
  'vote-unreadable': ({ text }) =>
    `No entiendo «${text}» como papeleta. Escribe los números de las barras, la mejor primero: «2,1,3»; «2,1=3» empata dos.`,
  'vote-number-unknown': ({ number }) =>
    `Ninguna barra que participe tiene el número ${number}. Mira /challenge show.`,
};
