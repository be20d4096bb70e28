import type * as en from '../../en/colourants/evidence.ts';

const results: (typeof en.evidence)['results'] = {
  held: 'aguantó',
  shifted: 'cambió',
  faded: 'se apagó',
  bled: 'sangró',
};
const processes: (typeof en.evidence)['processes'] = {
  ambient: 'sin calor añadido',
  gel: 'con gel',
  other: 'de otra manera',
};

export const evidence: typeof en.evidence = {
  results,
  processes,
  seenHere: v => `${v.held} de ${v.of} aquí vieron aguantar ${v.name}.`,
  seenElsewhere: v => `En otros grupos que comparten: ${v.held} de ${v.of} lo vieron aguantar.`,
  none: v => `Aún no hay informes sobre ${v.name}: da el primero con /colourant report.`,
  reported: v => `Apuntado: ${v.name} ${results[v.result]}, ${processes[v.process]}.`,
  replaced: 'Ocupa el lugar de tu informe anterior.',
  repeated: 'Eso ya lo había apuntado, así que no se contó dos veces.',
  photoKept: 'Guardo solo el número de tu foto, no la imagen.',
  withdrawn: v =>
    v.reports === 1
      ? `Tu informe sobre ${v.name} ya no está.`
      : `Tus ${v.reports} informes sobre ${v.name} ya no están.`,
  sharingOn:
    'Este grupo comparte ahora sus cuentas con los grupos que también comparten, y cuenta las suyas. No salen nombres ni notas.',
  sharingOff: 'Este grupo guarda para sí lo que ha visto y no cuenta a ningún otro.',
  sharingIsOn: 'Este grupo comparte sus cuentas con los grupos que también comparten. Para dejarlo, on: no.',
  sharingIsOff: 'Este grupo guarda para sí lo que ha visto. Para compartir, on: sí.',
  whole: v =>
    v.reports === 0
      ? 'Aún no hay informes en este grupo: da el primero con /colourant report.'
      : `${v.reports} ${v.reports === 1 ? 'informe' : 'informes'} sobre ${v.colours} ${v.colours === 1 ? 'color' : 'colores'} aquí.`,
  share: 'Pastillas que aguantan',
  percent: v => `cerca del ${v.percent} %`,
  interval: v => `Con 90 % de certeza: entre ${v.low} y ${v.high} %.`,
  prior: 'Parte de la química, y cada informe la mueve.',
  counts: v => `Aguantó ${v.held}, cambió ${v.shifted}, se apagó ${v.faded}, sangró ${v.bled}`,
  inProcess: v => `${processes[v.process]}: aguantó en ${v.held} de ${v.of}`,
  weeks: v => (v.weeks === 1 ? '1 semana' : `${v.weeks} semanas`),
  base: v => `en ${v.base}`,
  note: v => `«${v.note}»`,
  photo: 'con foto',
  mine: 'tuyo',
  unknownPart: v => `${v.names} y «${v.unknown}»`,
  page: v => `Página ${v.page} de ${v.pages}`,
  earlier: 'Atrás',
  further: 'Más',
  open: 'Mirar un color',
};

export const evidenceRefusals: typeof en.evidenceRefusals = {
  'report-none-of-yours': ({ name }) =>
    `No tienes ningún informe sobre ${name} en este grupo, así que no hay nada que quitar.`,
};
