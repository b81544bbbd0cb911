/* Ticking off what is cut, on a phone or tablet in the shop.  Our own; needs no network and no other script.

   The page is whole without it.  Whatever can be counted carries data-piece, a digest of the piece as it is cut (the cut
   list's rows, the parts' blocks).  Counts are kept in the browser under the model's fingerprint and the project, by those
   digests: a vent that has changed begins anew, and can take over what its earlier state had of pieces that are cut alike. */
(function () {
  "use strict";
  const PREFIX = "louverwright cut ", LARGE = "louverwright large print";
  const project = document.body.dataset.project, own = `${PREFIX}${document.body.dataset.model} ${project}`;
  const places = Array.from(document.querySelectorAll("[data-piece]"));
  const kinds = new Map();    // digest → what the page says of it; a mark stands in the list and has a block
  places.forEach(place => kinds.set(place.dataset.piece, place.dataset));
  const total = sum(kinds, kind => Number(kind.pieces));
  let counts = {}, keeps = true;

  function sum(map, value) { return Array.from(map.values()).reduce((so_far, each) => so_far + value(each), 0); }

  function make(tag, attributes, ...inside) {
    const element = document.createElement(tag);
    Object.entries(attributes).forEach(([name, value]) => element.setAttribute(name, value));
    element.append(...inside);
    return element;
  }

  /* ---- what the browser keeps */

  function read(key) {
    try { return JSON.parse(window.localStorage.getItem(key)); } catch (error) { return null; }    // blocked, or not ours
  }

  function write(key, value) {
    try { window.localStorage.setItem(key, JSON.stringify(value)); keeps = true; } catch (error) { keeps = false; }
  }

  function known(record) {    // counts that this page has a use for, none above its number of pieces
    const found = {};
    Object.entries((record && record.cut) || {}).forEach(([piece, count]) => {
      const kind = kinds.get(piece);
      if (kind && count > 0) found[piece] = Math.min(Math.floor(count), Number(kind.pieces));
    });
    return found;
  }

  function earlier() {    // the counts of this project's other states that fit the most pieces of this one
    let best = {};
    try {
      Object.keys(window.localStorage).filter(key => key.startsWith(PREFIX) && key !== own).forEach(key => {
        const record = read(key), found = project && record && record.project === project ? known(record) : {};
        if (cut(found) > cut(best)) best = found;
      });
    } catch (error) { return {}; }    // blocked
    return best;
  }

  function keep() { write(own, {project: project, cut: counts}); }

  /* ---- counting */

  function cut(of) { return Object.values(of).reduce((so_far, each) => so_far + each, 0); }

  function count(kind) { return counts[kind.piece] || 0; }

  function done(kind) { return count(kind) >= Number(kind.pieces); }

  function set(kind, number) {
    counts[kind.piece] = Math.max(0, Math.min(Number(kind.pieces), number));
    keep();
    show();
    status.textContent = `${kind.mark}: ${words(kind)} cut. ${cut(counts)} of ${total} in all.`;
  }

  function words(kind) { return `${count(kind)} of ${kind.pieces}`; }

  function button(text, label, press) {
    const made = make("button", {type: "button", "aria-label": label}, text);
    made.addEventListener("click", press);
    return made;
  }

  function tally(kind) {    // − 3 of 8 + all; on paper a box for each piece
    const whole = make("div", {class: "tally", role: "group", "aria-label": `${kind.mark}, ${kind.name}: pieces cut`});
    whole.append(
      button("−", `${kind.mark}: one less is cut`, () => set(kind, count(kind) - 1)), make("span", {class: "count"}),
      button("+", `${kind.mark}: one more is cut`, () => set(kind, count(kind) + 1)));
    if (Number(kind.pieces) > 1) {
      whole.append(button("all", `${kind.mark}: all ${kind.pieces} are cut`, () => set(kind, Number(kind.pieces))));
    }
    whole.append(make("span", {class: "boxes", "aria-hidden": "true"}));
    return whole;
  }

  function place_tally(place) {
    if (place.tagName !== "TR") {
      place.querySelector("h2, h3, h4, h5").after(tally(place.dataset));
      return;
    }
    const head = place.closest("table").querySelector("thead tr");
    if (!head.querySelector(".cut")) {
      const columns = place.closest("table").querySelector("colgroup"), last = make("col", {});
      Array.from(columns.children).forEach(each => { each.style.width = `${0.84 * parseFloat(each.style.width)}%`; });
      last.style.width = "16%";
      columns.append(last);
      head.append(make("th", {scope: "col", class: "cut", role: "columnheader"}, "Cut"));
    }
    place.append(make("td", {class: "cut", role: "cell"}, tally(place.dataset)));
  }

  function show() {    // the counts, wherever they stand
    places.forEach(place => {
      const kind = place.dataset, number = count(kind);
      place.classList.toggle("done", done(kind));
      place.querySelector(".count").textContent = (done(kind) ? "✓ " : "") + words(kind);
      place.querySelector(".boxes").replaceChildren(...Array.from({length: Number(kind.pieces)}, (_, index) =>
        make("i", index < number ? {class: "in"} : {})));
    });
    sums.textContent = `${cut(counts)} of ${total} pieces cut`;
    document.body.classList.toggle("begun", cut(counts) > 0);
    kept.textContent = keeps ? "Ticks are kept in this browser, on this device alone."
      : "This browser does not keep ticks for this page: they are lost when it is closed.";
  }

  /* ---- choosing what is shown.  A part that gets finished stays in sight until something is chosen anew: the next one
     must not slip under the finger that ticks. */

  function choose() {
    const wanted = kind => (!stage.value || kind.stage === stage.value) && (!stock.value || kind.stock === stock.value)
      && !(still.checked && done(kind));
    places.forEach(place => { place.hidden = !wanted(place.dataset); });
    document.querySelectorAll("table.cards").forEach(table => {
      const rows = Array.from(table.querySelectorAll("tbody tr[data-piece]"));
      if (!rows.length) return;
      table.parentElement.hidden = rows.every(row => row.hidden);
      table.parentElement.classList.toggle("partly", rows.some(row => row.hidden));
    });
    const shown = Array.from(kinds.values()).filter(wanted).length;
    const asked = [stage.value, stock.value, still.checked ? "still to cut" : ""].filter(Boolean).join(", ");
    document.body.classList.toggle("chosen", Boolean(asked));
    choice.textContent = asked ? `Shown: ${asked} (${shown} of ${kinds.size} marks)` : "All parts shown";
  }

  function choices(label, all, values) {
    const list = make("select", {}, new Option(all, ""), ...values.map(each => new Option(each, each)));
    list.addEventListener("change", choose);
    controls.append(make("label", {}, label + " ", list));
    return list;
  }

  function box(label, change) {
    const made = make("input", {type: "checkbox"});
    made.addEventListener("change", change);
    controls.append(make("label", {}, made, " " + label));
    return made;
  }

  function all_of(name) { return Array.from(new Set(Array.from(kinds.values(), kind => kind[name]))); }

  function follow_link() {    // a link to a part that is not shown shows everything
    const there = document.getElementById(decodeURIComponent(window.location.hash.slice(1)));
    if (there && there.closest("[hidden]")) {
      stage.value = stock.value = "";
      still.checked = false;
      choose();
      there.scrollIntoView();
    }
  }

  function clear() {
    if (window.confirm(`Take away all ${cut(counts)} ticks of this page?`)) {
      counts = {};
      keep();
      show();
      choose();
      status.textContent = "No piece is ticked.";
    }
  }

  function offer_earlier() {
    const found = cut(counts) ? {} : earlier();
    if (!cut(found)) return;
    const text = `Take over ${cut(found)} ticks of an earlier state of this vent (pieces that are cut alike)`;
    const taking = button(text, text, () => {
      counts = found;
      keep();
      show();
      choose();
      taking.remove();
      status.textContent = `${cut(counts)} ticks taken over.`;
      bar.querySelector("summary").focus();
    });
    controls.append(taking);
  }

  /* ---- the bar */

  const sums = make("strong", {class: "sums"}), choice = make("span", {class: "choice", "aria-live": "polite"});
  const controls = make("div", {class: "controls"}), kept = make("p", {class: "note"});
  const status = make("p", {class: "unseen", role: "status"});
  const bar = make("details", {class: "shop", "aria-label": "Ticks and filters"}, make("summary", {}, sums, " ", choice), controls, make("p", {class: "note"},
    "Filters choose among the cut list and the parts; the summary and the set-ups stay whole. Printed is what is shown. "
    + "A part that is finished stays in sight until a filter is set anew."), kept);
  const stage = choices("Stage", "all stages", all_of("stage"));
  const stock = choices("Stock", "all stock", all_of("stock"));
  const still = box("Still to cut only", choose);
  const large = box("Large print", () => {
    document.documentElement.classList.toggle("large", large.checked);
    write(LARGE, large.checked);
    show();
  });
  controls.append(button("Clear all ticks", "Clear all ticks", clear));
  document.querySelector("main").before(make("section", {"aria-label": "In the shop", class: "shop-bar"}, bar, status));
  places.forEach(place_tally);
  large.checked = read(LARGE) === true;
  document.documentElement.classList.toggle("large", large.checked);
  counts = known(read(own));
  write(LARGE, large.checked);    // tells whether the browser keeps anything
  offer_earlier();
  show();
  choose();
  follow_link();
  window.addEventListener("hashchange", follow_link);
  window.addEventListener("storage", event => {    // ticked in another window
    if (event.key === own) {
      counts = known(read(own));
      show();
    }
  });
})();
