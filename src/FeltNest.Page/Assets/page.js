"use strict";
// The page asks the server for every figure; nothing is worked out here but where a line is drawn.
const SVG = "http://www.w3.org/2000/svg";
const byId = id => document.getElementById(id);
const names = ["core", "cement", "felt", "ball", "waist", "edgeLimit", "width", "gap", "lower", "upper", "rows", "warp", "warpDeg", "oneWay", "effort", "price", "priceUnit", "currency", "rollLength", "endLoss", "faults", "rejects", "unpaired", "bedLength", "bedWidth", "bedMargin", "pressForce", "feedPlay", "guidePlay"];
const lengths = new Set(["core", "cement", "felt", "waist", "width", "gap", "lower", "upper", "endLoss", "bedLength", "bedWidth", "bedMargin", "feedPlay", "guidePlay"]);
// What the panel depends on.
const ofBall = ["core", "cement", "felt", "ball", "waist", "edgeLimit"];
// The press decides the die alone: nothing else is asked with it.
const ofPress = new Set(["bedLength", "bedWidth", "bedMargin", "pressForce", "feedPlay", "guidePlay"]);
const usual = { currency: "EUR", rows: "same", warp: "design", oneWay: "no", priceUnit: "m2" };
// What is asked, as the server reads it: lengths in mm, texts as they stand.
const asked = {};
const late = {};
// What was wrong with the address stays to be read until something is changed.
let ofAddress = "";
let unit = "mm", points = new Map(), scale = [0, 0], dragging = false, lay = null, repaint = 0;

const inUnit = text => unit === "mm" || text === "" || isNaN(Number(text)) ? text : String(Math.round(Number(text) / 25.4 * 10000) / 10000);
const inMm = text => unit === "mm" || text.trim() === "" || isNaN(Number(text)) ? text : String(Math.round(Number(text) * 25.4 * 1e6) / 1e6);
const length = (mm, digits = 2) => mm == null ? "none" : unit === "mm" ? `${mm.toFixed(digits)} mm` : `${(mm / 25.4).toFixed(digits + 1)} in`;
const number = (value, digits, end = "") => value == null ? "none" : value.toFixed(digits) + end;

function query(press = true) {
  const words = new URLSearchParams();
  for (const name of names) {
    if (!press && ofPress.has(name)) continue;
    if (asked[name] !== "" && asked[name] !== undefined && asked[name] !== usual[name]) words.set(name, asked[name]);
    else if (asked[name] === "" && usual[name] !== "" && usual[name] !== undefined) words.set(name, "");
  }
  if (unit !== "mm") words.set("unit", unit);
  return words.toString();
}

function show(name) { const field = byId(name); if (document.activeElement !== field) field.value = lengths.has(name) ? inUnit(asked[name]) : asked[name]; }

function tell(text) { const said = [text, ofAddress].filter(Boolean).join(" "); byId("told").textContent = said; byId("told").hidden = !said; }

function clearFaults() {
  for (const fault of document.querySelectorAll(".fault")) if (fault.id !== "offers-fault") fault.textContent = "";
  for (const field of document.querySelectorAll("[aria-invalid]")) field.removeAttribute("aria-invalid");
}

function showFaults(faults) {
  const rest = [];
  for (const { field, problem } of faults) {
    const place = byId(`${field}-fault`);
    if (place) { place.textContent = problem; byId(field)?.setAttribute("aria-invalid", "true"); } else rest.push(problem);
  }
  tell(rest.join(" "));
}

// One question of a kind at a time: a newer one ends the older.
async function ask(kind, path, onLine, options = {}) {
  late[kind]?.abort();
  const here = late[kind] = new AbortController();
  try {
    const answer = await fetch(path, { ...options, signal: here.signal });
    if (answer.status === 400) return { faults: (await answer.json()).faults };
    if (!answer.ok) return { faults: [{ field: kind === "offers" ? "offers" : "page", problem: (await answer.text()).trim() || `answer ${answer.status}` }] };
    if (!onLine) return { body: await answer.json() };
    const reader = answer.body.getReader(), text = new TextDecoder();
    let left = "";
    for (;;) {
      const { value, done } = await reader.read();
      left += text.decode(value ?? new Uint8Array(), { stream: !done });
      const lines = left.split("\n");
      left = lines.pop();
      for (const line of lines) if (line) onLine(JSON.parse(line));
      if (done) return {};
    }
  } catch (error) {
    if (here.signal.aborted) return { gone: true };
    return { faults: [{ field: "page", problem: "The page's server does not answer. Start it again with 'feltnest page' and reload." }] };
  }
}

let timer = 0, since = 0, waiting = null;
function changed(soon, work = answerAll) {
  ofAddress = "";
  clearTimeout(timer);
  waiting = waiting === answerAll ? answerAll : work;
  timer = setTimeout(() => { const next = waiting; waiting = null; next(); }, soon ? 0 : 120);
}

function keepAddress() {
  const all = query();
  history.replaceState(null, "", all ? `?${all}` : location.pathname);
  for (const link of document.querySelectorAll("[data-file]")) link.href = `files/${link.dataset.file}?${/^(panel|layout|widths)/.test(link.dataset.file) ? query(false) : all}`;
}

async function answerAll() {
  const words = query(false);
  keepAddress();
  since = performance.now();
  byId("stage").textContent = "Working.";
  layOut(words);
  if (answerAll.panelOf !== panelWords()) panel(words);
  // While the handle is dragged its scale stands still: the chart is asked anew when it is let go.
  if (!dragging && answerAll.widthsOf !== widthsWords()) widths(words); else drawWidths();
}

const panelWords = () => ofBall.map(name => asked[name]).join("|");
const widthsWords = () => [panelWords(), asked.gap, asked.lower, asked.upper, asked.warp, asked.warpDeg, asked.oneWay, asked.width].join("|");

async function layOut(words) {
  const { faults, gone } = await ask("lay", `lay?${words}`, line => { clearFaults(); tell(line.problem ?? ""); lay = line; drawLay(); });
  if (gone) return;
  if (faults) { clearFaults(); showFaults(faults); byId("stage").textContent = "No answer: see the field marked."; }
}

async function panel(words) {
  const { body, faults } = await ask("panel", `panel?${words}`);
  if (!body) { if (faults) showFaults(faults); return; }
  answerAll.panelOf = panelWords();
  byId("panel-picture").src = `files/panel.svg?${words}`;
  panel.last = body;
  drawPanel();
}

function rows(id, list) {
  byId(id).replaceChildren(...list.flatMap(([name, value, great]) => {
    const dt = document.createElement("dt"), dd = document.createElement("dd");
    dt.textContent = name; dd.textContent = value;
    if (great) dd.className = "great";
    return [dt, dd];
  }));
}

function drawPanel() {
  const p = panel.last;
  if (!p) return;
  rows("panel-figures", [
    ["cut panel", `${length(p.lengthMm)} x ${length(p.widthMm)}`], ["waist of the cut panel", length(p.waistMm)], ["area", unit === "mm" ? `${p.areaMm2.toFixed(1)} mm2` : `${(p.areaMm2 / 645.16).toFixed(3)} in2`], ["edge", length(p.perimeterMm)],
    ["fitted sphere, radius", length(p.sphereRadiusMm)], ["seam", length(p.seamLengthMm)], ["most stretch", number(p.maxStretchPercent, 2, " %")],
    ["most compression along the edge", number(p.edgeMaxCompressionPercent, 2, " %")], ["edge length difference", number(p.edgeMismatchPercent, 4, " %")]]);
  const own = { core: p.coreMm, cement: p.cementMm, felt: p.feltMm, waist: p.seamWaistMm };
  for (const [name, value] of Object.entries(own)) byId(`${name}-own`).textContent = asked[name] === "" ? `from the ball file: ${length(value)}` : "";
  byId("edgeLimit-own").textContent = asked.edgeLimit === "" ? `from the ball file: ${p.edgeLimitPercent} %` : "";
  byId("panel-warnings").replaceChildren(...p.warnings.map(w => { const li = document.createElement("li"); li.textContent = w; return li; }));
}

function make(name, attributes, parent) {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  parent?.append(element);
  return element;
}

function drawLay() {
  const stages = { first: "First answer, parallel rows; a search goes on.", better: "Better answer; the search goes on.", done: "Searched to the effort asked." };
  byId("stage").textContent = `${stages[lay.stage]} ${lay.panelsPerMetre.toFixed(3)} panels per metre, ${lay.wastePercent.toFixed(2)} % of the full width wasted (${lay.method}).`;
  byId("stage").dataset.stage = lay.stage;
  byId("stage").dataset.ms = Math.round(performance.now() - since);
  drawRoll();
  const felt = lay.felt, cost = lay.cost;
  rows("yield", [
    [felt.squareMetres == null ? "felt for a thousand balls, before losses" : "felt for a thousand balls, with losses", felt.squareMetres == null ? number(felt.laySquareMetres, 2, " m2") : number(felt.squareMetres, 2, " m2"), true],
    ["the same in metres, kilograms", felt.metres == null ? "none" : `${felt.metres.toFixed(2)} m, ${number(felt.kilograms, 2, " kg")}`], ["before losses", number(felt.laySquareMetres, 2, " m2")],
    ...(cost ? [["cost for a thousand balls", `${cost.total.toFixed(2)} ${cost.currency}`, true], ["not counted in it", cost.notCounted.join(", ") || "nothing"]] : [["cost for a thousand balls", "give a price"]]),
    ["panels per metre", lay.panelsPerMetre.toFixed(3)], ["balls per metre", lay.ballsPerMetre.toFixed(3)], ["waste, full width, one repeat", number(lay.wastePercent, 2, " %")],
    ["best without edges", lay.planePercent == null ? "not worked out yet" : number(lay.planePercent, 2, " %")], ["no layout can use more than", lay.boundPercent == null ? "not worked out yet" : number(lay.boundPercent, 2, " %")]]);
  byId("account").tBodies[0].replaceChildren(...lay.account.map(share => {
    const tr = document.createElement("tr"), name = document.createElement("td"), value = document.createElement("td"), bar = document.createElement("td");
    name.textContent = share.name; value.textContent = share.percent.toFixed(2); value.className = "n";
    const svg = make("svg", { width: 120, height: 12, "aria-hidden": "true" }, bar);
    make("rect", { class: "bar", width: Math.max(0, 1.2 * share.percent), height: 12 }, svg);
    tr.append(name, value, bar);
    return tr;
  }));
  // A die is designed for a lay that stands; a newer question breaks it off.
  late.die?.abort();
  if (lay.stage === "done") die();
  drawWidths();
}

async function die() {
  keepAddress();
  const { body, faults, gone } = await ask("die", `die?${query()}`);
  if (gone) return;
  for (const name of ofPress) { byId(`${name}-fault`).textContent = ""; byId(name).removeAttribute("aria-invalid"); }
  for (const { field, problem } of (faults ?? []).filter(f => ofPress.has(f.field))) { byId(`${field}-fault`).textContent = problem; byId(field).setAttribute("aria-invalid", "true"); }
  byId("die-problem").textContent = (faults ?? []).filter(f => !ofPress.has(f.field)).map(f => f.problem).join(" ");
  byId("die-notes").replaceChildren(...(body?.notes ?? []).map(text => { const li = document.createElement("li"); li.textContent = text; return li; }));
  rows("die", body ? [
    [asked.bedLength ? "cavities, as many as the bed takes" : "cavities, one repeat", String(body.cavities)], ["feed", length(body.feedMm, 3)], ["board, along x across", `${length(body.boardLengthMm, 0)} x ${length(body.boardWidthMm, 0)}`],
    ["board and rule weigh about", `${body.massKg.toFixed(1)} kg`], ["rule", length(body.ruleLengthMm, 0)], ["least radius of the edge", length(body.leastRadiusMm)],
    ["least gap in the die", body.leastGapMm == null ? "one cavity" : length(body.leastGapMm)], ["force of a strike, not measured", `${body.forceKn.toFixed(0)} kN`]] : []);
}

function drawRoll() {
  const svg = byId("roll"), height = lay.widthMm, frame = svg.parentElement;
  // At least a repeat, and as much as fills the frame.
  const shown = Math.max(...lay.bands.map(b => b.repeatMm), height * frame.clientWidth / Math.max(1, svg.getBoundingClientRect().height));
  svg.replaceChildren();
  svg.setAttribute("viewBox", `0 0 ${shown} ${height}`);
  svg.setAttribute("aria-label", `Layout over a roll ${length(height)} wide: ${lay.panelsPerMetre.toFixed(2)} panels per metre, ${shown.toFixed(0)} mm of it drawn`);
  const defs = make("defs", {}, svg), stripes = make("pattern", { id: "stripes", width: 12, height: 12, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" }, defs);
  make("rect", { class: "stripe-ground", width: 12, height: 12 }, stripes); make("rect", { class: "stripe", width: 6, height: 12 }, stripes);
  make("path", { id: "part", d: `M${lay.outline.map(p => `${p[0]} ${p[1]}`).join("L")}Z` }, defs);
  make("rect", { class: "cloth", width: shown, height }, svg);
  make("rect", { class: "trimmed", width: shown, height: lay.upperMm }, svg); make("rect", { class: "trimmed", y: height - lay.lowerMm, width: shown, height: lay.lowerMm }, svg);
  // y runs up from the lower selvedge on the roll and down here.
  const up = make("g", { transform: `translate(0 ${height}) scale(1 -1)` }, svg), reach = Math.max(...lay.outline.map(p => Math.hypot(p[0], p[1])));
  for (const band of lay.bands) {
    for (const [x, y, angle, group] of band.panels) {
      for (let k = Math.floor((-reach - x) / band.repeatMm); x + k * band.repeatMm <= shown + reach; k++) {
        const use = make("use", { href: "#part", class: group % 2 ? "part second" : "part", transform: `translate(${x + k * band.repeatMm} ${y}) rotate(${angle})` }, up);
        use.setAttributeNS("http://www.w3.org/1999/xlink", "href", "#part");
      }
    }
    make("line", { class: "repeat", x1: band.repeatMm, x2: band.repeatMm, y1: band.fromMm, y2: band.toMm }, up);
  }
  byId("key-b").hidden = lay.classes < 2;
}

async function widths(words) {
  const key = widthsWords();
  const fresh = new Map();
  const { faults, gone } = await ask("widths", `widths?${words}`, line => { fresh.set(line.widthMm, line.wastePercent); points = fresh; scale = [line.fromMm, line.toMm]; if (!repaint) repaint = requestAnimationFrame(() => { repaint = 0; drawWidths(); }); });
  if (!faults && !gone) answerAll.widthsOf = key;
}

function drawWidths() {
  const svg = byId("widths"), known = [...points].filter(p => p[1] != null).sort((a, b) => a[0] - b[0]), here = Number(asked.width);
  if (known.length < 2) return;
  // The scale is that of all widths asked for, those still to come too, so that it does not move under the pointer.
  const low = Math.min(scale[0], here), high = Math.max(scale[1], here), most = Math.max(...known.map(p => p[1])), least = Math.min(...known.map(p => p[1]));
  const x = w => 60 + 820 * (w - low) / (high - low), y = v => 20 + 190 * (most - v) / Math.max(0.5, most - least);
  drawWidths.back = place => Math.round(low + (high - low) * Math.min(1, Math.max(0, (place - 60) / 820)));
  const had = document.activeElement?.id === "knob";
  svg.replaceChildren();
  make("line", { class: "axis", x1: 60, x2: 880, y1: 216, y2: 216 }, svg); make("line", { class: "axis", x1: 60, x2: 60, y1: 14, y2: 216 }, svg);
  for (let i = 0; i <= 4; i++) {
    const w = low + (high - low) * i / 4, v = least + (most - least) * i / 4;
    make("text", { class: "tick", x: x(w), y: 234, "text-anchor": i === 4 ? "end" : "middle" }, svg).textContent = unit === "mm" ? w.toFixed(0) : (w / 25.4).toFixed(2);
    make("text", { class: "tick", x: 54, y: y(v) + 4, "text-anchor": "end" }, svg).textContent = v.toFixed(1);
  }
  make("text", { class: "tick", x: 66, y: 14 }, svg).textContent = "waste, % of the full width";
  make("text", { class: "tick", x: 470, y: 254, "text-anchor": "middle" }, svg).textContent = `roll width, ${unit}`;
  make("path", { class: "curve", d: "M" + known.map(p => `${x(p[0]).toFixed(1)} ${y(p[1]).toFixed(1)}`).join("L") }, svg);
  const knob = make("g", { id: "knob", class: "knob-grip", tabindex: 0, role: "slider", "aria-label": "Roll width", "aria-valuemin": low, "aria-valuemax": high, "aria-valuenow": here, "aria-valuetext": length(here) }, svg);
  make("line", { class: "knob-line", x1: x(here), x2: x(here), y1: 16, y2: 216 }, knob);
  make("circle", { class: "knob", cx: x(here), cy: 216, r: 10 }, knob);
  if (had) knob.focus();
}

function setWidth(mm, soon) {
  if (!(mm > 0) || String(mm) === asked.width) return;
  asked.width = String(mm);
  byId("width").value = inUnit(asked.width);
  drawWidths();
  changed(soon);
}

function place(event) {
  const box = byId("widths").getBoundingClientRect();
  return drawWidths.back?.((event.clientX - box.left) * 900 / box.width);
}

async function offers(file) {
  byId("offers-fault").textContent = "";
  if (!file) return;
  if (file.size > 256 * 1024) { byId("offers-fault").textContent = "is larger than 256 kB: a list of offers has a few thousand bytes"; return; }
  const { body, faults } = await ask("offers", `offers?${query(false)}`, null, { method: "POST", body: await file.arrayBuffer(), headers: { "Content-Type": "text/csv" } });
  byId("offer-rows").hidden = byId("offer-saves").hidden = !body;
  if (!body) { byId("offers-fault").textContent = (faults ?? []).map(f => f.problem).join(" "); return; }
  byId("offer-rows").tBodies[0].replaceChildren(...body.rows.map(o => {
    const tr = document.createElement("tr");
    tr.className = o.rank === 1 ? "best" : "";
    const cells = [`${o.rank}. ${o.name}`, unit === "mm" ? o.widthMm.toFixed(1) : (o.widthMm / 25.4).toFixed(2), o.panelsPerMetre.toFixed(2), o.wastePercent.toFixed(2), o.metres.toFixed(2), o.squareMetres.toFixed(2), o.kilograms == null ? "" : o.kilograms.toFixed(2), o.cost == null ? "" : `${o.cost.toFixed(2)} ${o.currency}`];
    tr.append(...cells.map((text, i) => { const td = document.createElement("td"); td.textContent = text; td.className = i ? "n" : ""; return td; }));
    return tr;
  }));
  const kinds = { csv: "text/csv", svg: "image/svg+xml", json: "application/json", html: "text/html" };
  for (const link of document.querySelectorAll("[data-offer]")) {
    URL.revokeObjectURL(link.href);
    link.download = link.dataset.offer;
    link.href = URL.createObjectURL(new Blob([body.files[link.dataset.offer]], { type: kinds[link.dataset.offer.split(".")[1]] }));
  }
}

async function start() {
  const { body, faults } = await ask("fields", "fields");
  if (!body) { showFaults(faults ?? []); return; }
  byId("ball").replaceChildren(...body.balls.map(name => { const option = document.createElement("option"); option.textContent = option.value = name; return option; }));
  usual.ball = body.balls[0];
  for (const field of body.numbers) usual[field.name] = field.usual == null ? "" : String(field.usual);
  const given = new URLSearchParams(location.search), strange = [...given.keys()].filter(name => !names.includes(name) && name !== "unit");
  for (const name of names) asked[name] = given.get(name) ?? usual[name];
  if (given.get("unit") === "in") { unit = "in"; document.querySelector("[name=unit][value=in]").checked = true; }
  const { faults: wrong } = await ask("address", `panel?${query()}`);
  const bad = (wrong ?? []).filter(f => names.includes(f.field));
  for (const { field } of bad) asked[field] = usual[field];
  for (const label of document.querySelectorAll(".len")) label.textContent = unit;
  for (const name of names) { show(name); byId(name).addEventListener(byId(name).tagName === "SELECT" ? "change" : "input", event => { asked[name] = lengths.has(name) ? inMm(event.target.value) : event.target.value; changed(false, ofPress.has(name) ? die : answerAll); }); }
  if (bad.length || strange.length) ofAddress = `The address was not sound and its usual value stands instead: ${[...bad.map(f => `${f.field} ${f.problem}`), ...strange.map(name => `${name.slice(0, 40)} is not known`)].join("; ")}.`;
  tell("");
  await answerAll();
}

for (const radio of document.querySelectorAll("[name=unit]")) {
  radio.addEventListener("change", () => {
    unit = radio.value;
    for (const label of document.querySelectorAll(".len")) label.textContent = unit;
    for (const name of lengths) byId(name).value = inUnit(asked[name]);
    keepAddress();
    drawPanel(); if (lay) drawLay();
  });
}
byId("offers").addEventListener("change", event => offers(event.target.files[0]));
byId("widths").addEventListener("pointerdown", event => { dragging = true; byId("widths").setPointerCapture(event.pointerId); setWidth(place(event), true); event.preventDefault(); byId("knob")?.focus(); });
byId("widths").addEventListener("pointermove", event => { if (dragging) setWidth(place(event), true); });
byId("widths").addEventListener("pointerup", () => { dragging = false; changed(true); });
byId("widths").addEventListener("keydown", event => {
  const step = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -25, PageUp: 25 }[event.key];
  if (step && event.target.id === "knob") { setWidth(Math.round(Number(asked.width) + step), false); event.preventDefault(); }
});
start();
