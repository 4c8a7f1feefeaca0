import { describe, expect, it } from 'vitest';
import { composeReport } from '../../src/7-report/compose-report.ts';
import { reportHtml } from '../../src/7-report/html/write-html.ts';
import { gradeDraft } from '../grade/make-draft.ts';
import { fullInspection } from './full-inspection.ts';

const graded = fullInspection();
const report = composeReport(graded, { stills: [], signed: null });
const page = reportHtml(report);
/** What a reader sees, without the drawings. */
const seen = page
  .replace(/<(style|svg)\b[\s\S]*?<\/\1>/g, ' ')
  .replace(/<[^>]+>/g, ' ')
  .replaceAll('&#39;', "'")
  .replace(/\s+/g, ' ');
const row = (what: string) => report.findings.find((f) => f.what.startsWith(what))!;

describe('what published standards ask of a report', () => {
  // InterNACHI sewer scope SOP 1.1 and 1.3: what was inspected, what was not and why.
  it('says which part was inspected', () => {
    expect(seen).toContain('It ended where the camera could go no farther, 44 ft 6 in, plus or minus 1 ft');
    expect(seen).toContain('It ended at the upper end of the line, 31 ft');
  });

  it('says which part was not inspected, and why in the words of the inspector', () => {
    const gap = report.notInspected.find((g) => g.what.includes('44 ft 6 in'))!;
    expect(gap).toEqual({
      what: 'Run 1: beyond 44 ft 6 in',
      why: expect.stringMatching(/^Camera stopped\. “the words/),
    });
  });

  // SOP 3.1.1 and 3.1.2: pipe material; a cleanout that is not accessible.
  it('describes the pipe material and size along the line', () => {
    expect(seen).toContain(
      '4 in cast iron from 0 ft to 16 ft, 36 % of it; 6 in clay from 16 ft to 44 ft 6 in, 64 % of it',
    );
  });

  it('notes an opening that could not be used', () => {
    expect(report.notInspected.some((gap) => gap.what === 'No access')).toBe(true);
  });

  // SOP 2.1 and 2.2.
  it('states its limits', () => {
    for (const words of [
      'not technically exhaustive',
      'What is hidden',
      'on the day of the inspection',
      'predicts nothing',
    ])
      expect(seen).toContain(words);
  });

  // SOP 2.3.9 and 1.2.
  it('gives no costs and calls age no defect', () => {
    expect(seen).not.toMatch(/\$\d|dollars/);
    expect(seen).toContain('Age alone is no defect');
  });

  // City of Portland BES: address, date, contractor, entry point by compass, whole run or why not.
  it.each([
    ['Property', '7 Plover Lane'],
    ['For', 'A. Marsh'],
    ['Year built', '1938'],
    ['Date', 'March 4, 2026'],
    // Sunny Isles Beach 02762 section 3.5 C: company, inspector, from, direction, start time.
    ['Start time', '9:40'],
    ['Inspector', 'R. Vance'],
    ['Company', 'Vance Sewer Inspection'],
    ['License or certificate', 'SI-0417'],
    ['Access, run 1', 'Front two-way cleanout; southeast corner of the front yard; camera went downstream'],
    ['Access, run 2', 'Front two-way cleanout; compass not stated; camera went upstream'],
    ['Weather', 'dry, 52 °F'],
    ['Water run', 'ten minutes at the tub'],
    ['Cleaned before', 'no'],
    ['Equipment', 'push camera, 200 ft reel, 512 Hz sonde'],
  ])('states %s', (label, value) => {
    expect(report.facts.find((fact) => fact.label === label)!.value).toBe(value);
  });

  // City of Decatur IL, document 766610 p. 4: distance of each defect, tie-ins and type, depth and type of debris,
  // pipe type and size, narration.
  it('gives the distance of each finding with the counter reading beside it', () => {
    expect(row('Roots')).toMatchObject({ place: '19 ft 6 in', counter: '23 ft', plusMinus: '± 1 ft' });
    expect(row('Hole').place).toBe('No distance said');
  });

  it('lists what ties in, where, and what it serves', () => {
    expect(report.runs[0]!.fittings).toContainEqual(
      expect.objectContaining({
        place: '22 ft 6 in',
        what: 'Wye',
        details: expect.stringContaining('for the laundry'),
      }),
    );
    expect(report.runs[1]!.fittings.some((f) => f.what === 'Cleanout' && f.place === '12 ft')).toBe(true);
  });

  it('gives the depth of debris', () => {
    expect(row('Debris').size).toBe('1 in; called light');
  });

  // Sunny Isles Beach 02762 p. 8: footage, video reference, clock position, continuous, severity, final footage, remarks.
  it('gives clock position, stretch, severity, the words and the time in the recording', () => {
    expect(row('Roots')).toMatchObject({ where: '11 o’clock', severity: 'moderate', time: '0:42' });
    expect(row('Roots').words).toBe('the words of number 4');
    expect(row('Belly').place).toBe('30 ft 6 in to 37 ft 6 in');
  });

  it('says what each finding means and what to do', () => {
    for (const finding of report.findings) {
      expect(finding.meaning).toMatch(/^[A-Z].*\.$/);
      expect(finding.next).toMatch(/^[A-Z].*\.$/);
    }
  });

  // Santa Barbara, Tacoma, Olympic Valley: ownership differs by place.
  it('says who owns what, who stated it, and that places differ', () => {
    expect(report.ownership[0]).toBe(
      'The owner’s part ends at the property line; on run 1 that is 36 ft 6 in from where the camera entered; stated by the city sewer office.',
    );
    expect(seen).toContain('differs from place to place');
    expect(row('Roots').part).toBe('owner’s part');
    expect(row('Belly').part).toBe('owner’s part');
    expect(row('Offset').part).toBe('beyond the owner’s part');
    expect(row('Hole').part).toBe('not stated');
  });

  // 29 CFR 1910.146; Long Beach Energy Resources; 811 pages; 40 CFR 61 subpart M; Carmel Area Wastewater District.
  it.each([
    'Sewer gas and confined spaces',
    'A backed-up line',
    'Gas lines that cross sewers',
    'Before anybody digs',
    'Asbestos cement',
    'Local codes and licensed trades',
  ])('has the caution: %s', (title) => {
    expect(report.cautions.map((caution) => caution.title)).toContain(title);
    expect(seen).toContain(title);
  });

  it('keeps cautions out that do not belong', () => {
    const plain = composeReport(gradeDraft({}), { stills: [], signed: null });
    expect(plain.cautions.map((caution) => caution.title)).toEqual([
      'Local codes and licensed trades',
      'Sewer gas and confined spaces',
      'Before anybody digs',
    ]);
  });
});

describe('the order of the report', () => {
  it('puts first what a buyer reads first', () => {
    const headings = [...page.matchAll(/<h2>(.*?)<\/h2>/g)].map((match) => match[1]);
    expect(headings).toEqual([
      'In short',
      'Not settled yet',
      'What to do next',
      'The inspection',
      'The line',
      'Findings',
      'Looked for and not seen',
      'Not inspected, and why',
      'Limits',
      'Cautions',
      'Who owns what',
      'Signature',
      'How it was graded',
      'How the numbers were worked out',
      'Words of the trade',
    ]);
  });

  it('orders the next steps by urgency, then by trade', () => {
    expect(report.next.map((group) => group.title)).toEqual([
      'Repair',
      'Clean',
      'Find out more',
      'Look again later',
      'Good to know',
    ]);
    expect(report.next[1]!.trades.map((trade) => trade.title)).toEqual([
      'Drain cleaner',
      'Licensed plumber or sewer contractor',
    ]);
  });
});

describe('never more than was confirmed', () => {
  it('lists open items, and neither grades nor counts nor numbers them', () => {
    expect(report.openItems.map((item) => item.what)).toEqual([
      'Intrusion, 43 ft 6 in',
      'Talk that found no place in the draft',
    ]);
    expect(report.openItems[0]!.why).toBe('heard "41", could be "42"');
    expect(report.findings.some((f) => f.what.startsWith('Intrusion'))).toBe(false);
    expect(report.short.join(' ')).not.toContain('intrusion');
  });

  it('calls a suspicion possible and says what would settle it', () => {
    expect(row('Possible crack')).toMatchObject({
      severity: 'suspected',
      next: 'Clean the line, and look again slowly with a clean lens.',
    });
    expect(row('Possible crack').meaning).toMatch(/^Not certain\. If so: /);
  });

  it('does not let a denial at one place speak for a run where the thing was found', () => {
    expect(report.notSeen).toEqual([
      'In run 1, in the part that was seen, the inspector noted no breaks.',
      'Run 1: Roots: said not to be there at 5:10 of the recording, but found elsewhere in the run; see the findings.',
    ]);
  });

  it('prints what nobody stated as not stated', () => {
    const bare = composeReport(gradeDraft({ site: {} }), { stills: [], signed: null });
    const unstated = bare.facts.filter((fact) => fact.value === 'not stated').map((fact) => fact.label);
    expect(unstated).toEqual([
      'Property',
      'For',
      'Year built',
      'Occupied',
      'Date',
      'Start time',
      'Inspector',
      'Company',
      'License or certificate',
      'Contact',
      'Weather',
      'Water run',
      'Cleaned before',
      'Equipment',
    ]);
    expect(bare.ownership[0]).toContain('was not stated');
  });

  it('explains the words that occur and no others', () => {
    const words = report.glossary.map((entry) => entry.word);
    expect(words).toEqual(
      expect.arrayContaining(['Roots', 'Belly', 'Clay', 'Asbestos cement', 'Break', 'Upstream', 'Bore', 'Sonde']),
    );
    expect(words).not.toContain('Invert');
    expect(words).not.toContain('Septic tank');
    expect(words).not.toContain('Intrusion');
  });
});

describe('rules and computations', () => {
  it('names the rules that were used with their sources', () => {
    const belly = report.rules.used.find((rule) => rule.limit.includes('50 % of the pipe diameter or more'))!;
    expect(belly).toMatchObject({
      gives: 'severe, clean',
      source: expect.stringContaining('Seattle Public Utilities'),
    });
    expect(belly.numbers).toBe(String(row('Belly').number));
  });

  it('says what was confirmed and what stands as drafted', () => {
    expect(report.rules.sentences[0]).toBe(
      'Of 16 observations in this report the inspector confirmed 0 one by one; 16 stand as they were drafted, with no doubt raised.',
    );
  });

  it('shows what each number was worked out from', () => {
    const sums = row('Belly').computations;
    expect(sums.map((sum) => sum.name)).toEqual(['Standing water', 'Water held', 'How far the water stands back']);
    expect(sums[0]!.inputs).toContain('depth of water 3 in (the talk)');
    expect(row('Belly').size).toBe('3 in of water; holds 2.2 to 5.1 gal');
  });

  it('keeps a grade of the inspector with its reason', () => {
    const own = {
      observation: 'o4',
      kind: 'roots',
      run: 1,
      at: 23,
      severity: 'minor',
      action: 'watch',
      reason: 'Hair roots only.',
    } as const;
    const set = composeReport(fullInspection({ ownGrades: [own] }), { stills: [], signed: null });
    expect(set.rules.own).toEqual([
      'No. 1 was graded minor (look again later) by the inspector: Hair roots only. The rules gave moderate (clean).',
    ]);
    expect(set.findings[0]).toMatchObject({ severity: 'minor', next: 'Have this place looked at again.' });
  });
});
