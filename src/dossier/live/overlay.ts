/**
 * The overlay on every page of the development server while the content has errors: which, where, and what to do. It
 * goes away when they are mended. The integration adds it to pages in development alone; no build ever sees it.
 *
 * It lives in a shadow tree with a constructed style sheet, so that neither the site’s styles nor a content security
 * policy of `script-src 'self'; style-src 'self'` can break it, and it takes the tones of the page it stands on.
 */
import { inOrderFor, isPageOf, toldAddress, toldEvent, type Told } from './told.ts';

interface Hot {
  on(event: string, listener: (data: Told) => void): void;
}
const hot = (import.meta as unknown as { hot?: Hot }).hot;

/** More than these are not read on a page; the terminal has them all. */
const most = 20;
/** Which errors were put aside, so that a reload doesn’t bring the very same ones back. */
const asideKey = 'whence-put-aside';

let told: Told | undefined;
let host: HTMLElement | undefined;

hot?.on(toldEvent, show);
// Asked for before the first event, and on every page that is opened later.
fetch(toldAddress)
  .then((response) => response.json() as Promise<Told>)
  .then((first) => told ?? show(first))
  .catch(() => {});

function show(next: Told): void {
  told = next;
  const wrong = next.failure !== null || next.errors.length > 0;
  if (!wrong) {
    if (host) announce('Mended: there are no errors now.');
    sessionStorage.removeItem(asideKey);
    host?.shadowRoot!.querySelector('.panel')?.remove();
    host?.shadowRoot!.querySelector('.again')?.remove();
    return;
  }
  draw(next, sessionStorage.getItem(asideKey) === signature(next));
}

/** What tells one state of the errors from another. */
function signature({ failure, errors }: Told): string {
  return JSON.stringify([failure, errors.map(({ file, rule, message }) => [file, rule, message])]);
}

function draw(state: Told, aside: boolean): void {
  const root = shadow();
  const open = root.activeElement !== null;
  root.querySelector('.panel')?.remove();
  root.querySelector('.again')?.remove();
  const count = state.failure === null ? many(state.errors.length, 'error') : 'The content cannot be read';
  if (aside) {
    const again = element('button', { class: 'again', type: 'button' }, count);
    again.addEventListener('click', () => {
      sessionStorage.removeItem(asideKey);
      draw(state, false);
      root.querySelector<HTMLElement>('.close')?.focus();
    });
    root.append(again);
    return;
  }
  const close = element('button', { class: 'close', type: 'button' }, 'Put aside');
  const putAside = () => {
    sessionStorage.setItem(asideKey, signature(state));
    draw(state, true);
    root.querySelector<HTMLElement>('.again')?.focus();
  };
  close.addEventListener('click', putAside);
  const panel = element('section', { class: 'panel', 'aria-labelledby': 'count' });
  panel.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') putAside();
  });
  const head = element('div', { class: 'head' });
  head.append(element('h2', { id: 'count' }, count), close);
  panel.append(head, element('p', { class: 'kept' }, standing(state)));
  if (state.failure === null) panel.append(list(state.errors), ...beside(state));
  else panel.append(element('p', { class: 'message' }, state.failure));
  root.append(panel);
  if (open) close.focus();
  announce(
    `${count}. ${state.errors[0] ? `${place(state.errors[0])}: ${state.errors[0].message}` : (state.failure ?? '')}`,
  );
}

function standing({ failure, kept }: Told): string {
  if (failure !== null || kept) return 'This page stays as it last was until that is mended.';
  return 'The pages show what can be shown. They could not be published like this.';
}

function list(errors: Told['errors']): HTMLElement {
  const items = element('ol', { tabindex: '0', 'aria-label': 'Errors' });
  for (const error of inOrderFor(location.pathname, errors).slice(0, most)) {
    const item = element('li', {});
    const where = element('p', { class: 'where' });
    where.append(element('code', {}, place(error)));
    if (isPageOf(location.pathname, error.file))
      where.append(' ', element('span', { class: 'here' }, 'this page'));
    item.append(
      where,
      element('p', { class: 'message' }, error.message),
      element('p', { class: 'help' }, error.help),
    );
    items.append(item);
  }
  return items;
}

function beside({ errors, warnings, hints }: Told): HTMLElement[] {
  const more = errors.length - most;
  const rest = [
    more > 0 ? `${many(more, 'more error')}` : '',
    warnings > 0 ? many(warnings, 'warning') : '',
    hints > 0 ? many(hints, 'hint') : '',
  ].filter(Boolean);
  return rest.length === 0 ? [] : [element('p', { class: 'rest' }, `In the terminal: ${rest.join(', ')}.`)];
}

const place = ({ file, line, column }: Told['errors'][number]) => `${file}:${line}:${column}`;
const many = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`;

/** The shadow tree, made when it is first wanted. */
function shadow(): ShadowRoot {
  if (host?.isConnected) return host.shadowRoot!;
  host = element('div', { id: 'whence-findings', lang: 'en' });
  const root = host.attachShadow({ mode: 'open' });
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(styles);
  root.adoptedStyleSheets = [sheet];
  root.append(element('p', { class: 'status', role: 'status' }));
  document.body.append(host);
  return root;
}

function announce(text: string): void {
  shadow().querySelector('.status')!.textContent = text;
}

function element(name: string, attributes: Readonly<Record<string, string>>, text?: string): HTMLElement {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text !== undefined) made.textContent = text;
  return made;
}

const styles = `
:host { all: initial; color-scheme: light dark; }
@media print { :host { display: none; } }
.status { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; margin: 0; }
.panel, .again { position: fixed; z-index: 2147483647; right: 1rem; bottom: 1rem; box-sizing: border-box;
  font: 400 0.9375rem/1.45 var(--sans, sans-serif); color: var(--ink, CanvasText); background: var(--paper, Canvas);
  border: 1.5px solid var(--accent, #a32e1f); box-shadow: 0 0.25rem 1.5rem rgb(0 0 0 / 0.25); }
.panel { width: min(34rem, calc(100vw - 2rem)); max-height: min(60vh, 32rem); display: flex; flex-direction: column; padding: 0.75rem 1rem; }
.head { display: flex; justify-content: space-between; align-items: center; gap: 1rem; }
h2 { margin: 0; font: 600 1.0625rem/1.3 var(--sans, sans-serif); color: var(--accent, #a32e1f); }
button { font: 500 0.875rem/1.3 var(--sans, sans-serif); color: inherit; background: none; border: 1px solid currentColor;
  padding: 0.4rem 0.75rem; min-height: 2.75rem; cursor: pointer; }
.again { border: 1.5px solid var(--accent, #a32e1f); color: var(--accent, #a32e1f); background: var(--paper, Canvas); }
button:focus-visible, ol:focus-visible { outline: 2px solid var(--ink, CanvasText); outline-offset: 2px; }
p { margin: 0; }
.kept, .rest { color: var(--ink-2, CanvasText); font-size: 0.875rem; }
.kept { margin-top: 0.25rem; }
.rest { margin-top: 0.5rem; }
ol { list-style: none; margin: 0.5rem 0 0; padding: 0; overflow: auto; min-height: 4rem; }
li { border-top: 1px solid var(--line, GrayText); padding: 0.5rem 0; }
.where { display: flex; flex-wrap: wrap; gap: 0 0.75rem; align-items: baseline; }
code { font: 500 0.875em/1.4 ui-monospace, 'Cascadia Mono', 'Liberation Mono', Menlo, Consolas, monospace; overflow-wrap: anywhere; user-select: all; }
.here { font-size: 0.8125rem; color: var(--accent, #a32e1f); }
.message { overflow-wrap: anywhere; }
.help { color: var(--ink-2, CanvasText); overflow-wrap: anywhere; }
.help::before { content: '→ '; }
@media (max-width: 30rem) { .panel { right: 0.5rem; left: 0.5rem; bottom: 0.5rem; width: auto; max-height: 50vh; } }
`;
