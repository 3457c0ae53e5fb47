/** The scans of a page one after another in a dialog, to be enlarged and moved about. */
import { followPointers } from './scan-pointer.ts';
import { moved, whole, zoomed, type Size, type View } from './scan-view.ts';

/** A step of the keys, and how far the arrows go. */
const step = 1.4;
const stride = 80;

/** Lets the links to scans open the dialog, where the page has one. */
export function openScansIn(dialog: HTMLDialogElement): void {
  const links = [...document.querySelectorAll<HTMLAnchorElement>('a[data-scan]')];
  const frame = dialog.querySelector<HTMLElement>('.scan-frame')!;
  const said = dialog.querySelector<HTMLElement>('[role=status]')!;
  const image = new Image();
  image.draggable = false;
  image.decoding = 'async';
  frame.append(image);

  let current = 0;
  let size: Size = { width: 1, height: 1 };
  let view: View = { scale: 1, x: 0, y: 0 };

  const room = (): Size => ({ width: frame.clientWidth, height: frame.clientHeight });
  const centre = () => ({ x: frame.clientWidth / 2, y: frame.clientHeight / 2 });
  const show = (next: View) => {
    view = next;
    image.style.transform = `translate(${view.x}px, ${view.y}px) scale(${view.scale})`;
    const percent = `${Math.round(view.scale * 100)} %`;
    said.textContent = links.length > 1 ? `${current + 1}/${links.length} · ${percent}` : percent;
  };
  const zoom = (factor: number, at = centre()) => show(zoomed(view, factor, at, room(), size));
  const move = (by: { x: number; y: number }) => show(moved(view, by, room(), size));
  const fit = () => show(whole(room(), size));

  const turnTo = (index: number) => {
    current = (index + links.length) % links.length;
    const link = links[current]!;
    const small = link.querySelector('img')!;
    size = { width: Number(small.getAttribute('width')), height: Number(small.getAttribute('height')) };
    image.src = link.href;
    image.alt = small.alt;
    image.width = size.width;
    image.height = size.height;
    fit();
  };

  const actions: Record<string, () => void> = {
    in: () => zoom(step),
    out: () => zoom(1 / step),
    whole: fit,
    previous: () => turnTo(current - 1),
    next: () => turnTo(current + 1),
    close: () => dialog.close(),
  };
  const keys: Record<string, () => void> = {
    '+': actions['in']!,
    '=': actions['in']!,
    '-': actions['out']!,
    '0': fit,
    ArrowLeft: () => move({ x: stride, y: 0 }),
    ArrowRight: () => move({ x: -stride, y: 0 }),
    ArrowUp: () => move({ x: 0, y: stride }),
    ArrowDown: () => move({ x: 0, y: -stride }),
    PageUp: actions['previous']!,
    PageDown: actions['next']!,
  };

  links.forEach((link, index) => {
    link.setAttribute('aria-haspopup', 'dialog');
    link.addEventListener('click', (event) => {
      // Whoever asks for another window or tab gets the plain image.
      if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
      event.preventDefault();
      dialog.showModal();
      turnTo(index);
      frame.focus();
    });
  });
  for (const button of dialog.querySelectorAll<HTMLButtonElement>('button[data-do]')) {
    const does = button.dataset['do']!;
    if (links.length < 2 && (does === 'previous' || does === 'next')) button.hidden = true;
    button.addEventListener('click', () => actions[does]?.());
  }
  dialog.addEventListener('keydown', (event) => {
    const action = keys[event.key];
    if (!action || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    action();
  });
  dialog.addEventListener('close', () => links[current]!.focus());
  // The ground beside the sheet closes it.
  dialog.addEventListener('click', (event) => event.target === dialog && dialog.close());
  addEventListener('resize', () => dialog.open && fit());
  followPointers(frame, { move, zoom });
}
