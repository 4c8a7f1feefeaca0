/** The options by which the facts of an inspection are told on the command line; they are kept in inspection.json. */
import { type Command, InvalidArgumentError, Option } from 'commander';
import { type Inspection, inspectionSchema, ownerEnds } from '../../shared/schemas/inspection.ts';
import { CliError } from './cli-error.ts';

export interface InspectionOptions {
  units?: 'feet' | 'meters';
  address?: string;
  client?: string;
  yearBuilt?: number;
  date?: string;
  start?: string;
  inspector?: string;
  company?: string;
  license?: string;
  contact?: string;
  weather?: string;
  waterRun?: string;
  cleaned?: string;
  conditions?: string;
  equipment?: string;
  ownerEnds?: (typeof ownerEnds)[number];
  ownerWords?: string;
  ownerStatedBy?: string;
  compass?: RunValue<string>[];
  access?: RunValue<string>[];
  entryOffset?: RunValue<number>[];
  ownerAt?: RunValue<number>[];
  slope?: RunValue<number>[];
}

interface RunValue<T> {
  readonly run: number;
  readonly value: T;
}

export function addInspectionOptions(command: Command): Command {
  const each =
    <T>(parse: (text: string) => T) =>
    (text: string, before: RunValue<T>[] = []): RunValue<T>[] => [...before, runValue(text, parse)];
  return command
    .addOption(new Option('--units <units>', 'what the report prints lengths in').choices(['feet', 'meters']))
    .option('--address <words>', 'the property')
    .option('--client <words>', 'for whom the inspection was made')
    .option('--year-built <year>', 'when the house was built', wholeNumber)
    .option('--date <YYYY-MM-DD>', 'the day of the inspection')
    .option('--start <words>', 'when it began')
    .option('--inspector <name>', 'who inspected')
    .option('--company <name>', "the inspector's company")
    .option('--license <number>', "the inspector's license or certificate")
    .option('--contact <words>', 'how to reach the inspector')
    .option('--weather <words>', 'the weather')
    .option('--water-run <words>', 'whether water was run before or during the inspection')
    .option('--cleaned <words>', 'whether the line was cleaned before')
    .option('--conditions <words>', 'other conditions')
    .option('--equipment <words>', 'camera, reel and locator')
    .addOption(new Option('--owner-ends <where>', "where the owner's part ends").choices([...ownerEnds]))
    .option('--owner-words <words>', 'the same in words')
    .option('--owner-stated-by <who>', 'who said so')
    .option('--compass <[run=]words>', 'where the access is by compass', each(String))
    .option('--access <[run=]words>', 'the access in words', each(String))
    .option(
      '--entry-offset <[run=]reading>',
      'what the counter read where the camera entered the pipe',
      each(anyNumber),
    )
    .option('--owner-at <[run=]reading>', "what the counter read where the owner's part ends", each(anyNumber))
    .option('--slope <[run=]inches>', 'measured fall in inches a foot', each(anyNumber));
}

/** `2=southeast corner` names the run; without a number the first run is meant. */
function runValue<T>(text: string, parse: (text: string) => T): RunValue<T> {
  const named = /^(\d+)=(.*)$/s.exec(text);
  return named ? { run: Number(named[1]), value: parse(named[2]!) } : { run: 1, value: parse(text) };
}

function anyNumber(text: string): number {
  const value = Number(text);
  if (text.trim() === '' || !Number.isFinite(value)) throw new InvalidArgumentError('Give a number.');
  return value;
}

function wholeNumber(text: string): number {
  if (!/^\d+$/.test(text)) throw new InvalidArgumentError('Give a whole number.');
  return Number(text);
}

/** The inspection with what the options say laid over it. Throws CliError naming the option that is wrong. */
export function withOptions(inspection: Inspection, options: InspectionOptions): Inspection {
  const given = <T extends object>(before: T | undefined, changes: T): T | undefined => {
    const kept = Object.entries({ ...before, ...dropUndefined(changes) });
    return kept.length === 0 ? undefined : (Object.fromEntries(kept) as T);
  };
  const changed = {
    ...inspection,
    units: options.units ?? inspection.units,
    property: given<object>(inspection.property, {
      address: options.address,
      client: options.client,
      yearBuilt: options.yearBuilt,
    }),
    date: options.date ?? inspection.date,
    startTime: options.start ?? inspection.startTime,
    inspector: given<object>(inspection.inspector, {
      name: options.inspector,
      company: options.company,
      license: options.license,
      contact: options.contact,
    }),
    conditions: given<object>(inspection.conditions, {
      weather: options.weather,
      waterRun: options.waterRun,
      cleaned: options.cleaned,
      other: options.conditions,
    }),
    equipment: options.equipment ?? inspection.equipment,
    ownerPart: given<object>(inspection.ownerPart, {
      endsAt: options.ownerEnds,
      words: options.ownerWords,
      statedBy: options.ownerStatedBy,
    }),
    runs: runsWith(inspection.runs, options),
  };
  const parsed = inspectionSchema.safeParse(dropUndefined(changed));
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0]!;
  throw new CliError(`The option for ${issue.path.join('.')} is wrong: ${issue.message}.`);
}

function runsWith(runs: Inspection['runs'], options: InspectionOptions): object[] {
  const byNumber = new Map<number, object>(runs.map((run) => [run.n, run]));
  const lay = (values: readonly RunValue<unknown>[] | undefined, field: string) => {
    for (const { run, value } of values ?? []) byNumber.set(run, { ...byNumber.get(run), n: run, [field]: value });
  };
  lay(options.compass, 'compass');
  lay(options.access, 'access');
  lay(options.entryOffset, 'entryOffset');
  lay(options.ownerAt, 'ownerEndsAt');
  lay(options.slope, 'slopeInchesPerFoot');
  return [...byNumber.entries()].sort(([a], [b]) => a - b).map(([, run]) => run);
}

function dropUndefined(record: object): object {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));
}
