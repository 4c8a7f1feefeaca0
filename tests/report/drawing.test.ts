import { describe, expect, it } from 'vitest';
import { materialNames } from '../../shared/vocabulary/materials.ts';
import { drawInspection } from '../../src/7-report/draw-line.ts';
import { patterns } from '../../src/7-report/drawing/patterns.ts';
import { drawingFiles } from '../../src/7-report/write-report.ts';
import { type DraftInput, gradeDraft } from '../grade/make-draft.ts';
import { crowdedDraft, fullInspection } from './full-inspection.ts';

interface Label {
  readonly x: number;
  readonly y: number;
  readonly isEnd: boolean;
  readonly words: string;
}

function labelsOf(svg: string): Label[] {
  return [...svg.matchAll(/<text x="([-\d.]+)" y="([-\d.]+)"([^>]*)>(.*?)<\/text>/g)].map((match) => ({
    x: Number(match[1]),
    y: Number(match[2]),
    isEnd: match[3]!.includes('text-anchor="end"'),
    words: match[4]!.replace(/<[^>]*>/g, ''),
  }));
}

const draw = (input: DraftInput) => drawInspection(gradeDraft(input));

describe('the line drawing', () => {
  it('puts both ways from one access on one sheet, the flow running down', () => {
    const drawings = drawInspection(fullInspection());
    expect(drawings).toHaveLength(1);
    const labels = labelsOf(drawings[0]!.svg);
    const at = (words: string) => labels.find((label) => label.words.startsWith(words))!.y;
    // Upstream end, cleanout 12 ft up, access, roots 19.5 ft down, belly, where the camera stopped.
    const down = [
      at('End of the line'),
      at('Cleanout'),
      at('access: front'),
      at('1Roots'),
      at('3Belly'),
      at('Camera stopped'),
    ];
    expect(down).toEqual([...down].sort((a, b) => a - b));
  });

  it('is to scale', () => {
    const [drawing] = draw({
      runs: [{ end: { at: 60, reason: 'main' } }],
      observations: [10, 25, 40].map((at) => ({ kind: 'crack', at })),
    });
    const marks = [...drawing!.svg.matchAll(/<path d="M346 ([\d.]+)L352\.5 [\d.]+L346 [\d.]+L339/g)].map(
      (match) => Number(match[1]) + 6.5,
    );
    expect(marks).toHaveLength(3);
    expect(marks[1]! - marks[0]!).toBeCloseTo(marks[2]! - marks[1]!, 1);
    const ticks = labelsOf(drawing!.svg).filter((label) => label.isEnd && /^\d+$/.test(label.words));
    const perFoot = (marks[1]! - marks[0]!) / 15;
    expect(ticks[1]!.y - ticks[0]!.y).toBeCloseTo(perFoot * (Number(ticks[1]!.words) - Number(ticks[0]!.words)), 1);
  });

  it('names every material beside its pattern', () => {
    for (const material of materialNames) {
      const [drawing] = draw({ observations: [{ kind: 'pipe', at: 0, material, diameterIn: 4 }] });
      expect(drawing!.svg).toContain(`url(#d1s1-${material})`);
    }
    expect(new Set(Object.values(patterns).map((p) => p.content + p.size)).size).toBe(materialNames.length);
  });

  it('uses black, white and grey only', () => {
    const colors = [...drawInspection(fullInspection())[0]!.svg.matchAll(/#[0-9a-f]{3,6}\b/g)].map((match) => match[0]);
    expect([...new Set(colors)].sort()).toEqual(['#111', '#222', '#777', '#fff']);
  });

  it('lets no label of 300 ft with 120 marks fall on another', () => {
    const drawings = draw(crowdedDraft(120, 300));
    expect(drawings.length).toBeGreaterThan(1);
    for (const { svg } of drawings) {
      const labels = labelsOf(svg).filter((label) => /\d ft|[a-z]{3}/.test(label.words) && label.y > 62);
      for (const isEnd of [true, false]) {
        const rows = labels.filter((label) => label.isEnd === isEnd && (isEnd ? label.x === 270 : label.x === 396));
        const heights = rows.map((label) => label.y).sort((a, b) => a - b);
        for (const [index, height] of heights.entries())
          if (index > 0) expect(height - heights[index - 1]!).toBeGreaterThan(13);
      }
    }
  });

  it('shows every mark of a crowded line on one sheet and only one', () => {
    const numbers = draw(crowdedDraft(120, 300)).flatMap(({ svg }) =>
      [...svg.matchAll(/<tspan font-weight="700">(\d+)<\/tspan>/g)].map((match) => Number(match[1])),
    );
    expect(numbers.sort((a, b) => a - b)).toEqual(Array.from({ length: 90 }, (_, index) => index + 1));
  });

  it('makes room when everything is at one place', () => {
    const observations = Array.from({ length: 70 }, () => ({ kind: 'crack' as const, at: 12 }));
    const [drawing, ...others] = draw({ observations: [...observations, { kind: 'crack', at: 50 }] });
    const sheets = [drawing!, ...others];
    const full = sheets.find(({ svg }) => (svg.match(/Crack, 12 ft/g) ?? []).length === 70)!;
    const heights = labelsOf(full.svg)
      .filter((label) => label.x === 396 && label.y > 62)
      .map((label) => label.y);
    for (const [index, height] of heights.entries())
      if (index > 0) expect(height - heights[index - 1]!).toBeGreaterThan(13);
    expect(full.heightPoints).toBeLessThanOrEqual(620);
  });

  it('says what it cannot place for want of a distance', () => {
    const [drawing] = draw({ observations: [{ kind: 'hole', at: null, atBasis: null }] });
    expect(drawing!.svg).toContain('Not on the drawing, for want of a distance: No. 1 Hole.');
  });

  it('draws no run of which no distance is known', () => {
    expect(draw({ runs: [{ end: null }], observations: [{ kind: 'hole', at: null, atBasis: null }] })).toEqual([]);
  });

  it('tells in words what it shows', () => {
    expect(drawInspection(fullInspection())[0]!.alt).toMatch(
      /^Drawing to scale of run 1 and run 2, .*No\. 1 Roots 19 ft 6 in/,
    );
  });

  it('escapes what was typed', () => {
    const [drawing] = draw({ runs: [{ access: '<b>&"front"' }] });
    expect(drawing!.svg).toContain('access: &lt;b&gt;&amp;&quot;front&quot;');
  });

  it('is written as files that stand alone', () => {
    const [file] = drawingFiles(drawInspection(fullInspection()));
    expect(file!.name).toBe('line.svg');
    expect(file!.content).toMatch(/^<\?xml[^>]*>\n<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(draw({ runs: [] })).toEqual([]);
  });
});
