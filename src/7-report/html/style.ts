/** The look of the HTML report, on screen and printed. Meaning never hangs on colour. */
import { fontBytes } from '../fonts.ts';

const faces = [
  { name: 'regular', weight: 400, style: 'normal' },
  { name: 'bold', weight: 700, style: 'normal' },
  { name: 'italic', weight: 400, style: 'italic' },
] as const;

/** @param draftNotice said at the top of every printed page, and on screen by the page itself */
export function styleSheet(draftNotice: string | null): string {
  const fontFaces = faces.map(
    ({ name, weight, style }) =>
      `@font-face{font-family:'Atkinson Hyperlegible';font-weight:${weight};font-style:${style};src:url(data:font/ttf;base64,${fontBytes(name).toString('base64')}) format('truetype')}`,
  );
  // A margin box repeats on every sheet, where a fixed element does not.
  const everySheet =
    draftNotice === null
      ? ''
      : `@page{@top-center{content:${JSON.stringify(draftNotice)};font:700 9pt 'Atkinson Hyperlegible','DejaVu Sans',sans-serif}}`;
  return `${fontFaces.join('')}${rules}${everySheet}`;
}

const rules = `
:root{color-scheme:light}
*{box-sizing:border-box}
body{margin:0;overflow-wrap:break-word;color:#16191c;background:#fff;font:16px/1.5 'Atkinson Hyperlegible','DejaVu Sans',sans-serif}
main,header,footer{max-width:62rem;margin:0 auto;padding:0 1.5rem}
header{padding-top:2.5rem}
h1{overflow-wrap:anywhere;font-size:2.4rem;line-height:1.15;margin:0}
header p{margin:.2rem 0 0;font-size:1.05rem}
h2{font-size:1.35rem;margin:2.8rem 0 .8rem;padding-top:.7rem;border-top:3px solid #16191c;break-after:avoid}
h3{font-size:1.08rem;margin:1.6rem 0 .4rem;break-after:avoid}
h4{font-size:1rem;margin:1rem 0 .2rem;break-after:avoid}
p{margin:.4rem 0;max-width:46rem}
ul{margin:.3rem 0;padding-left:1.2rem}
li{margin:.25rem 0;max-width:46rem}
.short p{font-size:1.25rem;line-height:1.45;margin:.6rem 0}
.draft{position:sticky;top:0;z-index:1;margin:0;max-width:none;padding:.45rem 1.5rem;background:#16191c;color:#fff;font-weight:700;text-align:center}
.steps{display:grid;grid-template-columns:9rem 1fr;border-bottom:1px solid #9aa1a8;padding:.7rem 0}
.steps:first-of-type{border-top:1px solid #9aa1a8}
.steps h3{margin:0}
.steps h4{margin:0 0 .15rem;font-size:.95rem;color:#3c444b}
.steps .trade+.trade{margin-top:.8rem}
.steps li{margin:.1rem 0 .45rem}
.where{display:block;font-size:.93rem;color:#3c444b}
dl{display:grid;grid-template-columns:minmax(9rem,13rem) 1fr;margin:0;border-top:1px solid #c9ced3}
dt,dd{margin:0;padding:.3rem 0;border-bottom:1px solid #c9ced3}
dt{color:#3c444b;padding-right:1rem}
dd{overflow-wrap:anywhere}
.scroll{overflow-x:auto}
table{border-collapse:collapse;width:100%;font-size:.93rem;line-height:1.4}
th,td{text-align:left;vertical-align:top;padding:.5rem .7rem .5rem 0;border-bottom:1px solid #c9ced3}
thead th{border-bottom:2px solid #16191c;vertical-align:bottom;font-weight:700}
tbody th{font-weight:700}
tr{break-inside:avoid}
.findings{min-width:54rem}
.findings td:first-of-type{white-space:nowrap}
.small{font-size:.87rem;color:#3c444b}
.severity{font-weight:700;white-space:nowrap}
.severity svg{vertical-align:-1px;margin-right:.35rem}
blockquote{margin:0;padding:0;font-style:italic;overflow-wrap:anywhere}
figure{margin:1.2rem 0;break-inside:avoid}
figure svg{display:block;width:100%;min-width:38rem;max-width:44rem;height:auto}
figcaption{font-weight:700;margin-bottom:.4rem}
.stills{display:grid;grid-template-columns:repeat(auto-fill,minmax(17rem,1fr));gap:1.2rem}
.stills figure{margin:0}
.stills img{width:100%;height:auto;display:block;border:1px solid #16191c}
.stills figcaption{font-weight:400;margin:.3rem 0 0}
.caution{border-left:6px solid #16191c;padding:.1rem 0 .1rem .9rem;margin:.9rem 0;break-inside:avoid}
.caution h3{margin:0}
.signature p{overflow-wrap:anywhere}
footer{margin-top:3rem;padding-bottom:3rem;font-size:.87rem;color:#3c444b}
@media (max-width:40rem){.steps{grid-template-columns:1fr}.steps h3{margin-bottom:.4rem}dl{grid-template-columns:1fr}dt{border-bottom:0;padding-bottom:0}.short p{font-size:1.12rem}h1{font-size:1.8rem}}
@page{margin:17mm 14mm 15mm}
@media print{body{font-size:10.5pt}main,header,footer{max-width:none;padding:0}header{padding-top:0}.draft{position:static;padding:0 0 3mm;background:#fff;color:#16191c}.short p{font-size:13pt}.scroll{overflow:visible}.findings{min-width:0;font-size:8.5pt}figure svg{min-width:0;max-width:100%}h2{margin-top:1.6rem}}
`;
