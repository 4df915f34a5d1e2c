// The one template that prints documents: it places blocks and knows no words. Typst source. It reads nothing but the document's data
// and pictures, all from memory: no clock, no network, no font of the machine.

export const template = String.raw`
#let m = json("document.json")
#let fonts = m.fonts
#let looks = (
  danger: (fill: rgb("#9b2423"), text: white, width: 2pt),
  warning: (fill: rgb("#d05d29"), text: black, width: 1pt),
  caution: (fill: rgb("#f9a800"), text: black, width: 1pt),
  notice: (fill: rgb("#005387"), text: white, width: 1pt),
  "none": (fill: black, text: white, width: 1pt),
)

#let date-of(d) = if d == none { none } else { datetime(year: d.at(0), month: d.at(1), day: d.at(2)) }
#let tag = m.lang.split("-")
#set document(title: m.title + if m.subtitle != "" { ": " + m.subtitle } else { "" }, date: date-of(m.at("date", default: none)))
#set text(font: fonts, size: 10pt, lang: tag.at(0), region: tag.at(1, default: none), fallback: false, hyphenate: false)
#set par(leading: 0.6em, spacing: 0.8em, justify: false)

// A word that is wider than its place breaks between any two of its signs; nothing is added to it.
#let run(r) = {
  let s = if "cut" in r { r.t.clusters().join(h(0.001pt)) } else { r.t }
  let said = if "b" in r { strong(s) } else { s }
  if "l" in r { let tag = r.l.split("-"); text(lang: tag.at(0), region: tag.at(1, default: none), said) } else { said }
}
#let soft(s) = s.split(" ").map(x => if x.clusters().len() > 28 { x.clusters().join(h(0.001pt)) } else { x }).join(" ")
#let w(x) = if type(x) == str { x } else { for r in x { run(r) } }

// Asked once for all pages, not once a page.
#let chapters() = query(heading.where(level: 1)).map(h => (h.location().page(), h.body))
#let margins = (
  book: (inside: 25mm, outside: 18mm, top: 24mm, bottom: 22mm),
  narrow: (x: 12mm, top: 16mm, bottom: 14mm),
  "none": 0mm,
)
// A running head has one line: what is too long for it loses its last words, and says so.
#let plain-of(c) = {
  if type(c) == str { c } else if c.has("text") { c.text } else if c.has("children") { c.children.map(plain-of).join("") } else if c.has("body") { plain-of(c.body) } else if c == [ ] { " " }
}
#let shortened(body, room) = {
  if measure(body).width <= room { return body }
  let words = plain-of(body).split(" ")
  while words.len() > 1 and measure(words.join(" ") + " \u{2026}").width > room { let _ = words.pop() }
  words.join(" ") + " \u{2026}"
}
#let one-line(body, at: left) = layout(size => block(width: 100%, height: 1.2em, clip: true, align(at, shortened(body, size.width))))
#let plain = m.page.margin == "none"
#set page(
  width: m.page.width * 1mm,
  height: m.page.height * 1mm,
  margin: margins.at(m.page.margin),
  background: if m.draftMark != "" and not plain { rotate(-50deg, text(120pt, luma(232), weight: "bold", m.draftMark)) },
  header: if not plain { context {
    let here-page = here().page()
    set text(8pt)
    if here-page > 1 or m.contents == "" {
      let begun = chapters().filter(((page, _)) => page <= here-page)
      grid(
        columns: (1fr, auto, 1fr),
        column-gutter: 8pt,
        one-line(m.title),
        strong(m.draftMark),
        one-line(at: right, if m.contents != "" and begun.len() > 0 { begun.last().last() } else { m.subtitle }),
      )
      v(-0.3em)
      line(length: 100%, stroke: 0.5pt)
    } else { align(center, strong(m.draftMark)) }
  } },
  footer: if not plain { context {
    set text(8pt)
    let total = counter(page).final().first()
    grid(
      columns: (1fr, auto, 1fr),
      strong(m.draftMark), [#counter(page).get().first() / #total], align(right, m.foot),
    )
  } },
)

#set heading(numbering: none)
#show heading.where(level: 1): it => block(above: 1.8em, below: 0.9em, sticky: true, text(16pt, it.body))
#show heading.where(level: 2): it => block(above: 1.4em, below: 0.8em, sticky: true, text(12pt, it.body))
#show heading.where(level: 3): it => block(above: 1.2em, below: 0.7em, sticky: true, text(10.5pt, it.body))
#show title: set text(26pt)
#show title: set par(leading: 0.4em)
#set table(stroke: 0.5pt + luma(110), inset: 5pt)
// A table may go over a page's end; a picture and what stands under it may not part.
#show figure.where(kind: table): set block(breakable: true)
#show figure.where(kind: table): set figure.caption(position: top)
#show figure.where(kind: table): set align(left)
#show figure.caption: it => block(sticky: true, width: 100%, above: 0pt, align(left, text(9pt, weight: "bold", it.body)))
#set figure(numbering: none, gap: 0.5em)
#show figure: set block(above: 1.2em, below: 1.4em)

// Signs are ornaments beside words that say the same.
#let alert-sign = pdf.artifact(box(baseline: 15%, width: 1.25em, height: 1.1em, {
  place(polygon(fill: black, (50%, 0%), (100%, 100%), (0%, 100%)))
  place(dx: 44%, dy: 32%, rect(width: 12%, height: 36%, fill: white))
  place(dx: 44%, dy: 76%, rect(width: 12%, height: 12%, fill: white))
}))
#let tick-box = pdf.artifact(box(width: 0.95em, height: 0.95em, baseline: 12%, stroke: 0.8pt))
#let write-line(width) = box(width: width, height: 1.35em, baseline: 10%, stroke: (bottom: 0.6pt))

#let panel(b) = {
  let look = looks.at(b.signal)
  let dash = if b.signal == "notice" { "dashed" } else { "solid" }
  block(width: 100%, breakable: b.high, sticky: b.keep and not b.high, stroke: (paint: black, thickness: look.width, dash: dash), above: 1em, below: 1em, {
    block(width: 100%, fill: look.fill, inset: (x: 8pt, y: 5pt), above: 0pt, below: 0pt, sticky: true, par(text(look.text, weight: "bold", {
      if b.hurts { box(fill: white, inset: 1.5pt, radius: 1pt, alert-sign); h(6pt) }
      if b.signal == "notice" { emph(b.word) } else { b.word }
    })))
    block(width: 100%, inset: 8pt, above: 0pt, below: 0pt, {
      let said = {
        if b.title.len() > 0 { par(strong(w(b.title))) }
        for l in b.lines { par(w(l)) }
        if "precautions" in b {
          par(strong(b.precautions.head))
          enum(numbering: "1.", ..b.precautions.items.map(i => w(i)))
        }
      }
      if "sign" in b {
        grid(columns: (19mm, 1fr), column-gutter: 3mm,
          pdf.artifact(align(center, { image(bytes(b.sign.svg), format: "svg", width: 16mm); v(-0.7em); text(7pt, b.sign.under) })),
          said)
      } else { said }
    })
  })
}

#let blank(f) = {
  if "choices" in f { w(f.label); h(0.8em); f.choices.map(c => { tick-box; [ ]; c }).join(h(1.2em)) }
  else if f.width == 0 { w(f.label) }
  else { w(f.label); m.colon; [ ]; write-line(f.width * 1mm); if f.after != "" { [ ]; f.after } }
}
// Small ones stand beside one another; what is told or signed has a line of its own.
#let blanks(rows) = {
  let open = ()
  for f in rows {
    if f.width > 0 and f.width < 24 { open.push(box(blank(f))) } else {
      if open.len() > 0 { par(open.join(h(1.2em))); open = () }
      par(blank(f))
    }
  }
  if open.len() > 0 { par(open.join(h(1.2em))) }
}

#let drawing(b) = {
  let pic = figure(image(bytes(b.svg), format: "svg", width: b.width * 1pt, alt: b.alt), alt: b.alt)
  if b.title.len() > 0 { block(breakable: false, above: 1.6em, { heading(level: 2, outlined: false, bookmarked: true, w(b.title)); pic }) } else { pic }
}

// The numbers stand outside the picture, each with a line to its thing.
#let picture(b) = {
  let wide = if b.points.len() > 0 { 110mm } else { 120mm }
  let pic = context {
    let bare = image(b.file, width: wide)
    let height = calc.min(measure(bare).height, 95mm)
    let fitted = measure(image(b.file, height: height)).width
    let width = calc.min(fitted, wide)
    let side = 12mm
    box(width: width + 2 * side, height: height, {
      place(dx: side, image(b.file, width: width, height: height, fit: "contain", alt: b.alt))
      let on-the-left = b.points.enumerate().filter(((i, p)) => p.across < 0.5).sorted(key: ((i, p)) => p.down)
      let on-the-right = b.points.enumerate().filter(((i, p)) => p.across >= 0.5).sorted(key: ((i, p)) => p.down)
      for (points, on-left) in ((on-the-left, true), (on-the-right, false)) {
        for (k, (i, p)) in points.enumerate() {
          let y = height * (k + 0.5) / points.len()
          let x = if on-left { side - 2mm } else { width + side + 2mm }
          let tx = side + width * p.across
          let ty = height * p.down
          place(pdf.artifact(line(start: (x, y), end: (tx, ty), stroke: 2.2pt + white)))
          place(pdf.artifact(line(start: (x, y), end: (tx, ty), stroke: 0.9pt + black)))
          place(dx: tx - 1.2pt, dy: ty - 1.2pt, pdf.artifact(circle(radius: 1.2pt, fill: black, stroke: 0.5pt + white)))
          place(dx: if on-left { 0mm } else { width + side + 2mm }, dy: y - 5pt,
            pdf.artifact(box(width: side - 2.5mm, align(if on-left { right } else { left }, text(10pt, weight: "bold", p.mark)))))
        }
      }
    })
  }
  figure(kind: image, supplement: none, pic, alt: b.alt, caption: w(b.caption))
}

// A short fact goes whole to the next line.
#let beside(s) = if type(s) == str and s.len() < 40 { box(s) } else { w(s) }
#let action(r) = block(width: 100%, breakable: r.high, {
  par([#w(r.says)#metadata(none)#label(r.id)])
  if r.side.len() > 0 { par(r.side.map(beside).join(h(1.4em))) }
  for u in r.under { par(text(9.5pt, w(u))) }
  blanks(r.blanks)
  if "drawing" in r { drawing(r.drawing) }
})
#let actions(b) = enum(
  numbering: n => { tick-box; h(5pt); strong(b.rows.at(n - 1).number) },
  number-align: start + top, body-indent: 7pt, spacing: 1.15em,
  ..b.rows.map(action),
)

// Rows that a page's end may not part, the first two and the last two, hang on a cell of no width that spans both.
#let listing(b) = {
  // What is signed has the height that a hand needs.
  let row-of(r) = r.map(c => if c.len() == 0 { v(0.9em) } else if type(c) == str and c.starts-with("____") { v(1.7em) } else { w(c) })
  let count = b.rows.len()
  let ties = not b.whole and not b.high and count > 3
  let tie = table.cell(rowspan: 2, breakable: false, inset: 0pt, stroke: none)[]
  let wide(cells) = (..cells.slice(0, -1), table.cell(colspan: 2, cells.last()))
  let body = {
    set text(b.size * 1pt)
    set table.cell(breakable: b.high)
    let heads = b.heads.map(h => strong(w(h)))
    table(
      columns: b.widths.map(x => x * 1fr) + if ties { (0pt,) },
      align: b.aligns.map(a => if a == "right" { right } else { left }),
      table.header(..if ties { wide(heads) } else { heads }),
      ..b.rows.enumerate().map(((i, r)) => {
        let cells = row-of(r)
        if not ties { cells } else if i == 0 or i == count - 2 { (..cells, tie) } else if i == 1 or i == count - 1 { cells } else { wide(cells) }
      }).flatten(),
    )
  }
  if b.caption.len() == 0 { block(above: 1em, below: 1.4em, breakable: not b.whole, body) } else { show figure: set block(breakable: not b.whole); figure(kind: table, supplement: none, caption: w(b.caption), body) }
}

// Down a page's first column, then its second: a name is looked up page by page.
#let index-of(b) = columns(2, gutter: 8mm, for r in b.rows {
  set text(9pt)
  set par(spacing: 0.6em)
  par(hanging-indent: 1em, {
    w(r.name); h(0.6em)
    r.lines.map(l => link(label(l.id), l.line)).join(", ")
  })
})

#let places(b) = grid(
  columns: (1fr,) * 4, gutter: 3mm, inset: 6pt,
  ..b.boxes.map(p => grid.cell(breakable: false, stroke: 1.2pt, {
    par({ text(18pt, strong(p.number)); h(6pt); strong(w(p.name)) })
    for f in p.facts { par(text(8.5pt, w(f))) }
    v(8mm)
  })),
)

#let labels(b) = {
  let per = b.columns * b.rows
  for (i, l) in b.labels.enumerate() {
    let on = calc.rem(i, per)
    if i > 0 and on == 0 { pagebreak() }
    let col = calc.rem(on, b.columns)
    let row = calc.quo(on, b.columns)
    place(top + left, dx: (b.left + col * (b.width + b.gapX)) * 1mm, dy: (b.top + row * (b.height + b.gapY)) * 1mm,
      block(width: b.width * 1mm, height: b.height * 1mm, inset: 2.5mm, clip: true, {
        set text(7.6pt)
        set par(leading: 0.35em, spacing: 0.45em)
        block(below: 0.5em, width: 100%, { text(11pt, strong(w(l.head))); h(1fr); strong(l.mark) })
        for x in l.lines { par(w(x)) }
      }))
  }
}

#let item(b) = {
  if b.is == "heading" {
    if b.page { pagebreak(weak: true) }
    let head = heading(level: b.level, outlined: b.listed, bookmarked: true, w(b.says))
    if "code" in b {
      block(sticky: true, breakable: false, above: 1em, below: 0.8em, grid(columns: (1fr, 22mm), column-gutter: 4mm, align: horizon,
        head, figure(image(bytes(b.code.svg), format: "svg", width: 22mm, alt: b.code.alt), alt: b.code.alt)))
    } else { head }
  }
  else if b.is == "par" {
    let look = b.at("look", default: "plain")
    if look == "frame" { block(width: 100%, stroke: 2pt, inset: 8pt, par(w(b.says))) }
    // What the record says, and a caution, stand with what they are about.
    else if look == "bar" { block(width: 100%, sticky: true, stroke: (left: 4pt), inset: (left: 9pt, y: 4pt), par(w(b.says))) }
    else if look == "note" { block(width: 100%, stroke: (left: 1.5pt + luma(90)), inset: (left: 8pt, y: 3pt), par(w(b.says))) }
    else if look == "lead" { block(sticky: true, par(w(b.says))) }
    else { par(w(b.says)) }
  }
  else if b.is == "list" { block(breakable: b.items.len() > 6, list(..b.items.map(i => w(i)))) }
  else if b.is == "facts" { terms(hanging-indent: 0pt, separator: m.colon + [ ], ..b.rows.map(((l, v)) => terms.item(w(l), w(v)))) }
  else if b.is == "table" { listing(b) }
  else if b.is == "panel" { panel(b) }
  else if b.is == "picture" { picture(b) }
  else if b.is == "drawing" { drawing(b) }
  else if b.is == "actions" { actions(b) }
  else if b.is == "blanks" { for f in b.rows { par(blank(f)) } }
  else if b.is == "index" { index-of(b) }
  else if b.is == "places" { places(b) }
  else if b.is == "lying" { page(flipped: true, for x in b.blocks { item(x) }) }
  else if b.is == "labels" { labels(b) }
}

#if not plain {
  title(soft(m.title))
  if m.subtitle != "" { par(text(14pt, soft(m.subtitle))) }
}
#for b in m.front { item(b) }
#if m.contents != "" {
  show outline.entry.where(level: 1): set block(above: 0.9em)
  show outline.entry.where(level: 1): set text(weight: "bold")
  // Before any heading is known their lines hold the room, so that the next pass finds all pages at their places.
  context if query(heading).len() > 0 { outline(title: m.contents, depth: 2) } else {
    block(below: 0.9em, text(16pt, m.contents))
    for b in m.blocks.filter(b => b.is == "heading" and b.listed) {
      block(above: if b.level == 1 { 0.9em } else { 0.65em }, below: 0.65em, par(w(b.says)))
    }
  }
}
#for b in m.blocks { item(b) }
`;
