/** The facts of the inspection, each printed even when it was not stated. Nothing is filled in. */
import type { Graded } from '../../shared/schemas/grade.ts';
import type { Report } from '../../shared/schemas/report.ts';
import { shortTime } from '../../shared/wording/short.ts';
import { notStated } from './standing-text.ts';
import { capital } from './wording/counting.ts';
import { reading, type Units } from './wording/lengths.ts';

/** The address as the inspector gave it, else as it was heard. */
export function addressOf(graded: Graded): { text: string; isOpen: boolean } | null {
  const given = graded.inspection.property?.address;
  if (given !== undefined) return { text: given, isOpen: false };
  const heard = graded.site.address;
  return heard === undefined ? null : { text: String(heard.value), isOpen: heard.isOpen };
}

export function inspectionFacts(graded: Graded, units: Units): Report['facts'] {
  const { inspection } = graded;
  const heard = (name: string) => {
    const field = graded.site[name];
    if (field === undefined) return undefined;
    const value = typeof field.value === 'boolean' ? (field.value ? 'yes' : 'no') : String(field.value);
    return field.isOpen ? `${value} (heard, not confirmed)` : value;
  };
  const address = addressOf(graded);
  const { property, inspector, conditions } = inspection;
  const occupied = property?.occupied === undefined ? heard('occupied') : property.occupied ? 'yes' : 'no';
  const facts: [string, string | undefined][] = [
    [
      'Property',
      address === null ? undefined : address.isOpen ? `${address.text} (heard, not confirmed)` : address.text,
    ],
    ['For', property?.client ?? heard('client')],
    ['Year built', property?.yearBuilt?.toString() ?? heard('year_built') ?? ageWords(heard('age_years'))],
    ['Occupied', occupied],
    ['Date', inspection.date === undefined ? undefined : dateWords(inspection.date)],
    ['Start time', inspection.startTime],
    ['Inspector', inspector?.name],
    ['Company', inspector?.company],
    ['License or certificate', inspector?.license],
    ['Contact', inspector?.contact],
    ...graded.runs.map((run): [string, string] => [
      graded.runs.length > 1 ? `Access, run ${run.n}` : 'Access',
      [
        run.access === null ? `access ${notStated}` : capital(run.access),
        run.compass === null ? `compass ${notStated}` : run.compass,
        run.direction === null ? `direction ${notStated}` : `camera went ${run.direction}`,
      ].join('; '),
    ]),
    ['Counter', counterWords(graded, units)],
    ['Weather', conditions?.weather ?? heard('weather')],
    ['Water run', conditions?.waterRun],
    ['Cleaned before', conditions?.cleaned],
    ...(conditions?.other === undefined ? [] : [['Conditions', conditions.other] as [string, string]]),
    ['Equipment', inspection.equipment],
    ['Recording', `${graded.recording.file}, ${shortTime(graded.recording.seconds)} long`],
    ['SHA-256 of the recording', graded.recording.sha256],
  ];
  return facts.map(([label, value]) => ({ label, value: value ?? notStated }));
}

function ageWords(years: string | undefined): string | undefined {
  return years === undefined ? undefined : `about ${years} years old, as said`;
}

function counterWords(graded: Graded, units: Units): string {
  const offsets = graded.runs.filter((run) => run.entryOffsetFeet !== null);
  if (offsets.length === 0)
    return 'Distances are as the counter read them; a reading at the entry into the pipe was not stated';
  const each = offsets.map(
    (run) =>
      `${graded.runs.length > 1 ? `run ${run.n}: ` : ''}the camera entered the pipe at ${reading(run.entryOffsetFeet!, graded.counterUnit)} on the counter`,
  );
  return `${capital(each.join('; '))}; distances are counted from there${units === 'meters' ? ', in metres' : ''}`;
}

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** "March 4, 2026" from "2026-03-04". */
export function dateWords(iso: string): string {
  const [year, month, day] = iso.split('-').map(Number) as [number, number, number];
  return `${months[month - 1]} ${day}, ${year}`;
}
