// The drawn rink: a click, a tap or the arrows' cross say a place.
import { editing, fast, logging } from "./form.js";
import { at, chosen, clear, field, say } from "./page.js";

const STEP = 0.5; // metres that an arrow moves the cross; assumed
const FAR = 3; // with Shift
const NEAR = 0.1; // with Ctrl: the resolution of a place
export const START = { x: -15, y: 0 }; // where the cross waits: in the own zone

const ice = at("ice");
const marks = at("marks");
const half = { x: Number(ice.dataset.halfLength), y: Number(ice.dataset.halfWidth) };
const corner = Number(ice.dataset.corner);

export let cross = { ...START };
export let moved = false; // the cross was moved since it appeared: only then Enter sets it

export const turned = () => (chosen("own_goal") === "right" ? -1 : 1);

function metres(p) {
  const along = p.x < 0 ? Math.abs(p.x).toFixed(1) + " m behind center" : p.x.toFixed(1) + " m past center";
  const across = p.y === 0 ? "in the middle" : Math.abs(p.y).toFixed(1) + " m to the " + (p.y > 0 ? "left" : "right");
  return along + ", " + across;
}

export function place(xName, yName) {
  const x = field(xName).value.trim();
  const y = field(yName).value.trim();
  if (x === "" || y === "" || !isFinite(Number(x)) || !isFinite(Number(y))) return null;
  return { x: Number(x), y: Number(y) };
}

function inside(p) {
  let x = Math.max(-half.x, Math.min(half.x, p.x));
  let y = Math.max(-half.y, Math.min(half.y, p.y));
  const cx = Math.abs(x) - (half.x - corner);
  const cy = Math.abs(y) - (half.y - corner);
  const out = Math.hypot(cx, cy);
  if (cx > 0 && cy > 0 && out > corner) {
    x = Math.sign(x) * (half.x - corner + (cx / out) * corner);
    y = Math.sign(y) * (half.y - corner + (cy / out) * corner);
  }
  const tenth = (v) => Math.round(v * 10) / 10 + 0; // no zero with a minus sign
  return { x: tenth(x), y: tenth(y) };
}

function svg(tag, attributes, kind) {
  const node = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [k, v] of Object.entries(attributes)) node.setAttribute(k, v);
  node.setAttribute("class", kind);
  return node;
}

export function draw() {
  clear(marks);
  const t = turned();
  const onScreen = (p) => ({ x: t * p.x, y: -t * p.y });
  const released = place("x_m", "y_m");
  const ended = place("end_x_m", "end_y_m");
  if (released && ended) {
    const a = onScreen(released);
    const b = onScreen(ended);
    marks.appendChild(svg("line", { x1: a.x, y1: a.y, x2: b.x, y2: b.y }, "path"));
  }
  if (released) {
    const a = onScreen(released);
    marks.appendChild(svg("circle", { cx: a.x, cy: a.y, r: 0.7 }, "released"));
  }
  if (ended) {
    const b = onScreen(ended);
    marks.appendChild(svg("circle", { cx: b.x, cy: b.y, r: 0.8 }, "finished"));
  }
  if (logging && !(released && ended)) {
    const c = onScreen(cross);
    marks.appendChild(svg("line", { x1: c.x - 1.2, y1: c.y, x2: c.x + 1.2, y2: c.y }, "cross"));
    marks.appendChild(svg("line", { x1: c.x, y1: c.y - 1.2, x2: c.x, y2: c.y + 1.2 }, "cross"));
  }
  at("end-left").textContent = t > 0 ? "own goal" : "their goal";
  at("end-right").textContent = t > 0 ? "their goal" : "own goal";
  at("l-ended").textContent = logging ? "Ended in" : "No exit open: what happened";
  at("step").textContent = !logging
    ? "Press a way out: 1 to 6"
    : fast() && editing === null ? "How did it end? (a click: where released)" : !released ? "Where was it released?" : !ended ? "Where did it end?" : "Enter saves";
}

// The cross waits at a place that nobody has chosen.
export function wait(p) {
  cross = { ...p };
  moved = false;
}

export function set(p) {
  if (!logging) {
    say("Press the key of a way out first: 1 to 6.");
    return;
  }
  const here = inside(p);
  const first = place("x_m", "y_m") === null;
  if (!first && place("end_x_m", "end_y_m") !== null) {
    say("Both places are set. Backspace takes the last one back, Enter saves.");
    return;
  }
  field(first ? "x_m" : "end_x_m").value = here.x.toFixed(1);
  field(first ? "y_m" : "end_y_m").value = here.y.toFixed(1);
  wait(here);
  say((first ? "Released " : "Ended ") + metres(here) + ".");
  draw();
}

export function takeBack() {
  const which = place("end_x_m", "end_y_m") !== null ? ["end_x_m", "end_y_m"] : ["x_m", "y_m"];
  for (const name of which) field(name).value = "";
  wait(cross);
  draw();
  say("Place taken back.");
}

export function clicked(event) {
  const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(ice.getScreenCTM().inverse());
  set({ x: turned() * p.x, y: -turned() * p.y });
}

export function move(event) {
  const by = event.shiftKey ? FAR : event.ctrlKey ? NEAR : STEP;
  const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
  cross = inside({ x: cross.x + turned() * way[0] * by, y: cross.y + turned() * way[1] * by });
  moved = true;
  draw();
  say("Cross " + metres(cross) + ".");
}
