/** The report as one HTML file that needs nothing else: fonts, drawings and pictures are inside. */
import type { Report, ReportFinding } from '../../../shared/schemas/report.ts';
import { escapeHtml, html, SafeHtml } from './escape.ts';
import { styleSheet } from './style.ts';

export function reportHtml(report: Report): string {
  const page = html`<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'">
<title>${tabTitle(report)}</title>
<style>${new SafeHtml(styleSheet(report.draftNotice))}</style>
</head>
<body>
${report.draftNotice === null ? null : html`<aside class="draft" aria-label="State of this report">${report.draftNotice}</aside>`}
<header>
<h1>${report.address}</h1>
<p>${report.title}</p>
</header>
<main>
${section('In short', html`<div class="short">${report.short.map((text) => html`<p>${text}</p>`)}</div>`)}
${report.openItems.length === 0 ? null : section('Not settled yet', openItems(report))}
${section('What to do next', nextSteps(report))}
${section('The inspection', definitions(report.facts.map(({ label, value }) => ({ term: label, text: value }))))}
${section('The line', line(report))}
${section('Findings', findings(report))}
${report.stills.length === 0 ? null : section('Pictures', stills(report))}
${section('Looked for and not seen', sentences(report.notSeen, 'Nothing is on record as looked for and not seen.'))}
${section('Not inspected, and why', notInspected(report))}
${section('Limits', sentences(report.limits, ''))}
${section('Cautions', cautions(report))}
${section('Who owns what', sentences(report.ownership, ''))}
${section('Signature', html`<div class="signature">${report.signature.map((text) => html`<p>${text}</p>`)}</div>`)}
${section('How it was graded', rules(report))}
${section('How the numbers were worked out', computations(report))}
${section('Words of the trade', definitions(report.glossary.map(({ word, meaning }) => ({ term: word, text: meaning }))))}
</main>
<footer><p>Drafted with lineword from the inspector’s spoken words. The inspector decides what it says.</p></footer>
</body>
</html>
`;
  return page.markup;
}

/** Browsers cut a longer title off; so do we, where a reader can see it. */
const longestTitle = 70;

function tabTitle(report: Report): string {
  let title = `${report.title}, ${report.address}`;
  if (escapeHtml(title).length <= longestTitle) return title;
  while (escapeHtml(title).length >= longestTitle) title = title.slice(0, -1);
  return `${title}…`;
}

function section(title: string, content: SafeHtml): SafeHtml {
  return html`<section><h2>${title}</h2>${content}</section>
`;
}

function sentences(texts: readonly string[], none: string): SafeHtml {
  if (texts.length === 0) return html`<p>${none}</p>`;
  return html`<ul>${texts.map((text) => html`<li>${text}</li>`)}</ul>`;
}

function definitions(entries: readonly { term: string; text: string }[]): SafeHtml {
  return html`<dl>${entries.map(({ term, text }) => html`<dt>${term}</dt><dd>${text}</dd>`)}</dl>`;
}

function openItems(report: Report): SafeHtml {
  return html`<p>These were heard and nobody has settled them. They are not graded and not counted.</p>
<section class="scroll" tabindex="0" aria-label="Items not settled"><table><thead><tr><th scope="col">What</th><th scope="col">Why it is open</th><th scope="col">Words and time</th></tr></thead>
<tbody>${report.openItems.map((item) => html`<tr><th scope="row">${item.what}</th><td>${item.why}</td><td>${quote(item.words)} <span class="small">${item.time}</span></td></tr>`)}</tbody></table></section>`;
}

function nextSteps(report: Report): SafeHtml {
  if (report.next.length === 0) return html`<p>Nothing that was seen asks for a next step.</p>`;
  return html`${report.next.map(
    (group) =>
      html`<div class="steps"><h3>${group.title}</h3><div>${group.trades.map(
        (trade) =>
          html`<div class="trade"><h4>${trade.title}</h4><ul>${trade.steps.map(
            (step) => html`<li>${step.step} <span class="where">${step.where.join('; ')}</span></li>`,
          )}</ul></div>`,
      )}</div></div>`,
  )}`;
}

function line(report: Report): SafeHtml {
  const drawings = report.drawings.map(
    (drawing, index) =>
      html`<figure><figcaption>${drawing.title}</figcaption><section class="scroll" tabindex="0" aria-label="${`Drawing ${index + 1}`}">${new SafeHtml(
        accessibleSvg(drawing.svg, drawing.alt, index),
      )}</section></figure>`,
  );
  const runs = report.runs.map(
    (run) => html`<h3>${run.title}</h3>${run.sentences.map((text) => html`<p>${text}</p>`)}`,
  );
  const fittings = report.runs.map((run) =>
    run.fittings.length === 0
      ? null
      : html`<h3>What the camera passed in run ${run.number}</h3><section class="scroll" tabindex="0" aria-label="${`What the camera passed in run ${run.number}`}"><table><thead><tr><th scope="col">Distance</th><th scope="col">What</th><th scope="col">Details</th><th scope="col">Time</th></tr></thead><tbody>${run.fittings.map(
          (f) =>
            html`<tr><td>${f.place}</td><th scope="row">${f.what}</th><td>${f.details}</td><td>${f.time}</td></tr>`,
        )}</tbody></table></section>`,
  );
  if (report.runs.length === 0) return html`<p>${report.noFinding}</p>`;
  return html`${runs}${drawings}${fittings}`;
}

/** Our own drawing, already escaped, with a title that a screen reader can read out. */
function accessibleSvg(svg: string, alt: string, index: number): string {
  const id = `drawing-${index + 1}`;
  const title = html`<title id="${id}">${alt}</title>`.markup;
  return svg.replace('<svg ', `<svg role="img" aria-labelledby="${id}" `).replace('>', `>${title}`);
}

function findings(report: Report): SafeHtml {
  if (report.findings.length === 0) return html`<p>${report.noFinding}</p>`;
  const hasRuns = report.runs.length > 1;
  return html`<section class="scroll" tabindex="0" aria-label="Findings"><table class="findings">
<thead><tr><th scope="col">No.</th><th scope="col">Distance</th><th scope="col">What and where</th><th scope="col">Severity</th><th scope="col">What it means and what to do</th><th scope="col">Words and time</th></tr></thead>
<tbody>${report.findings.map((f) => findingRow(f, hasRuns))}</tbody></table></section>`;
}

function findingRow(f: ReportFinding, hasRuns: boolean): SafeHtml {
  const small = (text: string) => (text === '' ? null : html`<br><span class="small">${text}</span>`);
  return html`<tr><th scope="row">${f.number}</th><td>${f.place}${small(f.plusMinus)}${small(f.counter === '' ? '' : `counter ${f.counter}`)}${small(hasRuns ? `run ${f.run}` : '')}</td><td><strong>${f.what}</strong>${f.where === '' ? null : html`<br>${f.where}`}${f.size === '' ? null : html`<br>${f.size}`}${small(f.part === 'not stated' ? '' : f.part)}</td><td><span class="severity">${severityMark(f.severityRank)}${f.severity}</span>${small(f.action)}</td><td>${f.meaning}<br><strong>${f.next}</strong></td><td>${quote(f.words)} <span class="small">${f.time}</span></td></tr>
`;
}

/** Three bars, filled to the severity; the word stands beside them. */
function severityMark(rank: number): SafeHtml | null {
  if (rank === 0) return null;
  const bars = [0, 1, 2].map(
    (n) =>
      `<rect x="${n * 6 + 0.5}" y="${8.5 - n * 3}" width="4" height="${3 + n * 3}" fill="${n < rank ? '#16191c' : '#fff'}" stroke="#16191c"/>`,
  );
  return new SafeHtml(`<svg width="18" height="12" viewBox="0 0 18 12" aria-hidden="true">${bars.join('')}</svg>`);
}

function quote(words: string): SafeHtml | null {
  return words === '' ? null : html`<blockquote>“${words}”</blockquote>`;
}

function stills(report: Report): SafeHtml {
  return html`<div class="stills">${report.stills.map((still) =>
    still.jpeg === null
      ? html`<figure><figcaption>${still.caption} No picture: ${still.why ?? 'none could be taken'}</figcaption></figure>`
      : html`<figure><img src="data:image/jpeg;base64,${still.jpeg}" alt="${`Camera picture. ${still.caption}`}"><figcaption>${still.caption}</figcaption></figure>`,
  )}</div>`;
}

function notInspected(report: Report): SafeHtml {
  if (report.notInspected.length === 0)
    return html`<p>Between where the camera went in and where it ended, nothing is on record as left out. Whatever is not named under “The line” was not inspected.</p>`;
  return html`<ul>${report.notInspected.map(({ what, why }) => html`<li><strong>${what}.</strong> ${why}</li>`)}</ul><p>Whatever is not named under “The line” was not inspected either.</p>`;
}

function cautions(report: Report): SafeHtml {
  return html`${report.cautions.map(
    (caution) =>
      html`<div class="caution"><h3>${caution.title}</h3><p>${caution.text}</p><p class="small">Source: ${caution.source}.</p></div>`,
  )}`;
}

function rules(report: Report): SafeHtml {
  const { sentences: intro, own, used } = report.rules;
  return html`${intro.map((text) => html`<p>${text}</p>`)}${own.length === 0 ? null : html`<ul>${own.map((text) => html`<li>${text}</li>`)}</ul>`}${
    used.length === 0
      ? null
      : html`<section class="scroll" tabindex="0" aria-label="Rules used"><table><thead><tr><th scope="col">No.</th><th scope="col">Rule</th><th scope="col">Gives</th><th scope="col">Why</th><th scope="col">Source</th></tr></thead><tbody>${used.map(
          (rule) =>
            html`<tr><td>${rule.numbers}</td><th scope="row">${rule.limit}</th><td>${rule.gives}</td><td>${rule.why}</td><td>${rule.source}</td></tr>`,
        )}</tbody></table></section>`
  }`;
}

function computations(report: Report): SafeHtml {
  const groups = [
    ...report.runs.map((run) => ({ title: run.title, sums: run.computations })),
    ...report.findings.map((f) => ({ title: `No. ${f.number}, ${f.what}, ${f.place}`, sums: f.computations })),
  ].filter((group) => group.sums.length > 0);
  if (groups.length === 0) return html`<p>Nothing had to be worked out.</p>`;
  return html`${groups.map(
    (group) =>
      html`<h3>${group.title}</h3><ul>${group.sums.map(
        (sum) =>
          html`<li><strong>${sum.name}:</strong> ${sum.result}. <span class="small">From ${sum.inputs}${sum.note === '' ? '' : ` ${sum.note}`}</span></li>`,
      )}</ul>`,
  )}`;
}
