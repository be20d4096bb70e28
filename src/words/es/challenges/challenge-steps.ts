import { spaced } from '../../../engine/over-lines.ts';
import type * as en from '../../en/challenges/challenge-steps.ts';
import type { Lack, LackBeside } from '../../lack.ts';
import { numbersIn } from '../../numbers.ts';

const { plain } = numbersIn('es');
const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

const lacks: Readonly<Record<Lack, string>> = {
  view: 'no puedo ver el canal (Ver canal)',
  post: 'no puedo escribir en él (Enviar mensajes)',
  'post-in-threads': 'no puedo escribir en sus hilos (Enviar mensajes en hilos)',
  attach: 'no puedo adjuntar imágenes (Adjuntar archivos)',
  unlocked: 'el hilo está bloqueado',
  messages: 'solo admite publicaciones, no mensajes',
};

const lacksBeside: Readonly<Record<LackBeside, string>> = {
  thread: 'Sin hilo debajo: allí no puedo abrirlo (Crear hilos públicos).',
  calendar: 'Sus plazos no estarán en los eventos del grupo (Crear eventos).',
};

export const challengeSteps: typeof en.challengeSteps = {
  barNamed: v => `${v.name} (barra ${v.number})`,
  quoted: v => `«${v.title}»`,

  kicker: 'RETO DE COLOR',
  resultsKicker: 'RETO DE COLOR · RESULTADOS',
  cardAlt: v => `Cartel del reto «${v.title}»: paleta, fechas y reglas`,
  barsAlt: v => `Fotos de ${count(v.bars, 'barra', 'barras')}, cada una con su número`,
  resultsAlt: v => `Resultados de «${v.title}»: puestos, fotos y colores`,
  measuredAlt: v => `Foto de «${v.title}» con los colores medidos`,
  swatchNote: 'Muestras: arriba el color pedido, abajo el de la barra.',
  measuredColours: 'Medido en la barra',
  pairwise: 'Papeletas que ponen la barra de la fila por encima de la de la columna',
  colourScore: v => `color a ${v.score} de la paleta (0 es exacto, 2 apenas se nota)`,
  votes: v => count(v.votes, 'voto', 'votos'),
  pairsWon: ({ won, of }) =>
    won === of
      ? 'más papeletas la prefieren a cualquier otra que al revés'
      : won === 0
        ? 'se prefieren las otras, o queda a la par con alguna'
        : `más papeletas la prefieren a ${won} de las otras ${of}`,
  aheadOf: v => `${v.ahead} a ${v.behind} frente a la barra ${v.bar}`,
  nearPalette: v =>
    v.score <= 2
      ? 'la paleta, a simple vista'
      : v.score <= 5
        ? 'muy cerca de la paleta'
        : v.score <= 10
          ? 'cerca de la paleta'
          : v.score <= 20
            ? 'algo lejos de la paleta'
            : 'lejos de la paleta',
  twoPlaces: v => `${plain(v.votes)} por voto + ${plain(v.colour)} por color = ${plain(v.votes + v.colour)}`,

  opened: v => `«${v.title}» queda abierto.`,
  openedInChannel: 'Lo anuncio en este canal y llevo los plazos.',
  openedHere: 'Desde aquí no se avisa a nadie: no hay canal.',
  unscoredKinds:
    'El color se mide en fotos con una hoja blanca lisa. Las barras con neones o micas (perlados) no reciben nota de color; se avisa al inscribirlas.',
  openTitle: 'Un reto nuevo',
  fields: {
    title: 'Título',
    brief: '¿De qué va?',
    palette: 'Paleta, de 1 a 6 colores',
    entriesUntil: 'Inscribir hasta (vacío: 2 semanas)',
    votesUntil: 'Votar hasta (vacío: 3 días más)',
    photo: 'Foto de tu barra',
    photoOnWhite: 'Foto de tu barra junto a una hoja blanca',
    bar: '¿Cómo se llama tu barra?',
    colourants: 'Colorantes que lleva',
    made: 'Hecha el',
    note: 'Una nota, si quieres',
    technique: '¿Cómo la hiciste?',
  },
  hints: {
    palette: 'teal, #4b3f9e, azul ultramar 30%',
    deadline: '2026-12-01 18:00, viernes 18:00, en 3 días',
    colourants: 'Con los nombres de tu estante, entre comas',
    made: 'Como 2026-11-20',
  },
  drawnForShelves: 'Sacada para lo que pueden hacer los estantes de aquí.',
  drawnWith: v => `Sacada con la semilla «${v.seed}».`,
  photoPalette: 'Los colores principales de la foto, el mayor primero.',
  drawnPalette: v =>
    `Sacada con la semilla «${v.seed}»: el ${v.percent} % de ${count(v.shelves, 'estante', 'estantes')} puede acercarse a toda ella.`,
  usePalette: v => `Para usarla: /challenge open palette:"${v.hexes}"`,

  enterBar: 'Inscribir una barra',
  fromMyShelf: 'Con mi estante',
  vote: 'Votar',

  entered: v => `La barra ${v.number}, «${v.title}», está en «${v.challenge}».`,
  replaced: v => `La barra ${v.number}, «${v.title}», se entrega de nuevo en «${v.challenge}».`,
  measured: v => `La barra ${v.number}, «${v.title}», se midió de nuevo para «${v.challenge}».`,
  changeUntil: v => `Puedes cambiarlo hasta el ${v.until}.`,
  measureAgain: 'Medir otra parte de la foto',
  parts: {
    found: 'La barra como la encuentro',
    whole: 'Toda la foto',
    middle: 'La parte media',
    core: 'Solo el centro mismo',
    top: 'La mitad de arriba',
    bottom: 'La mitad de abajo',
    left: 'La mitad izquierda',
    right: 'La mitad derecha',
  },
  withdraw: 'Retirar esta barra',
  withdrawn: v => `«${v.title}» queda retirada. Tu lugar está libre para otra barra.`,

  ballot: {
    empty: v => `Tu papeleta de «${v.title}» sigue vacía.`,
    now: v => `Guardado: ${count(v.bars, 'barra', 'barras')} en tu papeleta de «${v.title}».`,
    before: v => `${count(v.bars, 'barra', 'barras')} en tu papeleta de «${v.title}».`,
    superseded: v => `En «${v.title}» cuenta un voto tuyo posterior.`,
  },
  ownLeftOut: 'Tu barra queda fuera: nadie vota la suya.',
  ranks: v => `${v.place}.º`,
  chosen: 'tuya',
  countsUntilChosen: 'Esta papeleta cuenta hasta que elijas un nuevo primer puesto.',
  restShare: 'Las barras que dejas fuera comparten el último puesto.',
  choose: {
    schulze: ({ place }) => (place === 1 ? '¿Qué barra te gusta más?' : `Tu ${place}.º puesto`),
    approval: () => 'Todas las que te gustan, una o más',
    single: () => 'La barra que más te gusta',
  },
  sharePlace: v => `Comparte tu ${v.place}.º puesto`,
  moreBars: 'Más barras',
  tieNext: v => `Añadir otra al ${v.place}.º puesto`,
  startAgain: 'Empezar de nuevo',

  extended: v =>
    `«${v.title}»: inscribe hasta el ${v.entries}${v.votes === undefined ? '' : `, vota hasta el ${v.votes}`}.`,
  disqualified: v => `Retirada: ${v.bar}. ${v.reason}`,
  audit: v => `${count(v.deeds, 'acción', 'acciones')} de los responsables sobre «${v.title}»`,
  deed: v => `${v.when}, ${v.who}: ${v.what}`,
  deeds: {
    opened: 'lo abrió',
    extended: v =>
      `movió ${[v.entries && `las inscripciones al ${v.entries}`, v.votes && `la votación al ${v.votes}`].filter(Boolean).join(', ')}: ${v.reason}`,
    cancelled: v => `lo canceló: ${v.reason}`,
    disqualified: v => `retiró ${v.bar}: ${v.reason}`,
  },
  settings: v =>
    `Las horas son de ${v.zone}. Responsables: quien administra este grupo${v.role === undefined ? '' : ` y el rol ${v.role}`}.`,
  settingsBeside: v =>
    [
      v.calls === undefined
        ? 'Al abrir un reto no se avisa a nadie.'
        : `Al abrir un reto se avisa al rol ${v.calls}.`,
      v.threads ? 'Cada reto tiene su hilo donde puedo abrirlo.' : 'Los retos no tienen hilo.',
      v.calendar
        ? 'Los plazos están en los eventos del grupo donde puedo ponerlos.'
        : 'Los plazos no están en los eventos del grupo.',
    ].join(' '),
  roleUncallable:
    'A ese rol nadie puede avisarlo: activa «Permitir que cualquiera @mencione este rol» o nadie se enterará.',
  lacksBeside: v => v.lacks.map(lack => lacksBeside[lack]).join(' '),
  entriesEnd: v => `«${v.title}»: acaban las inscripciones`,
  votesEnd: v => `«${v.title}»: acaba la votación`,
  calendarSays: 'La última hora antes del plazo. Mira /challenge show.',
  openedInOther: v => `Lo anuncio en #${v.channel} y llevo sus plazos.`,
  openedUntold: v =>
    [
      `Llevo sus plazos, pero no puedo anunciarlo allí: ${v.lacks.map(lack => lacks[lack]).join('; ')}.`,
      v.instead.length > 0
        ? `Cámbialo, o cancélalo y ábrelo en ${v.instead.join(', ')}.`
        : 'Cámbialo y el próximo aviso llegará solo.',
    ].join(' '),

  bars: v => count(v.bars, 'barra', 'barras'),
  yours: v => `${v.bar} (tuya)`,
  takenOutOfYours: v =>
    `Un responsable retiró tu barra «${v.title}»: ${/[.!?…]$/.test(v.reason) ? v.reason : `${v.reason}.`}`,
  listed: v =>
    v.challenges === 0
      ? 'Aún no hay retos: un responsable abre uno con /challenge open.'
      : count(v.challenges, 'reto', 'retos'),
  listRow: v =>
    `«${v.title}» ${v.phase}${v.until === undefined ? '' : ` hasta el ${v.until}`}, ${count(v.entries, 'barra', 'barras')}`,
  soFar: v => `«${v.title}» hasta ahora`,
  pairs: v => `Por parejas (barra–barra papeletas:papeletas): ${v.pairs}`,
  history: v =>
    v.bars === 0
      ? 'Todavía ninguna barra en un reto terminado.'
      : `${count(v.bars, 'barra', 'barras')} en retos terminados, ${count(v.wins, 'victoria', 'victorias')}`,
  historyRow: v =>
    `${v.place === undefined ? 'sin puesto' : `${v.place}.º de ${v.of}`}: «${v.bar}» en «${v.title}» (${v.on})`,
  exported: v => `«${v.title}» en JSON y CSV`,
  exportNote: spaced`
    El JSON se vuelve a contar con: npm run -s tally -- challenge.json. Las papeletas no llevan nombres,
    pero la que deja fuera una barra delata que su votante la hizo: compártelo con cuidado.
  `,

  ideas: v => `Con tu estante puedes acercarte a ${v.near} de ${count(v.of, 'color', 'colores')}.`,
  ideasNote:
    'Para 1 taza (EE. UU.) de masa color crema sin gelificar. Los colores son estimaciones: decide una barra de prueba. Más recetas, con imagen: /match.',
  ideaNote: v =>
    `aproximadamente ${v.hex}, a ${plain(v.away)} ± ${plain(v.plusMinus)} de él (2 apenas se nota)`,
  nothingNear: 'nada de tu estante se acerca',
  uncoloured: 'sin ningún colorante',
  emptyShelf: 'En tu estante no hay nada con que mezclar. Pon tus botes con /shelf add.',
  jarIdeas: v => `${count(v.jars, 'bote', 'botes')} en tu estante, cada uno intenso y pálido`,
  jarIdea: v => `${v.name}: ${v.deep} ${v.full} al máximo, ${v.light} ${v.pale} a un cuarto`,
  gloves: 'Guantes y gafas: la masa fresca es cáustica y los polvos no se deben respirar.',
};
