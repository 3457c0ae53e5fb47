/** The options that several verbs share, read in one way. */
import { Command, InvalidArgumentError, Option } from 'commander';
import { dayNumber, isoDay } from '../../model/days.ts';
import { defaultContent, fromCaller } from './paths.ts';

/**
 * A verb’s command. Usage that can’t be followed is answered with a sentence and exit code 2, like everything else
 * that could not run. `usage` is what a person types before the options: `npm run check --`.
 */
export function verb(usage: string, description: string): Command {
  return new Command(usage)
    .description(description)
    .helpOption('-h, --help', 'print this help')
    .showSuggestionAfterError(true)
    .configureOutput({
      outputError: (text, write) => write(`${sentence(text)}Run ${usage} --help for the options.\n`),
    })
    .exitOverride((error) => process.exit(error.exitCode === 0 ? 0 : 2));
}

/** `--content DIR`: the content folder as an absolute path. */
export function contentOption(): Option {
  return new Option('--content <dir>', 'the content folder')
    .argParser(fromCaller)
    .default(defaultContent, 'content/ of the project');
}

/** `--today YYYY-MM-DD`: the day that decides who is presumed living, or another `what`. The default is today’s date in UTC. */
export function todayOption(what = 'the day that decides who is presumed living'): Option {
  return new Option('--today <date>', `${what}, YYYY-MM-DD`)
    .argParser(realDay)
    .default(new Date().toISOString().slice(0, 10), 'today');
}

/** `--format text|json`. */
export function formatOption(): Option {
  return new Option('--format <form>', 'what is printed').choices(['text', 'json']).default('text');
}

/** A port to listen on; 0 takes any free one. */
export function portOption(fallback: number): Option {
  return new Option('--port <number>', 'the port to listen on; 0 takes any free one')
    .argParser((value) => {
      const port = Number(value);
      if (!/^\d+$/.test(value) || port > 65_535)
        throw new InvalidArgumentError('A port is a whole number from 0 to 65535.');
      return port;
    })
    .default(fallback);
}

/** A number of things, from 1 to 9999. */
export function wholeNumber(value: string): number {
  if (!/^[1-9]\d{0,3}$/.test(value)) throw new InvalidArgumentError('Give a whole number from 1 to 9999.');
  return Number(value);
}

function realDay(value: string): string {
  const parts = /^(\d{4})-(\d\d)-(\d\d)$/.exec(value);
  const day = parts && isoDay(dayNumber(Number(parts[1]), Number(parts[2]), Number(parts[3])));
  if (day !== value)
    throw new InvalidArgumentError('Write a day of the calendar as YYYY-MM-DD, such as 2025-06-01.');
  return value;
}

/** Commander’s messages, as sentences. */
function sentence(text: string): string {
  const said = text.replace(/^error: /, '').trim();
  const [head = '', ...rest] = said.split('\n');
  const capital = head.charAt(0).toUpperCase() + head.slice(1);
  return `${[/[.?!]$/.test(capital) ? capital : `${capital}.`, ...rest].join('\n')}\n`;
}
