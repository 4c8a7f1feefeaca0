/**
 * The PDF's Typst source. Everything that was said or typed comes in as JSON through `sys.inputs`, never as source,
 * so markup in it is printed as it stands. Drawings come in as SVG text, pictures as files of the compiler's own.
 */
export const template = `
#let d = json(bytes(sys.inputs.data))
#let ink = rgb("#16191c")
#let soft = rgb("#3c444b")
#let hair = rgb("#b4bac0")
#let paper = if d.units == "meters" { "a4" } else { "us-letter" }

#set document(title: d.title + ", " + d.address, date: none)
#set text(font: ("Atkinson Hyperlegible", "DejaVu Sans"), fallback: false, lang: "en", size: 10pt, fill: ink, hyphenate: false)
#set par(leading: 0.58em, spacing: 0.75em)
#set page(
  paper: paper,
  margin: (x: 0.75in, top: 0.85in, bottom: 0.8in),
  header: if d.draftNotice != none {
    align(center, box(stroke: 1pt + ink, inset: (x: 10pt, y: 4pt), text(size: 9pt, weight: "bold", d.draftNotice)))
  } else { none },
  footer: context {
    set text(size: 8.5pt, fill: soft)
    grid(columns: (1fr, auto), d.address + ", " + lower(d.title), [Page #counter(page).display() of #counter(page).final().first()])
  },
)

#show heading.where(level: 1): it => block(above: 0pt, below: 11pt, text(size: 26pt, weight: "bold", it.body))
#show heading.where(level: 2): it => block(above: 22pt, below: 9pt, width: 100%, sticky: true, stroke: (top: 2pt + ink), inset: (top: 7pt), text(size: 14pt, weight: "bold", it.body))
#show heading.where(level: 3): it => block(above: 13pt, below: 6pt, sticky: true, text(size: 11pt, weight: "bold", it.body))
#set list(indent: 2pt, body-indent: 6pt, spacing: 0.7em)
#set table(stroke: none, inset: (left: 0pt, right: 8pt, y: 5pt), align: left + top)
#set terms(separator: [: ])

// A word too long for its place (a sum, an address without spaces) may break anywhere.
#show regex("[^\\s\u{200b}]{24,}"): it => it.text.codepoints().join(sym.zws)

// A number stays with its unit.
#show regex("\\d+(\\.\\d+)? (ft \\d+ in|ft|in|mm|m|gal|L|%)\\b"): it => box(it)

#let small(body) = text(size: 8.5pt, fill: soft, body)
#let lines(..parts) = parts.pos().filter(p => p != none and p != "").join(linebreak())
#let whole(body) = block(breakable: false, body)
#let ruled(columns, header, rows) = table(
  columns: columns,
  table.hline(stroke: 1.2pt + ink),
  table.header(..header.map(h => text(weight: "bold", h))),
  table.hline(stroke: 0.8pt + ink),
  ..rows.map(cells => (..cells, table.hline(stroke: 0.4pt + hair))).flatten(),
)
#let facts(entries) = ruled((1.75in, 1fr), ([Item], [Stated]), entries.map(e => (text(fill: soft, e.label), e.value)))
#let bars(rank) = if rank == 0 { none } else {
  box(height: 7pt, baseline: 0pt, pdf.artifact(stack(dir: ltr, spacing: 1.4pt, ..range(3).map(n => align(bottom, rect(
    width: 3pt, height: 2.4pt + n * 2.2pt, stroke: 0.6pt + ink, fill: if n < rank { ink } else { white },
  ))))))
  h(4pt)
}
#let said(words, time) = {
  if words != "" { emph("“" + words + "”"); " " }
  small(time)
}

= #d.address
#text(size: 11pt, d.title)

== In short
#for s in d.short { block(above: 13pt, below: 13pt, text(size: 13pt, s)) }

#if d.openItems.len() > 0 [
  == Not settled yet
  These were heard and nobody has settled them. They are not graded and not counted.
  #ruled((1.6fr, 1.4fr, 2fr), ([What], [Why it is open], [Words and time]), d.openItems.map(o => (strong(o.what), o.why, said(o.words, o.time))))
]

== What to do next
#if d.next.len() == 0 [Nothing that was seen asks for a next step.]
#for group in d.next {
  [=== #group.title]
  for trade in group.trades {
    block(above: 9pt, below: 5pt, sticky: true, text(fill: soft, weight: "bold", trade.title))
    for s in trade.steps { whole(list(lines(s.step, small(s.where.join("; "))))) }
  }
}

== The inspection
#facts(d.facts)

== The line
#if d.runs.len() == 0 { par(d.noFinding) }
#for r in d.runs {
  [=== #r.title]
  for s in r.sentences { par(s) }
}
#for g in d.drawings {
  // A drawing may take a page of its own; the tables that follow fill the page before it.
  figure(placement: auto, outlined: false, {
    block(below: 6pt, width: 100%, align(left, strong(g.title)))
    image(bytes(g.svg), format: "svg", width: g.widthPoints * 1pt, alt: g.alt)
  })
}
#for r in d.runs {
  if r.fittings.len() > 0 {
    [=== What the camera passed in run #r.number]
    ruled((1.2fr, 1.4fr, 2fr, auto), ([Distance], [What], [Details], [Time]), r.fittings.map(f => (f.place, strong(f.what), f.details, f.time)))
  }
}

#place.flush()

== Findings
#if d.findings.len() == 0 { par(d.noFinding) } else {
  set text(size: 8.8pt)
  ruled(
    (auto, 1in, 1.25in, 0.95in, 1.75fr, 1.35fr),
    ([No.], [Distance], [What and where], [Severity], [What it means and what to do], [Words and time]),
    d.findings.map(f => (
      strong(str(f.number)),
      lines(f.place, small(f.plusMinus), if f.counter == "" { none } else { small("counter " + f.counter) }, if d.runs.len() > 1 { small("run " + str(f.run)) } else { none }),
      lines(strong(f.what), f.where, f.size, if f.part == "not stated" { none } else { small(f.part) }),
      lines({ bars(f.severityRank); strong(f.severity) }, small(f.action)),
      if f.meaning.len() + f.next.len() > 900 { f.meaning + " " + f.next } else { whole(lines(f.meaning, strong(f.next))) },
      if f.words.len() > 900 { said(f.words, f.time) } else { whole(said(f.words, f.time)) },
    )),
  )
}

#if d.stills.len() > 0 [
  == Pictures
  #grid(columns: (1fr, 1fr), column-gutter: 14pt, row-gutter: 14pt, ..d.stills.map(s => whole({
    if s.file != none { image(s.file, width: 100%, alt: "Camera picture. " + s.caption) }
    block(above: 4pt, small(s.caption + if s.file == none { " No picture: " + s.why } else { "" }))
  })))
]

== Looked for and not seen
#if d.notSeen.len() == 0 [Nothing is on record as looked for and not seen.] else { list(..d.notSeen) }

== Not inspected, and why
#if d.notInspected.len() == 0 [
  Between where the camera went in and where it ended, nothing is on record as left out. Whatever is not named under “The line” was not inspected.
] else {
  list(..d.notInspected.map(n => [*#n.what.* #n.why]))
  [Whatever is not named under “The line” was not inspected either.]
}

== Limits
#list(..d.limits)

== Cautions
#for c in d.cautions {
  whole(block(stroke: (left: 3pt + ink), inset: (left: 9pt, y: 2pt), above: 10pt, {
    [=== #c.title]
    c.text
    linebreak()
    small("Source: " + c.source + ".")
  }))
}

== Who owns what
#list(..d.ownership)

== Signature
#for s in d.signature { par(s) }

== How it was graded
#for s in d.rules.sentences { par(s) }
#if d.rules.own.len() > 0 { list(..d.rules.own) }
#if d.rules.used.len() > 0 {
  set text(size: 8.8pt)
  ruled((auto, 1.5fr, 1fr, 1.6fr, 1.4fr), ([No.], [Rule], [Gives], [Why], [Source]), d.rules.used.map(r => (r.numbers, strong(r.limit), r.gives, r.why, r.source)))
}

== How the numbers were worked out
#let sums = (
  ..d.runs.map(r => (title: r.title, sums: r.computations)),
  ..d.findings.map(f => (title: "No. " + str(f.number) + ", " + f.what + ", " + f.place, sums: f.computations)),
).filter(g => g.sums.len() > 0)
#if sums.len() == 0 [Nothing had to be worked out.]
#for g in sums {
  [=== #g.title]
  set text(size: 9pt)
  list(..g.sums.map(s => { [*#s.name:* #s.result. ]; small("From " + s.inputs + if s.note == "" { "" } else { " " + s.note }) }))
}

== Words of the trade
#if d.glossary.len() == 0 [No word of the trade occurs.] else {
  for g in d.glossary { whole([*#g.word*: #g.meaning]) }
}
`;
