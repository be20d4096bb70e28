import type { page } from '../../words/en/fronts/page.ts';
import type { Change, Command, Language, PageAction, Seat, ShownForm, Snapshot } from '../model.ts';
import { type Attached, allSeats, closeForms, listen, perform, suggestionsFor } from './api-client.ts';
import { batterBand } from './batter.ts';
import { checkOption } from './check.ts';
import { openComposer } from './composer/composer.ts';
import { conversation } from './conversation.ts';
import { actionsOf, entriesOf } from './declared.ts';
import { element } from './element.ts';
import { openForm } from './form.ts';
import { keyOf, seatHere, seatPicker } from './seats.ts';

/** The page's words in a language. */
const wordsIn = async (language: Language): Promise<typeof page> =>
  ((await import(`../../words/${language}/fronts/page.ts`)) as { readonly page: typeof page }).page;

/** Puts the page together for one seat and keeps it as the room is. */
function openRoom(seat: Seat, say: typeof page): void {
  document.documentElement.lang = seat.language;
  document.title = `${say.title}: ${seat.name}`;
  let commands: readonly Command[] = [];
  let dialog: HTMLDialogElement | undefined;
  let formHere = '';

  const state = element('p', { class: 'state', role: 'status' }, say.gettingReady);
  const picker = seatPicker(say, seat);
  const trouble = element('p', { class: 'trouble', role: 'alert' });

  const send = async (pageAction: PageAction, files?: Attached): Promise<string | undefined> => {
    if (pageAction.do !== 'put-away') log.expectAnswer();
    const result = await perform(seat, pageAction, files).catch(() => undefined);
    if (!result) return say.fault;
    if (result.done) return undefined;
    return { unfit: say.unfit, silent: say.silent, gone: say.goneMessage }[result.why];
  };
  const sendAloud = async (pageAction: PageAction) => {
    trouble.textContent = (await send(pageAction)) ?? '';
  };

  const composer = openComposer({
    say,
    seat: keyOf(seat),
    send,
    async suggest(action, values, option) {
      const options: Record<string, string | number | boolean> = {};
      for (const declared of action.options) {
        const checked = checkOption(declared, values.get(declared.name) ?? '', say);
        if (checked && 'value' in checked) options[declared.name] = checked.value;
      }
      options[option] ??= values.get(option) ?? '';
      const found = await suggestionsFor(seat, { command: `/${action.path}`, options, focused: option });
      return found.map(({ name, value, hex }) => ({ label: name, value: String(value), hex }));
    },
  });
  const examples = say.examples.map(({ label, line }) => {
    const button = element('button', { type: 'button', class: 'plain' }, label);
    button.addEventListener('click', () => composer.ask(line));
    return element('li', {}, button);
  });
  const log = conversation({
    label: say.conversation,
    empty: element('div', { class: 'empty' }, element('p', {}, say.empty), element('ul', {}, ...examples)),
    around: ({ id }) => ({
      say,
      language: seat.language,
      entries: entriesOf(commands, seat.language),
      press: (customId, label) =>
        sendAloud({ do: 'press', message: id, customId, line: say.pressed({ label }) }),
      choose: (customId, values, label) =>
        sendAloud({ do: 'choose', message: id, customId, values, line: say.chose({ label }) }),
      point: entry => sendAloud({ do: 'point', entry, message: id, line: say.pressed({ label: entry }) }),
      putAway: () => sendAloud({ do: 'put-away', message: id }),
    }),
  });

  const showForm = (form: ShownForm) => {
    if (form.interaction === formHere && dialog?.isConnected) return;
    dialog?.remove();
    formHere = form.interaction;
    dialog = openForm(form, {
      say,
      submit: (fields, files, title) =>
        send({ do: 'submit', form: form.interaction, fields, line: say.sent({ title }) }, files),
      cancel: () => void closeForms(seat),
    });
  };
  const learn = (known: readonly Command[]) => {
    commands = known;
    composer.know(actionsOf(known, seat.language));
  };
  const fill = (snapshot: Snapshot) => {
    learn(snapshot.commands);
    picker.know(snapshot.seats);
    log.fill(snapshot.messages, snapshot.waiting);
    state.textContent = snapshot.ready ? '' : say.gettingReady;
    if (snapshot.form) showForm(snapshot.form);
  };
  const apply = (change: Change) => {
    switch (change.kind) {
      case 'everything':
        return fill(change.snapshot);
      case 'message':
        return log.show(change.message);
      case 'gone':
        return log.remove(change.id);
      case 'waiting':
        return log.wait(change.waiting);
      case 'settled':
        return log.settle(change.interaction);
      case 'form':
        return showForm(change.form);
      case 'seats':
        // Another language is another page.
        if (change.seats.some(one => keyOf(one) === keyOf(seat) && one.language !== seat.language))
          return location.reload();
        return picker.know(change.seats);
      case 'commands':
        return learn(change.commands);
      case 'ready':
        state.textContent = say.ready;
    }
  };

  const batter = batterBand();
  document.addEventListener('asked-colour', event => batter.pour((event as CustomEvent<string>).detail));
  const title = element('h1', {}, say.title, ' ', element('small', {}, say.subtitle));
  document.body.replaceChildren(
    element('header', { class: 'top' }, batter.element, title, picker.element, state),
    log.element,
    element('footer', { class: 'bottom' }, trouble, composer.element),
  );
  listen(seat, {
    change: apply,
    lost: () => {
      state.textContent = say.lost;
    },
  });
  takeFiles(file => composer.attach(file));
  composer.focus();
}

/** Files dropped anywhere on the page, or pasted, go with the next question. */
function takeFiles(take: (file: File) => void): void {
  document.addEventListener('dragover', event => event.preventDefault());
  document.addEventListener('drop', event => {
    event.preventDefault();
    for (const file of event.dataTransfer?.files ?? []) take(file);
  });
  document.addEventListener('paste', event => {
    for (const file of event.clipboardData?.files ?? []) take(file);
  });
}

const seat = seatHere(await allSeats());
if (seat) openRoom(seat, await wordsIn(seat.language));
