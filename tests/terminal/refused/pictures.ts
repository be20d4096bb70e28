import type { RefusedCases } from './row.ts';

export const pictures: RefusedCases = {
  photos: [
    [
      '/match photo:NOTE.jpg',
      'photo-not-a-picture',
      'I can’t open that as a photo',
      'No puedo abrir eso como foto',
    ],
    ['/match photo:EMPTY.jpg', 'photo-empty', 'That file is empty', 'Ese archivo está vacío'],
    [
      '/match photo:SMALL.png',
      'photo-too-small',
      'That picture is too small to read',
      'Esa imagen es demasiado pequeña',
    ],
    [
      '/match photo:BROKEN.jpg',
      'photo-broken',
      'That file is damaged or cut short',
      'Ese archivo está dañado o incompleto',
    ],
    [
      '/match photo:STRIP.png',
      'photo-too-thin',
      'That picture is a thin strip',
      'Esa imagen es una tira estrecha',
    ],
  ],
};
