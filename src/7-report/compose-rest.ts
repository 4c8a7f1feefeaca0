/** Ownership, cautions, the rules that were used, the glossary and the words about the signature. */
import type { Graded } from '../../shared/schemas/grade.ts';
import type { Report } from '../../shared/schemas/report.ts';
import { cautions } from '../../shared/vocabulary/grading/cautions.ts';
import { actions } from '../../shared/vocabulary/grading/levels.ts';
import { tradeWords } from '../../shared/vocabulary/grading/trade-words.ts';
import { materials } from '../../shared/vocabulary/materials.ts';
import { dateWords } from './compose-facts.ts';
import type { NumberedFinding } from './compose-findings.ts';
import type { SignedFacts } from './signed-facts.ts';
import { howToVerify, ownershipDiffers, ownershipNotStated } from './standing-text.ts';
import { capital, kindNamed, list, plural } from './wording/counting.ts';
import { length, type Units } from './wording/lengths.ts';

const ownerEndWords = {
  main: 'at the public main; whether the tap belongs to it was not stated',
  'main-with-tap': 'at the public main, the tap included',
  'property-line': 'at the property line',
  tank: 'at the septic tank',
  other: 'at another place',
} as const;

export function ownershipWords(graded: Graded, units: Units): string[] {
  const stated = graded.inspection.ownerPart;
  const distances = graded.runs
    .filter((run) => run.ownerEndsFeet !== null)
    .map(
      (run) =>
        `on run ${run.n} that is ${length(Math.max(0, run.ownerEndsFeet!), units)} from where the camera entered`,
    );
  if (stated === undefined && distances.length === 0) return [ownershipNotStated, ownershipDiffers];
  const end = stated === undefined ? 'at the distance given' : ownerEndWords[stated.endsAt];
  const by = stated?.statedBy === undefined ? 'who said so was not stated' : `stated by ${stated.statedBy}`;
  const words = stated?.words === undefined ? '' : ` (${stated.words})`;
  const where = distances.length === 0 ? '' : `; ${list(distances)}`;
  const isUnplaced = distances.length === 0 && (stated?.endsAt === 'property-line' || stated?.endsAt === 'other');
  return [
    `The owner’s part ends ${end}${words}${where}; ${by}.`,
    ...(isUnplaced ? ['How far along the line that is was not stated, so no finding is assigned to anybody.'] : []),
    ownershipDiffers,
  ];
}

export function cautionsFor(graded: Graded): Report['cautions'] {
  const kinds = new Set(graded.findings.map((f) => f.kind));
  const made = new Set(
    graded.findings.flatMap((f) => [f.material, f.fromMaterial, f.toMaterial]).filter((name) => name !== null),
  );
  return cautions
    .filter((caution) => {
      if (caution.whenKinds === undefined && caution.whenMaterials === undefined) return true;
      return (
        caution.whenKinds?.some((kind) => kinds.has(kind)) || caution.whenMaterials?.some((name) => made.has(name))
      );
    })
    .map(({ title, text, source }) => ({ title, text, source }));
}

export function rulesInWords(graded: Graded, numbered: readonly NumberedFinding[]): Report['rules'] {
  const { local, table, used } = graded.rules;
  const stood = graded.findings.filter((f) => f.reviewState !== 'open');
  const confirmed = stood.filter((f) => f.reviewState === 'confirmed').length;
  const sentences = [
    `Of ${stood.length} observations in this report the inspector confirmed ${confirmed} one by one; ${stood.length - confirmed} stand as they were drafted, with no doubt raised.`,

    `Grades follow the ${table}. Each rule is given with its source; where none was found it says so.`,
  ];
  if (local !== null) {
    const changes = [
      local.replaced.length > 0 &&
        `${plural(local.replaced.length, 'rule was', 'rules were')} replaced (${local.replaced.join(', ')})`,
      local.added.length > 0 &&
        `${plural(local.added.length, 'rule was', 'rules were')} added (${local.added.join(', ')})`,
      local.dropped.length > 0 &&
        `${plural(local.dropped.length, 'rule was', 'rules were')} left out (${local.dropped.join(', ')})`,
      local.hasSlope && 'the slope table is its own',
    ].filter((change) => change !== false);
    sentences.push(
      `The local rules “${local.name}” of ${local.authority} were laid over it: ${changes.length === 0 ? 'they change nothing' : list(changes)}. SHA-256 of that file: ${local.sha256}.`,
    );
  }
  return {
    sentences,
    own: numbered.filter(({ finding }) => finding.grade?.own).map(ownGradeWords),
    used: used.map((rule) => ({
      numbers: numbered
        .filter(({ finding }) => finding.grade?.rulesHeld.includes(rule.id))
        .map(({ number }) => number)
        .join(', '),
      limit: `${list(rule.kinds.map((kind) => kindNamed(kind).title))}: ${rule.limit}`,
      gives: rule.needsCorrection
        ? 'in need of correction'
        : rule.isInformation
          ? 'information'
          : [rule.severity ?? 'no grade', actions.find((a) => a.name === rule.action)!.title.toLowerCase(), rule.again]
              .filter((part) => part !== undefined)
              .join(', '),
      source: rule.source,
      why: rule.why,
    })),
  };
}

function ownGradeWords({ number, finding }: NumberedFinding): string {
  const { severity, action, own } = finding.grade!;
  const titleOf = (name: string) => actions.find((a) => a.name === name)!.title.toLowerCase();
  const by = own!.by === null ? 'the inspector' : own!.by;
  return `No. ${number} was graded ${severity ?? 'without a severity'} (${titleOf(action)}) by ${by}: ${own!.reason} The rules gave ${own!.rulesGave.severity ?? 'no severity'} (${titleOf(own!.rulesGave.action)}).`;
}

/**
 * The trade's words that occur in this report, each explained once.
 * @param texts everything else that is printed
 */
export function glossaryFor(graded: Graded, texts: readonly string[]): Report['glossary'] {
  const kindTexts = [
    ...graded.findings.filter((f) => f.reviewState !== 'open').map((f) => f.kind),
    ...graded.absent.map((a) => a.kind),
  ].map((name) => kindNamed(name).report.glossary);
  const made = new Set(
    graded.findings.flatMap((f) => [f.material, f.fromMaterial, f.toMaterial]).filter((name) => name !== null),
  );
  const materialTexts = materials.filter((m) => made.has(m.name)).map((m) => m.glossary);
  const entries = [...new Set([...kindTexts, ...materialTexts])].map((text) => {
    const colon = text.indexOf(':');
    return { word: text.slice(0, colon), meaning: capital(text.slice(colon + 1).trim()) };
  });
  const others = tradeWords
    .filter(({ pattern }) => texts.some((text) => pattern.test(text)))
    .map(({ word, meaning }) => ({ word, meaning }));
  return [...entries, ...others].sort((a, b) => (a.word.toLowerCase() < b.word.toLowerCase() ? -1 : 1));
}

export function signatureWords(signed: SignedFacts | null): string[] {
  if (signed === null) return ['Nobody has signed this inspection. Until somebody does, this is a draft.', howToVerify];
  const license = signed.license === null ? '' : `, license or certificate ${signed.license}`;
  return [
    `Signed by ${signed.name}${license}, on ${dateWords(signed.time.slice(0, 10))} at ${signed.time.slice(11, 16)}${signed.time.endsWith('Z') ? ' UTC' : ''} (${signed.time}).`,
    `Statement: ${signed.statement}`,
    `Version ${signed.version}. Sum of the signed list (SHA-256): ${signed.manifestSha256}. Public key (Ed25519): ${signed.publicKey}.`,
    howToVerify,
  ];
}
