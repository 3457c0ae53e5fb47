/** What makes reading a little easier where scripts run; nothing on a page depends on it. */
document.documentElement.classList.add('scripted');
export {};
