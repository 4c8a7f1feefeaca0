/** What the inspector is asked. An answer is never assumed; unanswered, the report says "not stated". */
import type { Finding, Graded } from '../../shared/schemas/grade.ts';
import type { Answer, Inspection } from '../../shared/schemas/inspection.ts';
import { inspectionQuestions, soilQuestions } from '../../shared/vocabulary/grading/questions.ts';

/** @param answers by the id their observation has in this draft */
export function questionsFor(
  findings: readonly Finding[],
  inspection: Inspection,
  answers: ReadonlyMap<string, Answer>,
): Graded['questions'] {
  return [...soilQuestionsFor(findings, answers), ...inspectionQuestionsFor(findings, inspection)];
}

/** Only where the answer could still change the grade: what is severe and urgent already is left alone. */
function soilQuestionsFor(findings: readonly Finding[], answers: ReadonlyMap<string, Answer>): Graded['questions'] {
  return findings.flatMap((f) => {
    const question = soilQuestions[f.kind];
    const isGraded = f.status === 'present' && f.reviewState !== 'open';
    const isAnswered = answers.get(f.id)?.soilExposed !== undefined;
    if (question === undefined || !isGraded || isAnswered || f.grade?.severity === 'severe') return [];
    return [{ about: 'soil' as const, observation: f.id, run: f.run, question }];
  });
}

function inspectionQuestionsFor(findings: readonly Finding[], inspection: Inspection): Graded['questions'] {
  const runs = [...new Set(findings.map((f) => f.run))];
  const asked = (about: keyof typeof inspectionQuestions, run: number | null = null) => ({
    about,
    observation: null,
    run,
    question: inspectionQuestions[about],
  });
  const told = (run: number) => inspection.runs.find((r) => r.n === run);
  return [
    ...(inspection.date === undefined ? [asked('date')] : []),
    ...(inspection.inspector?.name === undefined ? [asked('inspector')] : []),
    ...(inspection.ownerPart === undefined && runs.every((run) => told(run)?.ownerEndsAt === undefined)
      ? [asked('ownerPart')]
      : []),
    ...runs.filter((run) => told(run)?.compass === undefined).map((run) => asked('compass', run)),
    ...runs.filter((run) => told(run)?.entryOffset === undefined).map((run) => asked('entryOffset', run)),
  ];
}
