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
:root { --ink: %(ink)s; --soft: %(soft)s; --rule: %(rule)s; --tint: %(tint)s; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%%; text-size-adjust: 100%%; }
body { margin: 0 auto; padding: 6mm 4mm; max-width: 190mm; color: var(--ink); background: #ffffff;
  font: 9pt/1.35 "DejaVu Sans", Verdana, "Segoe UI", Roboto, Arial, sans-serif;
  font-variant-numeric: tabular-nums; font-variant-ligatures: none; overflow-wrap: break-word; }
p, li, dd, dt, td, th, caption, figcaption, h1, h2, h3, h4, footer { white-space: pre-line; }
h1, h2, h3, h4 { line-height: 1.2; break-after: avoid; font-weight: bold; }
h1 { font-size: 17pt; margin: 0; }
.level-1 { font-size: 13.5pt; margin: 7mm 0 2.5mm; padding-bottom: 1mm;
  border-bottom: 0.4mm solid var(--ink); }
.level-2 { font-size: 10.5pt; margin: 5mm 0 1.5mm; }
.level-3 { font-size: 9pt; margin: 3.5mm 0 1mm; }
p { margin: 0 0 2mm; max-width: 150mm; orphans: 2; widows: 2; }
ul { margin: 0 0 2.5mm; padding-left: 4.5mm; max-width: 150mm; }
li { margin-bottom: 0.6mm; break-inside: avoid; }
.small, .note { font-size: 7.5pt; color: var(--soft); }
.caution { border: 0.25mm solid var(--ink); border-left-width: 1.4mm; background: var(--tint);
  padding: 1.6mm 2.6mm; margin: 1mm 0 3mm; max-width: none; break-inside: avoid; }
a { color: %(link)s; }
dl { margin: 0; }
dt { color: var(--soft); font-size: 7.5pt; }
dd { margin: 0; min-width: 0; overflow-wrap: anywhere; }
.title-block { display: flex; flex-wrap: wrap; border: 2px solid var(--ink); margin-bottom: 6mm;
  break-inside: avoid; }
.names { flex: 5 1 60mm; padding: 3mm 4mm; }
.subtitle { margin: 1.5mm 0 0; font-size: 10pt; color: var(--soft); }
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
.small-print dd { font-size: 8pt; }
.table { margin: 1mm 0 4mm; overflow-x: auto; }
table { width: 100%%; border-collapse: collapse; font-size: 8pt; line-height: 1.25; }
table.wide { font-size: 7pt; }
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
figcaption { font-size: 7.5pt; color: var(--soft); margin-top: 1mm; }
.row { display: flex; flex-wrap: nowrap; gap: 6mm; break-inside: avoid; }
.row > div { min-width: 0; }
.together { break-inside: avoid; }
footer { margin-top: 6mm; padding-top: 1mm; border-top: 0.18mm solid var(--rule); font-size: 7.5pt;
  color: var(--soft); }
@media screen and (max-width: 640px) {
  body { font-size: 11pt; }
  dt, .small, .note, figcaption, footer { font-size: 9.5pt; }
  table { font-size: 9.5pt; min-width: 120mm; }
  table.wide { font-size: 8.5pt; min-width: 190mm; }
  td.right { white-space: pre; }
  .row { display: block; }
  .facts { border-left: none; border-top: 1px solid var(--rule); }
  .pairs { display: block; }
}
@media print {
  body { padding: 0; max-width: none; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  .new-page { break-before: page; }
  .new-page > :first-child { margin-top: 0; }
  .table { overflow: visible; }
  figure svg { max-height: %(tallest)s; }
  a { color: inherit; text-decoration: none; }
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
