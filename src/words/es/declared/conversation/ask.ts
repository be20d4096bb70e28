import type { says as en } from '../../../en/declared/conversation/ask.ts';

export const says: typeof en = {
  purpose: 'Pregunta con tus palabras: «¿cuánto ultramar para 2 tazas?»',
  menu: 'Responder a esto',
  question: 'Tu pregunta, como se la harías a una amiga',
  photo: 'Una foto de lo que se trata',
};
