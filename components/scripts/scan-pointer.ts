/** Pointers on a frame: one moves what is in it, two pinch it, the wheel and a double click zoom. */
export interface Moves {
  move: (by: { x: number; y: number }) => void;
  /** About a point, in pixels from the frame’s upper left corner. */
  zoom: (factor: number, at: { x: number; y: number }) => void;
}

interface Spot {
  x: number;
  y: number;
}

/** Follows the pointers on a frame. */
export function followPointers(frame: HTMLElement, { move, zoom }: Moves): void {
  const down = new Map<number, Spot>();
  const spotOf = (event: MouseEvent): Spot => {
    const box = frame.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const middle = (spots: readonly Spot[]): Spot => ({
    x: spots.reduce((sum, { x }) => sum + x, 0) / spots.length,
    y: spots.reduce((sum, { y }) => sum + y, 0) / spots.length,
  });
  const apart = ([a, b]: readonly Spot[]) => (a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0);

  frame.addEventListener('pointerdown', (event) => {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    frame.setPointerCapture(event.pointerId);
    down.set(event.pointerId, spotOf(event));
    frame.classList.add('held');
  });
  frame.addEventListener('pointermove', (event) => {
    if (!down.has(event.pointerId)) return;
    const before = [...down.values()];
    down.set(event.pointerId, spotOf(event));
    const after = [...down.values()];
    const [from, to] = [middle(before), middle(after)];
    move({ x: to.x - from.x, y: to.y - from.y });
    if (apart(before) > 0 && apart(after) > 0) zoom(apart(after) / apart(before), to);
  });
  const up = (event: PointerEvent) => {
    down.delete(event.pointerId);
    if (down.size === 0) frame.classList.remove('held');
  };
  frame.addEventListener('pointerup', up);
  frame.addEventListener('pointercancel', up);
  frame.addEventListener('dblclick', (event) => zoom(2, spotOf(event)));
  frame.addEventListener(
    'wheel',
    (event) => {
      event.preventDefault();
      // A mouse counts in lines, a touchpad in pixels; a pinch on a touchpad comes as small steps with the control key.
      const step = event.deltaY * (event.deltaMode === 1 ? 16 : 1) * (event.ctrlKey ? 5 : 1);
      zoom(Math.exp(-Math.min(Math.max(step, -240), 240) / 480), spotOf(event));
    },
    { passive: false },
  );
}
