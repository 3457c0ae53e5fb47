/** Whether what stands on a page stays inside its window. */
import type { Page } from 'playwright-core';

/**
 * What reaches beyond the left or right edge of the window, as sentences. A table may when it stands in a frame that
 * scrolls; drawings are judged by their own edge, and the letters in them by that of the window.
 */
export function overflow(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const found: string[] = [];
    const scrolled = document.documentElement.scrollWidth;
    if (scrolled > width) found.push(`the page is ${scrolled} wide in a window of ${width}`);
    for (const element of document.body.querySelectorAll('*')) {
      if (element.closest('svg') && !element.matches('svg, svg text')) continue;
      const { left, right, width: wide, height } = element.getBoundingClientRect();
      if (wide <= 1 || height <= 1 || (right <= width + 1 && left >= -1) || scrolls(element)) continue;
      const name =
        element.tagName.toLowerCase() +
        (element.className ? `.${String(element.getAttribute('class'))}` : '');
      found.push(
        `<${name}> reaches from ${Math.round(left)} to ${Math.round(right)}: ${(element.textContent ?? '').trim().slice(0, 40)}`,
      );
    }
    return found.slice(0, 5);

    function scrolls(element: Element): boolean {
      for (let at: Element | null = element.parentElement; at && at !== document.body; at = at.parentElement)
        if (/auto|scroll|hidden|clip/.test(getComputedStyle(at).overflowX)) return true;
      return false;
    }
  });
}
