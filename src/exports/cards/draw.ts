/** The picture beside a link, as SVG: a sheet with its graduated frame, the question, where it stands, and the sight. */
import { cardSize, type Card } from '../../dossier/publishing.ts';
import { inks } from './inks.ts';
import { setLine, type Hand, type SetLine } from './letters.ts';
import { setText, setToFit, type Setting } from './lines.ts';
import { drawSight } from './sight.ts';
import { stationMark } from './station-mark.ts';

const { width, height } = cardSize;
/** The neat line of the sheet, and the edges of the text in it. */
const frame = { x: 30, y: 30, right: width - 30, bottom: height - 30 };
const left = 78;
const column = 680;

/** The card as SVG without a single letter that the machine would have to set. */
export function drawCard(card: Card): string {
  const parts = [
    sheet(),
    card.answer
      ? drawSight(card.sight, { x: 974, y: 244 }, 132)
      : drawSight(card.sight, { x: 964, y: 300 }, 160),
    foot(card),
  ];
  let y = 112;
  parts.push(
    ...put(setText(card.over, { hand: 'sans', size: 28, width: column, lines: 1 }), y, 0, inks.soft),
  );
  const heading = setToFit(card.text, card.answer ? question : name);
  y += heading.setting.size * 1.12 + 8;
  const step = heading.setting.size * 1.16;
  parts.push(...put(heading.lines, y, step, inks.ink));
  y += step * (heading.lines.length - 1);
  if (card.below !== undefined) {
    const setting: Setting = {
      hand: 'serif',
      size: 28,
      width: column,
      lines: heading.lines.length > 2 ? 3 : 5,
    };
    parts.push(...put(setText(card.below, setting), y + 60, 38, inks.soft));
  }
  if (card.answer) parts.push(answer(card.answer));
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${parts.join('')}</svg>`;
}

const sizes = (hand: Hand, some: readonly number[], lines: number): Setting[] =>
  some.map((size) => ({ hand, size, width: column, lines }));
/** A question is set as large as it goes in three lines, then in four. */
const question = [...sizes('serif', [62, 56], 3), ...sizes('serif', [50, 46], 4)];
const name = sizes('serif', [88, 76, 64, 54], 3);

/** Paper, the neat line, and the bands graduated black and white along head and foot. */
function sheet(): string {
  const { x, y, right, bottom } = frame;
  const band = 12;
  const steps = 12;
  const step = (right - x) / steps;
  const dark = (top: number, odd: number) =>
    Array.from({ length: steps }, (_, i) =>
      i % 2 === odd ? `M${x + i * step} ${top}h${step}v${band / 2}h${-step}z` : '',
    ).join('');
  const bands = [y, bottom - band].map((top) => dark(top, 0) + dark(top + band / 2, 1)).join('');
  return [
    `<rect width="${width}" height="${height}" fill="${inks.paper}"/>`,
    `<path d="${bands}" fill="${inks.ink}"/>`,
    `<path d="M${x} ${y}H${right}V${bottom}H${x}ZM${x} ${y + band}H${right}M${x} ${bottom - band}H${right}" fill="none" stroke="${inks.ink}" stroke-width="1.5"/>`,
  ].join('');
}

/** Where the question stands: the mark, the word, the place and what it lies in. */
function answer({ shape, word, place, within }: NonNullable<Card['answer']>): string {
  const top = 400;
  const x = left + 68;
  const wide = frame.right - 48 - x;
  const lines = [
    ...put([setLine(word, 'sans-bold', 25, 0.01)], top + 40, 0, inks.accent, x),
    ...put(setText(place, { hand: 'serif-bold', size: 44, width: wide, lines: 1 }), top + 88, 0, inks.ink, x),
    ...put(setText(within, { hand: 'serif', size: 26, width: wide, lines: 1 }), top + 124, 0, inks.soft, x),
  ];
  const rule = `<path d="M${left} ${top}h${column}" stroke="${inks.line}" stroke-width="1.5"/>`;
  return [rule, stationMark(shape, left, top + 20, 48), ...lines].join('');
}

/** The name of the site, and on an invented family’s card that it is one. */
function foot({ site, notice, answer: answered }: Card): string {
  const base = frame.bottom - 30;
  const hand = { hand: 'sans', size: 21, lines: 1 } as const;
  const named = answered ? setText(site, { ...hand, width: 620 }) : [];
  const noted = notice === undefined ? [] : setText(notice, { ...hand, width: 400 });
  const noticeX = frame.right - 48 - (noted[0]?.width ?? 0);
  return [...put(named, base, 0, inks.soft), ...put(noted, base, 0, inks.soft, noticeX)].join('');
}

function put(lines: readonly SetLine[], y: number, step: number, ink: string, x = left): string[] {
  return lines
    .filter(({ path }) => path !== '')
    .map(
      ({ path }, i) =>
        `<path transform="translate(${x} ${Math.round((y + i * step) * 100) / 100})" d="${path}" fill="${ink}"/>`,
    );
}
