# SPDX-License-Identifier: LGPL-2.1-or-later
"""The style sheet of the HTML report: our own plain look, for paper first and for a phone as well."""

from __future__ import annotations

import re

from louverwright.report.drawing import INK, SOFT_INK
from louverwright.report.page import Report

RULE, TINT, LINK = "#8a8a8a", "#efeeeb", "#1f3f66"

_PAGE = """
@page {
  size: %(paper)s portrait;
  margin: 17mm 14mm 17mm 16mm;
  @bottom-left { content: %(footer)s; %(small)s width: 75%%; text-align: left; }
  @bottom-right { content: %(label)s; %(small)s white-space: nowrap; }
  @top-left { content: %(title)s; %(small)s width: 50%%; text-align: left; }
  @top-right { content: %(subtitle)s; %(small)s width: 50%%; text-align: right; }
}
@page :first { @top-left { content: none; } @top-right { content: none; } }
"""

_SCREEN = """
:root { --ink: %(ink)s; --soft: %(soft)s; --rule: %(rule)s; --tint: %(tint)s; --large: 1; }
:root.large { --large: 1.45; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%%; text-size-adjust: 100%%; }
body { margin: 0 auto; padding: 6mm 4mm; max-width: 190mm; color: var(--ink); background: #ffffff;
  font: calc(9pt * var(--large))/1.35 "DejaVu Sans", Verdana, "Segoe UI", Roboto, Arial, sans-serif;
  font-variant-numeric: tabular-nums; font-variant-ligatures: none; overflow-wrap: break-word; }
p, li, dd, dt, td, th, caption, figcaption, h1, h2, h3, h4, footer { white-space: pre-line; }
h1, h2, h3, h4 { line-height: 1.2; break-after: avoid; font-weight: bold; }
h1 { font-size: calc(17pt * var(--large)); margin: 0; }
.level-1 { font-size: calc(13.5pt * var(--large)); margin: 7mm 0 2.5mm; padding-bottom: 1mm;
  border-bottom: 0.4mm solid var(--ink); }
.level-2 { font-size: calc(10.5pt * var(--large)); margin: 5mm 0 1.5mm; }
.level-3 { font-size: calc(9pt * var(--large)); margin: 3.5mm 0 1mm; }
p { margin: 0 0 2mm; max-width: 150mm; orphans: 2; widows: 2; }
ul { margin: 0 0 2.5mm; padding-left: 4.5mm; max-width: 150mm; }
li { margin-bottom: 0.6mm; break-inside: avoid; }
.small, .note { font-size: calc(7.5pt * var(--large)); color: var(--soft); }
.caution { border: 0.25mm solid var(--ink); border-left-width: 1.4mm; background: var(--tint);
  padding: 1.6mm 2.6mm; margin: 1mm 0 3mm; max-width: none; break-inside: avoid; }
a { color: %(link)s; }
dl { margin: 0; }
dt { color: var(--soft); font-size: calc(7.5pt * var(--large)); }
dd { margin: 0; min-width: 0; overflow-wrap: anywhere; }
.title-block { display: flex; flex-wrap: wrap; border: 2px solid var(--ink); margin-bottom: 6mm;
  break-inside: avoid; }
.names { flex: 5 1 60mm; padding: 3mm 4mm; }
.subtitle { margin: 1.5mm 0 0; font-size: calc(10pt * var(--large)); color: var(--soft); }
.facts { flex: 6 1 70mm; display: grid; grid-template-columns: 1fr 1fr; gap: 1px;
  background: var(--rule); border-left: 1px solid var(--rule); }
.facts div { background: #ffffff; padding: 1mm 2mm; min-width: 0; }
.facts div:last-child:nth-child(odd) { grid-column: 1 / -1; }
.pairs { display: grid; grid-auto-flow: column; grid-template-rows: repeat(var(--lines), auto);
  column-gap: 6mm; margin-bottom: 3mm; }
.columns-1 { grid-template-columns: 1fr; }
.columns-2 { grid-template-columns: 1fr 1fr; }
.columns-3 { grid-template-columns: 1fr 1fr 1fr; }
.columns-4 { grid-template-columns: 1fr 1fr 1fr 1fr; }
.pairs div { display: grid; grid-template-columns: min(42%%, var(--label) * 0.56em) minmax(0, 1fr);
  column-gap: 2.5mm; align-items: baseline;
  border-bottom: 0.18mm solid var(--rule); padding: 0.6mm 0; break-inside: avoid; min-width: 0; }
.small-print dd { font-size: calc(8pt * var(--large)); }
.table { margin: 1mm 0 4mm; overflow-x: auto; }
table { width: 100%%; border-collapse: collapse; font-size: calc(8pt * var(--large)); line-height: 1.25; }
table.wide { font-size: calc(7pt * var(--large)); }
caption { text-align: left; font-weight: bold; padding-bottom: 1mm; break-after: avoid; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { text-align: left; vertical-align: top; padding: 0.7mm 1.5mm; }
tbody th { font-weight: normal; }
thead th { vertical-align: bottom; background: var(--tint); border-top: 0.35mm solid var(--ink);
  border-bottom: 0.35mm solid var(--ink); }
tbody tr { border-bottom: 0.18mm solid var(--rule); }
tbody tr:last-child { border-bottom: 0.35mm solid var(--ink); }
.long { overflow-wrap: anywhere; }
.right { text-align: right; }
.centre { text-align: center; }
.note { margin: 1mm 0 0; break-before: avoid; }
figure { margin: 1mm 0 4mm; break-inside: avoid; }
figure svg { display: block; max-width: 100%%; height: auto; font-family: inherit; }
figcaption { font-size: calc(7.5pt * var(--large)); color: var(--soft); margin-top: 1mm; }
.row { display: flex; flex-wrap: nowrap; gap: 6mm; break-inside: avoid; }
.row > div { min-width: 0; }
.together { break-inside: avoid; }
footer { margin-top: 6mm; padding-top: 1mm; border-top: 0.18mm solid var(--rule); font-size: calc(7.5pt * var(--large));
  color: var(--soft); }
[hidden] { display: none !important; }
:focus-visible { outline: 0.8mm solid %(link)s; outline-offset: 0.4mm; }
button, select, input { font: inherit; color: inherit; }
button, select { min-width: 11mm; min-height: 11mm; border: 0.3mm solid var(--soft); border-radius: 1.5mm; background: #ffffff;
  padding: 0 2.5mm; }
input[type="checkbox"] { width: 6mm; height: 6mm; margin: 0; vertical-align: middle; }
.unseen { position: absolute; width: 1px; height: 1px; margin: 0; overflow: hidden; clip-path: inset(50%%); }
.shop { border: 0.4mm solid var(--ink); background: var(--tint); font-size: calc(10pt * var(--large)); }
.shop summary { padding: 2.5mm 3mm; cursor: pointer; }
.shop summary .choice { margin-left: 2mm; }
.shop .note { padding: 0 3mm 2mm; max-width: none; }
.controls { display: flex; flex-wrap: wrap; gap: 2mm 5mm; padding: 1mm 3mm 2mm; align-items: center; }
.controls label { display: inline-flex; flex-wrap: wrap; align-items: center; gap: 2mm; min-height: 11mm; min-width: 0; }
.controls select { max-width: 100%%; min-width: 0; }
.tally { display: inline-flex; align-items: center; gap: 1.2mm; font-size: calc(9pt * var(--large)); white-space: nowrap; }
.tally .count { min-width: 5.6em; text-align: center; font-weight: bold; }
.tally .boxes { display: none; }
.together > .tally { margin: 0 0 2mm; }
.boxes { flex-wrap: wrap; gap: 0.6mm; }
.boxes i { width: 2.6mm; height: 2.6mm; border: 0.3mm solid var(--ink); }
.boxes .in { border-width: 1.3mm; }
tr.done { background: var(--tint); }
.partly > .note { display: none; }
@media screen {
  .shop-bar { position: sticky; top: 0; z-index: 1; margin-bottom: 4mm; }
  .shop[open] { max-height: 90vh; overflow: auto; }
  [id] { scroll-margin-top: 16mm; }
  .large figure svg { width: max(100%%, 120mm); max-width: none; }
  .large figure { overflow-x: auto; }
  .large [id] { scroll-margin-top: 24mm; }
}
@media screen and (max-width: 640px) {
  body { font-size: calc(11pt * var(--large)); }
  dt, .small, .note, figcaption, footer { font-size: calc(9.5pt * var(--large)); }
  table { font-size: calc(9.5pt * var(--large)); min-width: 120mm; }
  table.wide { font-size: calc(8.5pt * var(--large)); min-width: 190mm; }
  td.right { white-space: pre; }
  .row { display: block; }
  .facts { border-left: none; border-top: 1px solid var(--rule); }
  .pairs { display: block; }
  .small-print dd { font-size: calc(10.5pt * var(--large)); }
  figure { overflow-x: auto; }
  figure svg { max-width: max(100%%, 120mm); }
  table.cards { min-width: 0; font-size: calc(11pt * var(--large)); }
  .cards, .cards caption, .cards tbody, .cards tr { display: block; width: 100%%; }
  .cards thead, .cards colgroup { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%%); }
  .cards tr { display: flex; flex-wrap: wrap; gap: 0 3mm; padding: 1.5mm 0; }
  .cards th, .cards td { padding: 0.5mm 0; text-align: left; white-space: pre-line; }
  .cards tbody th { font-weight: bold; }
  .cards tbody th + td { flex: 1 1 60%%; font-weight: bold; }
  .cards td:nth-child(n+3) { flex: 1 1 100%%; }
  .cards td:nth-child(n+3)[data-label]::before { content: attr(data-label) ": "; color: var(--soft); font-weight: normal; }
  .cards td:empty { display: none; }
}
@media print {
  body { padding: 0; max-width: none; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  .new-page { break-before: page; }
  .new-page > :first-child { margin-top: 0; }
  .table { overflow: visible; }
  figure svg { max-height: %(tallest)s; }
  a { color: inherit; text-decoration: none; }
  .shop-bar { display: none; }
  .begun .shop-bar, .chosen .shop-bar { display: block; margin-bottom: 3mm; }
  .shop summary { list-style: none; padding: 1.5mm 2.6mm; }
  .shop .controls, .shop .note, .tally button { display: none; }
  .tally { flex-wrap: wrap; font-size: calc(7.5pt * var(--large)); }
  .tally .count { min-width: 0; }
  body:not(.begun) .count { display: none; }
  .tally .boxes { display: inline-flex; }
  .together[data-piece] { position: relative; }
  .together > .tally { position: absolute; top: 1mm; right: 0; width: 56mm; margin: 0; justify-content: flex-end; }
  .together > .tally .boxes { justify-content: flex-end; }
  .together[data-piece] > .level-2 { margin-right: 60mm; }
}
"""

_TALLEST = {"A4": "235mm", "Letter": "217mm"}


def style_sheet(paper: str, report: Report) -> str:
    """The rules for a paper ("A4" or "Letter"), with the report's running head and foot."""
    page = _PAGE % {
        "paper": paper, "small": f"font: 7pt \"DejaVu Sans\", Verdana, Arial, sans-serif; color: {SOFT_INK};",
        "footer": css_string(report.footer), "label": page_counter(report.page_label),
        "title": css_string(report.title), "subtitle": css_string(report.subtitle)}
    screen = _SCREEN % {"ink": INK, "soft": SOFT_INK, "rule": RULE, "tint": TINT, "link": LINK,
                        "tallest": _TALLEST[paper]}
    return (page + screen).strip()


def css_string(text: str) -> str:
    """A CSS string that cannot end early nor close the style element: all but plain letters escaped.

    The space after each escape belongs to it; without one the text's own next space would be lost.
    """
    return '"' + re.sub(r"[^A-Za-z0-9 .,:;()+/=-]", lambda match: f"\\{ord(match.group()):x} ", text) + '"'


def page_counter(label: str) -> str:
    """The page label as CSS content, {page} and {pages} becoming counters."""
    counters = {"{page}": "counter(page)", "{pages}": "counter(pages)"}
    parts = [part for part in re.split(r"(\{pages?\})", label) if part]
    return " ".join(counters.get(part) or css_string(part) for part in parts) or '""'
