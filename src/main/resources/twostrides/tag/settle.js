// The page of two-strides settle: skaters clicked at a release, and the verdict of the program.
// What comes from outside is shown by textContent only.
import * as ice from "./ice.js";
import { settlePicture } from "./settle-picture.js";

const LATER = 0.5; // seconds between a skater's two places
const DRAGGED = 0.3; // metres from which on a press is a drag; assumed
const SAME = 1.2; // metres within which a press takes hold of a man who stands there; assumed
const MOST = 6; // skaters: the carrier and five more

const at = (id) => document.getElementById(id);
const video = at("video");
const rink = at("rink");

let icings = [];
let n = 0; // the icing
let men = []; // { own, carrier, at, later }
let again = false; // the same men are clicked again
let mate = false; // the next one is a teammate
let turned = 1; // -1: the own goal is at the right of the picture
let cross = { x: 0, y: 0 };
let held = null; // the man who is being dragged
let asked = 0;
const steps = []; // what U takes back
const saved = []; // icings whose clicks are in the sheet, in that order

const say = (words) => { at("live").textContent = words; };
const icing = () => icings[n];
const copy = () => ({ men: men.map((m) => ({ ...m })), again, picture: picture.copy() });

async function ask(path, fields, tell = problem) {
  try {
    const answer = await fetch(path, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(fields || {}) });
    const said = await answer.json();
    if (!said.problems) return said;
    tell(said.problems.map((p) => "found " + p.found + ", expected " + p.expected + ". " + p.toDo).join(" "));
  } catch (e) {
    problem("The program does not answer. Start two-strides settle again: what was saved is kept.");
  }
  return null;
}

function problem(words) {
  const box = at("problems");
  box.replaceChildren();
  if (words === "") return;
  const p = document.createElement("p");
  p.textContent = words;
  box.appendChild(p);
}

// ---- the rink and the picture

const apart = (a, b) => Math.hypot(a.x - b.x, a.y - b.y);

const picture = settlePicture({ at, video, ask, say, set, inside: ice.inside, draw: () => draw(), remember: () => remember(), icing: () => n, men: () => men });

function draw() {
  ice.cleared(turned);
  const on = (p) => ice.onScreen(p, turned);
  const puck = on(icing() ? icing() : { x: 0, y: 0 });
  ice.mark("circle", { cx: puck.x, cy: puck.y, r: 1.3 }, "finished");
  men.forEach((m, i) => {
    const a = on(m.at);
    if (m.later) {
      const b = on(m.later);
      ice.line(a, b, "way");
      ice.mark("circle", { cx: b.x, cy: b.y, r: 0.35 }, "way");
    }
    if (m.own) ice.mark("circle", { cx: a.x, cy: a.y, r: 0.75 }, m.carrier ? "released" : "mate");
    else ice.mark("path", { d: "M" + (a.x - 0.7) + " " + (a.y - 0.7) + "l1.4 1.4m0 -1.4l-1.4 1.4" }, "cross");
    const number = ice.mark("text", { x: a.x + 0.9, y: a.y - 0.6 }, "who");
    number.textContent = String(i + 1);
  });
  picture.drawMarks(ice.mark, on);
  picture.draw();
  ice.cross(on(cross), "path");
  const next = men.findIndex((m) => !m.later);
  at("step").textContent = picture.picking()
    ? "Choose a mark"
    : men.length === 0 ? "Click who lets it go (ringed)"
      : again && next >= 0 ? "Half a second later: click man " + (next + 1)
        : men.length < 3 ? "Click who might get there first" : mate ? "Click a teammate" : "Click another, or Enter saves";
  at("mate").setAttribute("aria-pressed", String(mate));
  at("undo").disabled = steps.length === 0 && saved.length === 0;
}

function remember() {
  steps.push(copy());
}

function set(p) {
  if (again) {
    const m = men.find((other) => !other.later);
    if (!m) {
      say("Every man has his later place. Enter saves.");
      return null;
    }
    remember();
    m.later = p;
    changed();
    return null;
  }
  if (men.length === MOST) {
    say("Six men are enough. Drag them, press L, or save.");
    return null;
  }
  remember();
  const m = { own: men.length === 0 || mate, carrier: men.length === 0, at: p, later: null };
  mate = false;
  men.push(m);
  changed();
  return m;
}

function changed() {
  draw();
  const last = men.length;
  if (last > 0) say(men.filter((m) => m.later).length + " of " + last + " with a speed.");
  weigh();
}

// ---- the verdict

const spot = (p) => [p.x, p.y, p.error === undefined ? "" : p.error];
const words = () => men.map((m) => [m.own ? "own" : "opponent", m.carrier ? "yes" : "no", ...spot(m.at), ...(m.later ? spot(m.later) : [])].join(",")).join(";");
const ready = () => men.length >= 3 && men.filter((m) => m.later).length >= 3 && men[0].later !== null;

async function weigh(path = "weigh") {
  const mine = ++asked;
  if (!ready()) {
    show(null);
    return null;
  }
  const said = await ask(path, { icing: String(n), skaters: words() });
  if (said !== null && mine === asked) show(said);
  return said;
}

function show(said) {
  at("sentence").textContent = said && said.sentence !== "" ? said.sentence : icing() ? icing().sentence : "";
  at("gain").textContent = said && said.gain !== "" ? "Gain center: " + said.gain : "";
  at("figure").hidden = !(said && said.picture);
  if (said && said.picture) at("picture").src = "picture-" + ++asked;
  at("save").disabled = !(said && said.picture);
  problem(said && !said.picture ? said.sentence : "");
}

async function save() {
  if (!ready()) {
    say("Three men with a speed, the carrier among them, make a verdict.");
    return;
  }
  if (saved.includes(n)) {
    say("This icing is saved already; U takes that back.");
    return;
  }
  const said = await weigh("save");
  if (said === null || !said.saved) return;
  saved.push(n);
  steps.length = 0;
  draw();
  say("Saved: " + saved.length + " of " + icings.length + (said.settled ? "." : ", without a verdict.") + " N: the next one.");
}

async function undo() {
  if (steps.length > 0) {
    const step = steps.pop();
    ({ men, again } = step);
    picture.restore(step.picture);
    changed();
    say("Undone.");
    return;
  }
  if (saved.length === 0) return;
  const said = await ask("undo");
  if (said === null || said.said === "") return;
  const open = saved.pop();
  draw();
  say("Undone: icing " + (open + 1) + " is open again.");
}

// ---- the icing and its video

function go(to) {
  if (icings.length === 0) {
    say("No icing is left to settle.");
    return;
  }
  n = Math.max(0, Math.min(icings.length - 1, to));
  if (location.hash !== "#" + (n + 1)) history.replaceState(null, "", "#" + (n + 1));
  men = [];
  again = false;
  mate = false;
  steps.length = 0;
  picture.clear();
  cross = ice.inside(icing());
  at("heading").textContent = n + 1 + " of " + icings.length + ". " + icing().heading;
  at("game").textContent = icing().game;
  at("pick").hidden = icing().film;
  at("save").disabled = true;
  const source = "video/" + n;
  if (icing().film && video.dataset.game !== icing().game) {
    video.src = source;
    video.dataset.game = icing().game;
  } else if (!icing().film && video.dataset.game !== icing().game) {
    video.removeAttribute("src");
  }
  video.hidden = !video.hasAttribute("src");
  seek(0);
  show(null);
  draw();
  say(icing().video === undefined ? "The sheet gives no second of the video: look for " + icing().clock + "." : saved.includes(n) ? "Saved already." : "");
  rink.focus({ preventScroll: true });
}

const stamp = (s) => Math.floor(s / 3600) + ":" + String(Math.floor(s / 60) % 60).padStart(2, "0") + ":" + String(Math.floor(s) % 60).padStart(2, "0");

function seek(more) {
  video.pause();
  const tooShort = icing() && icing().video > video.duration;
  problem(tooShort
    ? "This file ends at " + stamp(video.duration) + ", before the release at " + stamp(icing().video) + ": it is not the video of this game, or not all of it."
    : "");
  if (icing() && icing().video !== undefined) video.currentTime = icing().video + more;
  else if (more > 0) video.currentTime += more;
}

function later() {
  if (men.length === 0) {
    say("Click the men at the release first.");
    return;
  }
  again = true;
  seek(LATER);
  const m = men.find((other) => !other.later);
  if (m) cross = { ...m.at };
  draw();
}

function release() {
  again = false;
  seek(0);
  draw();
}

// ---- hands

rink.addEventListener("pointerdown", (e) => {
  if (!icing()) return;
  e.preventDefault();
  rink.focus({ preventScroll: true });
  const p = ice.pressedAt(e, turned);
  if (picture.picking()) {
    picture.pick(p);
    return;
  }
  const there = again ? null : men.find((m) => apart(m.at, p) < SAME);
  held = there ? { man: there, from: p, fresh: false } : { man: set(p), from: p, fresh: true };
  if (held.man) rink.setPointerCapture(e.pointerId);
});
rink.addEventListener("pointermove", (e) => {
  if (!held || !held.man) return;
  const p = ice.pressedAt(e, turned);
  if (apart(p, held.from) < DRAGGED) return;
  if (!held.fresh && !held.moved) remember();
  held.moved = true;
  held.man.later = p;
  draw();
});
rink.addEventListener("pointerup", () => {
  if (!held || !held.man) return;
  // A press on a man who is there already, and no drag: he stands.
  const stands = !held.fresh && !held.moved;
  if (stands) {
    remember();
    held.man.later = { ...held.man.at };
  }
  const done = stands || held.moved;
  held = null;
  if (done) changed();
});
rink.addEventListener("pointercancel", () => { held = null; });

function pressed(e) {
  if (e.altKey || e.metaKey || e.target.matches("input") || picture.pressed(e)) return;
  if (ice.isArrow(e.key) && e.target === rink) {
    cross = ice.moved(cross, e, turned);
    draw();
    say("Cross at " + cross.x + ", " + cross.y + " m.");
    e.preventDefault();
    return;
  }
  if (e.ctrlKey || e.repeat || e.target.matches("button, a, video")) return;
  const keys = {
    " ": () => {
      if (picture.picking()) {
        picture.pick(cross);
        return;
      }
      set({ ...cross });
      const m = again ? men.find((other) => !other.later) : null;
      if (m) cross = { ...m.at };
      draw();
    },
    Enter: save, u: undo, l: later, r: release, n: () => go(n + 1), b: () => go(n - 1),
    t: () => at("mate").click(), y: () => at("turn").click(),
    p: () => at("on-picture").click(), m: () => at("more").click(), k: () => at("keep").click(),
  };
  const act = keys[e.key] || keys[e.key.toLowerCase()];
  if (act) {
    e.preventDefault();
    picture.after(act);
  }
}

async function start() {
  const said = await ask("state");
  if (said === null) return;
  icings = said.icings;
  picture.start(said);
  go((Number(location.hash.slice(1)) || 1) - 1);
}

at("file").addEventListener("change", (e) => {
  const file = e.target.files[0];
  if (!file) return;
  video.src = URL.createObjectURL(file);
  video.dataset.game = icing().game;
  video.hidden = false;
  seek(0);
});
video.addEventListener("loadedmetadata", () => seek(again ? LATER : 0));
video.addEventListener("timeupdate", () => { at("now").textContent = "video " + video.currentTime.toFixed(1) + " s"; });
video.addEventListener("error", () => { if (video.hasAttribute("src")) say("The browser cannot play this video. MP4 with H.264 and WebM work everywhere."); });
const presses = { save, undo, "at-later": later, "at-release": release, back: () => go(n - 1), next: () => go(n + 1) };
for (const [id, act] of Object.entries(presses)) at(id).addEventListener("click", () => picture.after(act));
at("mate").addEventListener("click", () => { mate = !mate; draw(); });
at("turn").addEventListener("click", () => { turned = -turned; draw(); });
at("end").addEventListener("click", async () => {
  if ((await ask("end")) !== null) say("Ended. This page can be closed.");
});
window.addEventListener("hashchange", () => go((Number(location.hash.slice(1)) || 1) - 1));
document.addEventListener("keydown", pressed);
start();
