/**
 * The keyboard: arrows go from the field through the list and back, Enter in the field opens the first, Escape clears.
 * The list stays a plain list of links, which every browser and screen reader knows how to go through.
 */
export interface Places {
  field: HTMLInputElement;
  /** The links of the list as it stands. */
  links(): HTMLElement[];
  clear(): void;
}

export function useKeys(page: HTMLElement, { field, links, clear }: Places): void {
  page.addEventListener('keydown', (event) => {
    if (event.isComposing || event.ctrlKey || event.metaKey || event.altKey) return;
    const at = document.activeElement;
    const all = links();
    const here = all.indexOf(at as HTMLElement);
    if (at !== field && here === -1 && event.key !== 'Escape') return;
    const to = target(event.key, here, all.length);
    if (event.key === 'Escape') clear();
    else if (event.key === 'Enter' && at === field) all[0]?.click();
    else if (to !== undefined) (to === -1 ? field : all[to])?.focus();
    else return;
    event.preventDefault();
  });
}

/** Where a key leads: a place in the list, −1 for the field, nothing where it does something else. */
export function target(key: string, here: number, count: number): number | undefined {
  if (key === 'ArrowDown') return Math.min(here + 1, count - 1);
  if (key === 'ArrowUp') return here === -1 ? undefined : here - 1;
  if (here === -1) return undefined;
  if (key === 'Home') return 0;
  if (key === 'End') return count - 1;
  return undefined;
}
