import type { page } from '../../words/en/fronts/page.ts';
import { LANGUAGES } from '../../words/locales.ts';
import type { Language, Seat } from '../model.ts';
import { takeNewSeat } from './api-client.ts';
import { element, freshId } from './element.ts';

type At = Pick<Seat, 'group' | 'member'>;

const KEY = 'seat';

/** The seat this tab was in, from its address, else where this browser sat last, else the first. */
export function seatHere(seats: readonly Seat[]): Seat | undefined {
  const wanted = new URL(location.href).searchParams.get('seat') ?? localStorage.getItem(KEY);
  return seats.find(seat => keyOf(seat) === wanted) ?? seats[0];
}

/** Sits down elsewhere: the page starts anew, as that member. */
export function sitAt(at: At): void {
  localStorage.setItem(KEY, keyOf(at));
  location.search = new URLSearchParams({ seat: keyOf(at) }).toString();
}

export const keyOf = ({ group, member }: At): string => `${group}-${member}`;

/** The choice of seat, and the way to a new one. */
export function seatPicker(say: typeof page, now: Seat) {
  const id = freshId('seat');
  const select = element('select', { id });
  select.addEventListener('change', () => {
    const [group = '', member = ''] = select.value.split('-');
    sitAt({ group, member });
  });
  let seats: readonly Seat[] = [];
  const add = element('button', { type: 'button', class: 'quiet' }, say.newSeat);
  add.addEventListener('click', () => openNewSeat(say, seats, now));
  return {
    element: element('div', { class: 'seats' }, element('label', { for: id }, say.seat), select, add),
    know(known: readonly Seat[]) {
      seats = known;
      select.replaceChildren(
        ...known.map(seat => {
          const { name, groupName, steward } = seat;
          const text = say.seatOption({ name, group: groupName, steward });
          return element('option', { value: keyOf(seat), selected: keyOf(seat) === keyOf(now) }, text);
        }),
      );
    },
  };
}

/** A language by the name that its own speakers give it. */
function ownName(language: Language): string {
  const name = new Intl.DisplayNames(language, { type: 'language' }).of(language) ?? language;
  return name.charAt(0).toLocaleUpperCase(language) + name.slice(1);
}

function openNewSeat(say: typeof page, seats: readonly Seat[], now: Seat): void {
  const groups = new Map(seats.map(({ group, groupName }) => [group, groupName]));
  const name = element('input', { type: 'text', required: true, maxlength: 32, autocomplete: 'off' });
  const group = element(
    'select',
    {},
    ...[...groups].map(([id, label]) => element('option', { value: id, selected: id === now.group }, label)),
    element('option', { value: '' }, say.seatNewGroup),
  );
  const groupName = element('input', { type: 'text', maxlength: 60, autocomplete: 'off' });
  const groupNameField = field(say.seatGroupName, groupName);
  groupNameField.hidden = true;
  group.addEventListener('change', () => {
    groupNameField.hidden = group.value !== '';
    groupName.required = group.value === '';
  });
  const steward = element('input', { type: 'checkbox' });
  const language = element(
    'select',
    {},
    ...LANGUAGES.map(value =>
      element('option', { value, lang: value, selected: value === now.language }, ownName(value)),
    ),
  );
  const heading = element('h2', { id: freshId('new-seat') }, say.newSeat);
  const leave = element('button', { type: 'button', class: 'plain' }, say.cancel);
  const form = element(
    'form',
    {},
    heading,
    element('p', { class: 'hint' }, say.newSeatWhy),
    field(say.seatName, name),
    field(say.seatGroup, group),
    groupNameField,
    field(say.seatLanguage, language),
    element('label', { class: 'tick' }, steward, say.seatSteward),
    element(
      'div',
      { class: 'row' },
      element('button', { type: 'submit', class: 'main' }, say.sitDown),
      leave,
    ),
  );
  const dialog = element('dialog', { 'aria-labelledby': heading.id }, form);
  leave.addEventListener('click', () => dialog.close());
  dialog.addEventListener('close', () => dialog.remove());
  form.addEventListener('submit', event => {
    event.preventDefault();
    void takeNewSeat({
      name: name.value.trim(),
      ...(group.value === '' ? { groupName: groupName.value.trim() } : { group: group.value }),
      steward: steward.checked,
      language: language.value as Language,
    }).then(sitAt);
  });
  document.body.append(dialog);
  dialog.showModal();
}

function field(label: string, input: HTMLElement): HTMLElement {
  input.id = freshId('field');
  return element('div', { class: 'field' }, element('label', { for: input.id }, label), input);
}
