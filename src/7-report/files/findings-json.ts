/** `findings.json`: everything that was graded, for other programs. */
import type { Graded } from '../../../shared/schemas/grade.ts';
import type { FindingsFile } from '../../../shared/schemas/report.ts';
import { addressOf } from '../compose-facts.ts';
import type { NumberedFinding } from '../compose-findings.ts';

export function findingsFile(graded: Graded, numbered: readonly NumberedFinding[], isSigned: boolean): FindingsFile {
  const numbers = new Map(numbered.map(({ number, finding }) => [finding.id, number]));
  return {
    schema: 'lineword/findings@1',
    isSigned,
    address: addressOf(graded)?.text ?? null,
    date: graded.inspection.date ?? null,
    recording: { file: graded.recording.file, sha256: graded.recording.sha256 },
    findings: graded.findings.map((finding) => ({ ...finding, number: numbers.get(finding.id) ?? null })),
  };
}
