import { action, commandGroup } from '../../src/conversation/command.ts';
import { member, picture, role, text, whole, yesNo } from '../../src/conversation/option.ts';
import { history, list, results, show } from './answer.ts';
import { challengeActs } from './deadlines.ts';
import { suggestUsed } from './entering/colourants-used.ts';
import { enter, part, replace, takeBack, withdraw } from './entering/enter.ts';
import { enterButton, enterFilled } from './entering/enter-form.ts';
import { exportChallenge } from './export.ts';
import { ideas } from './ideas.ts';
import { suggestChallenges } from './lookup.ts';
import { open, openFilled } from './opening/open.ts';
import { showPalette } from './opening/palette.ts';
import { drawn, terms, zone } from './opening/term-options.ts';
import { audit, cancel, disqualify, extend, settings } from './steward.ts';
import { back, ballot, ownBallot, pick, turn, vote } from './voting/vote.ts';
import { giveRecipe } from './winning-recipe.ts';

const challenge = text({
  en: 'Which challenge, by its title',
  es: 'Qué reto, por su título',
}).optional();
const completes = { challenge: suggestChallenges };
const reason = text({ en: 'Why: members can read it', es: 'Por qué: todos pueden leerlo' }, { most: 300 });
const barNumber = whole(
  { en: 'The number of the bar', es: 'El número de la barra' },
  { least: 1, most: 9999 },
);

const title = text({ en: 'What it is called', es: 'Cómo se llama' }, { most: 80 });
const photo = picture({
  en: 'The bar; beside a white sheet where colour counts',
  es: 'La barra; junto a una hoja blanca si cuenta el color',
});
const colourants = text(
  { en: 'Colourants in it, apart by commas', es: 'Colorantes que lleva, entre comas' },
  { most: 500 },
);
const note = text(
  { en: 'A note; how you made it', es: 'Una nota; cómo la hiciste' },
  { most: 1000 },
).optional();
const made = text({ en: 'Day it was made: 2026-11-20', es: 'Día en que se hizo: 2026-11-20' }).optional();

export default commandGroup(
  'challenge',
  {
    en: 'Colour challenges: open, enter, vote, results',
    es: 'Retos de color: abrir, inscribir, votar, resultados',
  },
  {
    open: action({
      purpose: { en: 'Open a challenge (stewards)', es: 'Abre un reto (responsables)' },
      seenBy: 'asker',
      opensForm: 'bare',
      access: 'steward',
      options: terms,
      answer: open,
    }),
    show: action({
      purpose: { en: 'A challenge: rules, dates, bars', es: 'Un reto: reglas, fechas, barras' },
      seenBy: 'asker',
      options: { challenge },
      completes,
      answer: show,
    }),
    list: action({
      purpose: { en: 'The challenges of this group', es: 'Los retos de este grupo' },
      seenBy: 'asker',
      options: {},
      answer: (_, context) => list(context),
    }),
    enter: action({
      purpose: { en: 'Enter a bar', es: 'Inscribe una barra' },
      seenBy: 'asker',
      pace: 'slow',
      options: { title, photo, colourants, note, made, challenge },
      completes: { ...completes, colourants: suggestUsed },
      answer: enter,
    }),
    replace: action({
      purpose: { en: 'Hand your bar in anew', es: 'Entrega tu barra de nuevo' },
      seenBy: 'asker',
      pace: 'slow',
      options: {
        entry: barNumber.optional(),
        title: title.optional(),
        photo: photo.optional(),
        colourants: colourants.optional(),
        note,
        made,
        challenge,
      },
      completes: { ...completes, colourants: suggestUsed },
      answer: replace,
    }),
    withdraw: action({
      purpose: { en: 'Take your bar back', es: 'Retira tu barra' },
      seenBy: 'asker',
      options: { entry: barNumber.optional(), challenge },
      completes,
      answer: withdraw,
    }),
    vote: action({
      purpose: { en: 'Vote, or change your vote', es: 'Vota o cambia tu voto' },
      seenBy: 'asker',
      options: {
        ranking: text(
          {
            en: 'Bars by number, best first: “2,1,3”; “2,1=3” ties',
            es: 'Barras por número, la mejor primero: «2,1,3»; «2,1=3» empata',
          },
          { most: 1000 },
        ).optional(),
        challenge,
      },
      completes,
      answer: vote,
    }),
    ballot: action({
      purpose: { en: 'What you voted', es: 'Lo que votaste' },
      seenBy: 'asker',
      options: { challenge },
      completes,
      answer: (asked, context) => ownBallot(asked.challenge, context),
    }),
    results: action({
      purpose: { en: 'How a challenge came out', es: 'Cómo acabó un reto' },
      seenBy: 'group',
      options: { challenge },
      completes,
      answer: results,
    }),
    history: action({
      purpose: { en: 'Places of a member so far', es: 'Puestos de alguien hasta ahora' },
      seenBy: 'asker',
      options: {
        member: member({ en: 'Whose; yours if left out', es: 'De quién; tuyos si falta' }).optional(),
      },
      answer: history,
    }),
    audit: action({
      purpose: { en: 'What stewards did', es: 'Lo que hicieron los responsables' },
      seenBy: 'asker',
      options: { challenge },
      completes,
      answer: audit,
    }),
    recipe: action({
      purpose: { en: 'You won: let the group keep your recipe', es: 'Ganaste: deja tu receta al grupo' },
      seenBy: 'group',
      options: {
        recipe: text({ en: 'Your recipe by its name', es: 'Tu receta por su nombre' }, { most: 100 }),
        challenge,
      },
      answer: giveRecipe,
    }),
    palette: action({
      purpose: {
        en: 'Colours of a photo, or drawn for our shelves',
        es: 'Colores de una foto, o sacados para nuestros estantes',
      },
      seenBy: 'asker',
      pace: 'slow',
      options: {
        colours: terms.random,
        ...drawn,
        photo: picture({ en: 'Take them from a photo', es: 'Tomarlos de una foto' }).optional(),
      },
      answer: showPalette,
    }),
    extend: action({
      purpose: { en: 'Move deadlines later (stewards)', es: 'Aplaza los plazos (responsables)' },
      seenBy: 'asker',
      access: 'steward',
      options: {
        reason,
        'entries-until': terms['entries-until'],
        'votes-until': terms['votes-until'],
        challenge,
      },
      completes,
      answer: extend,
    }),
    cancel: action({
      purpose: { en: 'Call a challenge off (stewards)', es: 'Cancela un reto (responsables)' },
      seenBy: 'asker',
      access: 'steward',
      options: { reason, challenge },
      completes,
      answer: cancel,
    }),
    disqualify: action({
      purpose: { en: 'Take a bar out (stewards)', es: 'Retira una barra (responsables)' },
      seenBy: 'asker',
      access: 'steward',
      options: { entry: barNumber, reason, challenge },
      completes,
      answer: disqualify,
    }),
    export: action({
      purpose: { en: 'Everything as JSON and CSV (stewards)', es: 'Todo en JSON y CSV (responsables)' },
      seenBy: 'asker',
      access: 'steward',
      options: { challenge },
      completes,
      answer: exportChallenge,
    }),
    settings: action({
      purpose: { en: 'Steward role and time zone (stewards)', es: 'Rol y zona horaria (responsables)' },
      seenBy: 'asker',
      access: 'steward',
      options: {
        role: role({ en: 'Role whose holders are stewards', es: 'Rol de los responsables' }).optional(),
        zone: zone.optional(),
        calls: role({ en: 'Role called when one opens', es: 'Rol al que se avisa al abrir' }).optional(),
        quiet: yesNo({ en: 'Call nobody any more', es: 'No avisar ya a nadie' }).optional(),
        threads: yesNo({ en: 'A thread for each challenge', es: 'Un hilo por reto' }).optional(),
        calendar: yesNo({ en: 'Deadlines in the events', es: 'Plazos en los eventos' }).optional(),
      },
      answer: settings,
    }),
  },
  {
    followUps: {
      'open-form': openFilled,
      enter: enterButton,
      'enter-form': enterFilled,
      part,
      withdraw: takeBack,
      ballot,
      pick,
      turn,
      back,
      ideas,
    },
    deadlines: challengeActs,
  },
);
