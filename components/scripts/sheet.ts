/** What makes reading a little easier where scripts run; nothing on a page depends on it. */
import { bringToLife } from './index-list.ts';
import { openScansIn } from './scan-viewer.ts';

document.documentElement.classList.add('scripted');
for (const controls of document.querySelectorAll<HTMLElement>('[data-controls]')) bringToLife(controls);
for (const dialog of document.querySelectorAll<HTMLDialogElement>('dialog.scan-viewer')) openScansIn(dialog);
