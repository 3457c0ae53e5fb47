/** A list or table that narrows and reorders itself under its controls. */
import { fold } from './fold.ts';
import { asFragment, fitting, fromFragment, isWhole, ordered, type Asked, type Entry } from './narrow.ts';

interface Row extends Entry {
  element: HTMLElement;
  /** The list it stands in on the page as it came. */
  home: HTMLElement;
  /** Groups and entries around it, and what folds away. */
  around: HTMLElement[];
}

/** Brings the controls of one list to life. */
export function bringToLife(controls: HTMLElement): void {
  const id = controls.dataset['controls']!;
  const list = document.querySelector<HTMLElement>(`[data-index="${id}"]`);
  if (!list) return;
  const rows = rowsOf(list);
  const whole = document.querySelectorAll<HTMLElement>(`[data-whole="${id}"]`);
  const find = controls.querySelector<HTMLInputElement>('[data-find]')!;
  const choices = [...controls.querySelectorAll<HTMLSelectElement>('[data-choice]')];
  const order = controls.querySelector<HTMLSelectElement>('[data-order]');
  const clear = controls.querySelector<HTMLButtonElement>('[data-clear]')!;
  const status = controls.querySelector<HTMLElement>('[role=status]')!;
  const arrange = arranging(list, rows);
  const headers = sortingHeaders(list, (key) => {
    setOrder(sorted === key ? `-${key}` : sorted === `-${key}` ? '' : key);
    apply();
  });
  const folds = new Map([...list.querySelectorAll('details')].map((one) => [one, one.open] as const));
  let sorted = '';

  function setOrder(key: string): void {
    sorted = key;
    if (!order) return;
    order.value = key;
    // A header may sort by what the list of orders doesn’t have.
    if (order.value !== key) order.selectedIndex = -1;
  }

  function asked(): Asked {
    const chosen = choices
      .filter((one) => one.value !== '')
      .map((one) => [one.dataset['choice']!, one.value]);
    return { find: find.value, choices: Object.fromEntries(chosen) as Record<string, string>, order: sorted };
  }

  function set({ find: text, choices: chosen, order: key }: Asked): void {
    find.value = text;
    for (const one of choices) {
      one.value = chosen[one.dataset['choice']!] ?? '';
      if (one.selectedIndex < 0) one.value = '';
    }
    setOrder(key);
  }

  function apply(keepAddress = false): void {
    const now = asked();
    const all = isWhole(now);
    const fits = fitting(rows, now);
    const around = new Set<HTMLElement>();
    rows.forEach((row, i) => fits[i] && row.around.forEach((one) => around.add(one)));
    for (const group of list!.querySelectorAll<HTMLElement>('[data-group]'))
      group.hidden = !around.has(group);
    rows.forEach((row, i) => {
      const holds = around.has(row.element) && sorted === '';
      row.element.hidden = !fits[i] && !holds;
    });
    for (const [one, open] of folds) one.open = all ? open : around.has(one);
    arrange(ordered(rows, sorted, document.documentElement.lang), sorted === '');
    for (const one of whole) one.hidden = !all || sorted !== '';
    const shown = fits.filter(Boolean).length;
    const said = controls.dataset['shown']!.replace('#', figures(shown));
    status.textContent = shown === 0 ? `${controls.dataset['none']} ${said}` : said;
    clear.disabled = all && sorted === '';
    for (const [key, header] of headers)
      header.ariaSort = sorted === key ? 'ascending' : sorted === `-${key}` ? 'descending' : 'none';
    if (!keepAddress) writeAddress(now);
  }

  /** Shows what the address asks for: a state of the list, or an entry that is hidden just now. */
  function followAddress(): void {
    const wanted = fromFragment(location.hash);
    const target = wanted ? null : document.getElementById(decodeURIComponent(location.hash.slice(1)));
    if (wanted) set(wanted);
    else if (target && list!.contains(target)) set({ find: '', choices: {}, order: '' });
    apply(true);
    if (target && list!.contains(target)) target.scrollIntoView();
  }

  let waiting = 0;
  find.addEventListener('input', () => {
    cancelAnimationFrame(waiting);
    waiting = requestAnimationFrame(() => apply());
  });
  find.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || find.value === '') return;
    event.preventDefault();
    find.value = '';
    apply();
  });
  for (const one of choices) one.addEventListener('change', () => apply());
  order?.addEventListener('change', () => {
    sorted = order.value;
    apply();
  });
  clear.addEventListener('click', () => {
    set({ find: '', choices: {}, order: '' });
    apply();
    find.focus();
  });
  addEventListener('hashchange', followAddress);
  // On the way back a browser fills in what was typed before, after scripts have run.
  addEventListener('pageshow', () => {
    if (order) sorted = order.value;
    if (!isWhole(asked()) || sorted !== '') apply();
  });
  if (location.hash.length > 1) followAddress();
}

/** Every entry with what it is found by and where it stands. */
function rowsOf(list: HTMLElement): Row[] {
  return [...list.querySelectorAll<HTMLElement>('[data-entry]')].map((element) => {
    const around: HTMLElement[] = [];
    for (let at = element.parentElement; at && at !== list; at = at.parentElement)
      if (at.matches('[data-group], [data-entry], details')) around.push(at);
    return {
      element,
      home: element.parentElement!,
      around,
      text: fold(`${ownText(element)} ${element.dataset['find'] ?? ''}`),
      value: (key) => element.getAttribute(`data-${key}`) ?? '',
    };
  });
}

/** The text of an entry without that of the entries inside it. */
function ownText(element: HTMLElement): string {
  if (!element.querySelector('[data-entry]')) return element.textContent;
  return [...element.childNodes]
    .map((node) =>
      node instanceof HTMLElement
        ? node.matches('[data-entry]')
          ? ''
          : ownText(node)
        : (node.textContent ?? ''),
    )
    .join(' ');
}

/** Puts entries in an order: in their one list, or in a list of their own beside the groups while these are dissolved. */
function arranging(list: HTMLElement, rows: readonly Row[]) {
  const single = rows.every(({ home }) => home === rows[0]!.home);
  const flat = single ? rows[0]!.home : (rows[0]!.home.cloneNode(false) as HTMLElement);
  if (!single) flat.removeAttribute('id');
  let standing = '';
  return (order: readonly number[], asListed: boolean): void => {
    const now = order.join();
    if (now === standing || (standing === '' && asListed)) return;
    standing = now;
    if (single || !asListed) flat.append(...order.map((i) => rows[i]!.element));
    else for (const { element, home } of rows) home.append(element);
    if (single) return;
    if (asListed) flat.remove();
    else list.append(flat);
    list.classList.toggle('dissolved', !asListed);
  };
}

/** Headers of a table that sort it, by their keys. */
function sortingHeaders(list: HTMLElement, sortBy: (key: string) => void): Map<string, HTMLElement> {
  const headers = new Map<string, HTMLElement>();
  for (const header of list.querySelectorAll<HTMLElement>('th[data-sort]')) {
    const key = header.dataset['sort']!;
    const button = document.createElement('button');
    button.type = 'button';
    button.append(...header.childNodes);
    button.addEventListener('click', () => sortBy(key));
    header.append(button);
    headers.set(key, header);
  }
  return headers;
}

/** Thousands parted as the page’s language does. */
function figures(n: number): string {
  return new Intl.NumberFormat(document.documentElement.lang).format(n);
}

/** A link to the list as it is now. A browser that won’t have the address of a file changed keeps the old one. */
function writeAddress(asked: Asked): void {
  try {
    const bare = location.href.replace(/#.*/, '');
    history.replaceState(history.state, '', bare + asFragment(asked));
  } catch {
    return;
  }
}
