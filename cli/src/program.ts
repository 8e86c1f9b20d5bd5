import { readFileSync } from 'node:fs';
import { Command, CommanderError, Option } from 'commander';
import { languages, layKinds, paperSizes, type Speaker } from '@ribbonwright/engine';
import { check } from './commands/check.ts';
import { example, exampleNames } from './commands/example.ts';
import { lay, type LayOptions } from './commands/lay.ts';
import { papers, type PapersOptions } from './commands/papers.ts';
import { plan, type PlanOptions } from './commands/plan.ts';
import { schema, schemaNames } from './commands/schema.ts';
import { FINE } from './exit.ts';
import { usualSearch } from './laying/options.ts';
import type { LoadOptions } from './load.ts';
import type { Session } from './session.ts';

/** Whoever runs the program learns its exit code through `ended`. */
export function program(session: Session, ended: (code: number) => void): Command {
  const { terminal, speaker } = session;
  const words = speaker.words.command;
  const titles: Readonly<Record<string, string>> = {
    'Usage:': words.usage,
    'Options:': words.optionsHeading,
    'Arguments:': words.argumentsHeading,
    'Commands:': words.commandsHeading,
  };
  const dress = (command: Command, examples: readonly string[]): Command =>
    command
      .helpOption('-h, --help', words.optionHelp)
      .configureHelp({ styleTitle: (title) => titles[title] ?? title })
      .configureOutput({ writeOut: terminal.out, writeErr: terminal.note, outputError: () => undefined })
      .exitOverride()
      .addHelpText(
        'after',
        `\n${words.examples}\n${examples.map((line) => `  ${line}`).join('\n')}\n\n${words.exitCodes}`,
      );
  const language = () => new Option('-l, --language <language>', words.optionLanguage).choices(languages);
  const measure = () =>
    new Option('-m, --measure <system>', words.optionMeasure).choices(['inches', 'metric']);
  const have = () => new Option('--have <length>', words.optionHave);
  const seed = () => new Option('--seed <number>', words.optionSeed);
  const way = () => new Option('-w, --way <way>', words.optionWay).choices(layKinds);
  const paper = () => new Option('-p, --paper <size>', words.optionPaper).choices(paperSizes);

  const top = dress(new Command('ribbonwright'), [
    'ribbonwright example > robin.skirt.json',
    'ribbonwright plan robin.skirt.json',
    'ribbonwright papers robin.skirt.json --out robin',
  ])
    .description(words.about)
    .version(version(), '-V, --version', words.optionVersion)
    .helpCommand('help [command]', words.helpCommand);
  const add = (name: string, summary: string, examples: readonly string[]) =>
    dress(top.command(name), examples).description(summary);

  add('plan', words.plan, [
    'ribbonwright plan robin.skirt.json',
    'ribbonwright plan robin.skirt.json --have "1.6 m"',
    'ribbonwright example | ribbonwright plan - --json',
  ])
    .argument('<request>', words.requestArgument)
    .option('--json', words.optionJson)
    .addOption(have())
    .addOption(language())
    .addOption(measure())
    .action(async (file: string, options: PlanOptions) => {
      ended(await plan(file, options, session));
    });

  add('papers', words.papers, [
    'ribbonwright papers robin.skirt.json --out robin',
    'ribbonwright papers robin.skirt.json --paper a4 --language fr',
    'ribbonwright papers saturday.class.json --seconds 60 --out saturday',
  ])
    .argument('<request>', words.requestArgument)
    .option('-o, --out <folder>', words.optionOut, 'papers')
    .option('-s, --seconds <seconds>', words.optionPapersSeconds)
    .addOption(seed())
    .addOption(way())
    .addOption(paper())
    .addOption(have())
    .addOption(language())
    .addOption(measure())
    .action(async (file: string, options: PapersOptions) => {
      ended(await papers(file, options, session));
    });

  add('lay', words.lay, [
    'ribbonwright lay saturday.class.json --seconds 60 --out saturday',
    'ribbonwright lay robin.skirt.json --way open',
    'ribbonwright example --of class | ribbonwright lay - --json',
  ])
    .argument('<request>', words.requestArgument)
    .option('-s, --seconds <seconds>', words.optionSeconds, usualSearch.seconds)
    .addOption(seed().default(usualSearch.seed))
    .addOption(way())
    .option('--json', words.optionLayJson)
    .option('-o, --out <folder>', words.optionLayOut)
    .addOption(paper())
    .addOption(language())
    .addOption(measure())
    .action(async (file: string, options: LayOptions) => {
      ended(await lay(file, options, session));
    });

  add('check', words.check, ['ribbonwright check robin.skirt.json'])
    .argument('<request>', words.requestArgument)
    .addOption(language())
    .addOption(measure())
    .action(async (file: string, options: LoadOptions) => {
      ended(await check(file, options, session));
    });

  add('example', words.example, [
    'ribbonwright example > robin.skirt.json',
    'ribbonwright example --of class --language fr > samedi.class.json',
  ])
    .addOption(new Option('--of <document>', words.optionExampleOf).choices(exampleNames).default('skirt'))
    .addOption(language())
    .action((options: { of: string }) => {
      ended(example(options, session));
    });

  add('schema', words.schema, ['ribbonwright schema > request.schema.json', 'ribbonwright schema --of plan'])
    .addOption(new Option('--of <document>', words.optionOf).choices(schemaNames).default('request'))
    .addOption(measure())
    .addOption(language())
    .action((options: { of: string; measure?: string }) => {
      ended(schema(options, session));
    });
  return top;
}

const version = (): string => {
  const text = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
};

/** The library's own refusals in our words; null for help and version, which are no refusals. */
export function refusal(error: CommanderError, { words, text }: Speaker): string | null {
  const { command } = words;
  const quoted = /'([^']*)'/.exec(error.message)?.[1] ?? '';
  const name = quoted.replace(/ <.*$/, '');
  switch (error.code) {
    case 'commander.missingArgument':
      return command.missingArgument;
    case 'commander.unknownOption':
      return text(command.unknownOption, { name });
    case 'commander.unknownCommand':
      return text(command.unknownCommand, { name });
    case 'commander.optionMissingArgument':
      return text(command.optionNeedsValue, { name });
    case 'commander.excessArguments':
      return command.tooManyArguments;
    case 'commander.invalidArgument': {
      const [, , value = ''] = /option '([^']*)' argument '([^']*)'/.exec(error.message) ?? [];
      const values = /Allowed choices are (.*)\./.exec(error.message)?.[1] ?? '';
      return text(command.badChoice, { value, name, values });
    }
    default:
      return error.exitCode === FINE ? null : error.message;
  }
}
