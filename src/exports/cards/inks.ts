/** The light tones of the site’s own sheet: a card is printed matter and has no dark side. */
export const inks = {
  paper: '#faf9f3',
  ink: '#1b2026',
  soft: '#4a5058',
  line: '#c3bfb0',
  accent: '#a5301a',
} as const;
