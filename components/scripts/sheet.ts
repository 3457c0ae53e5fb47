/** What makes reading a little easier where scripts run; nothing on a page depends on it. */
import { bringToLife } from './index-list.ts';

document.documentElement.classList.add('scripted');
for (const controls of document.querySelectorAll<HTMLElement>('[data-controls]')) bringToLife(controls);
